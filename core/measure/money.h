#pragma once

#include "core/measure/extent.h"

#include <array>
#include <cstdint>
#include <stdexcept>
#include <string_view>

namespace riband {

/// An ISO 4217 currency: three capital letters and the number of decimals of its minor unit.
class Currency {
public:
    /// Throws std::invalid_argument unless `code` is three capital letters and `decimals` is 0 to 4.
    constexpr Currency(std::string_view code, int decimals) : decimals_{decimals} {
        if (code.size() != 3 || decimals < 0 || decimals > 4) throw std::invalid_argument("not a currency");
        for (std::size_t i = 0; i < 3; ++i) {
            if (code[i] < 'A' || code[i] > 'Z') throw std::invalid_argument("not a currency");
            code_[i] = code[i];
        }
    }
    constexpr std::string_view code() const { return {code_.data(), code_.size()}; }
    constexpr int decimals() const { return decimals_; }
    friend constexpr bool operator==(const Currency&, const Currency&) = default;

private:
    std::array<char, 3> code_{};
    int decimals_;
};

/// An amount in whole minor units (cents) of the shop's one currency. May be negative (a discount, a
/// counter-entry).
class Money {
public:
    static constexpr Money minor(std::int64_t units) { return Money{units}; }
    constexpr std::int64_t inMinor() const { return units_; }
    friend constexpr auto operator<=>(Money, Money) = default;
    friend constexpr Money operator+(Money a, Money b) { return Money{a.units_ + b.units_}; }
    friend constexpr Money operator-(Money a, Money b) { return Money{a.units_ - b.units_}; }
    friend constexpr Money operator-(Money a) { return Money{-a.units_}; }
    friend constexpr Money operator*(Money a, std::int64_t times) { return Money{a.units_ * times}; }

private:
    explicit constexpr Money(std::int64_t units) : units_{units} {}
    std::int64_t units_;
};

/// The quotient rounded to the nearest whole number, halves away from zero. The one place where money is
/// rounded.
constexpr std::int64_t roundedQuotient(std::int64_t dividend, std::int64_t divisor) {
    if (divisor <= 0) throw std::invalid_argument("the divisor of a rounding is positive");
    const std::int64_t whole = dividend / divisor;
    const std::int64_t rest = dividend % divisor;
    if (rest >= divisor - rest) return whole + 1;
    if (-rest >= divisor + rest) return whole - 1;
    return whole;
}

/// A price for width: thousandths of a minor unit for one millimetre (toothed) or one rib (ribbed). Never
/// negative.
class WidthPrice {
public:
    static constexpr WidthPrice thousandths(std::int64_t value) { return WidthPrice{value}; }
    constexpr std::int64_t inThousandths() const { return value_; }
    friend constexpr auto operator<=>(WidthPrice, WidthPrice) = default;
    /// Rounded once, halves away from zero.
    friend constexpr Money operator*(WidthPrice price, Extent extent) {
        const std::int64_t divisor = extent.unit() == Unit::Rib ? 1000 : 1'000'000;
        return Money::minor(roundedQuotient(price.value_ * extent.count(), divisor));
    }

private:
    explicit constexpr WidthPrice(std::int64_t value)
        : value_{value < 0 ? throw std::invalid_argument("a price for width is never negative") : value} {}
    std::int64_t value_;
};

/// A share in thousandths, such as a tax of 20 % (200) or a discount of 2.5 % (25).
class Permille {
public:
    explicit constexpr Permille(std::int64_t value) : value_{value} {}
    constexpr std::int64_t count() const { return value_; }
    friend constexpr auto operator<=>(Permille, Permille) = default;
    friend constexpr Money operator*(Money amount, Permille share) {
        return Money::minor(roundedQuotient(amount.inMinor() * share.value_, 1000));
    }

private:
    std::int64_t value_;
};

/// To the nearest whole multiple of `step` (5 for coins of five cents), halves away from zero; step 1 changes
/// nothing.
constexpr Money roundedTo(Money amount, std::int64_t step) {
    return Money::minor(roundedQuotient(amount.inMinor(), step) * step);
}

} // namespace riband
