#pragma once

#include <compare>
#include <cstdint>
#include <stdexcept>

namespace riband {

/// A count of teeth. At least one.
class Teeth {
public:
    explicit constexpr Teeth(std::int64_t count)
        : count_{count < 1 ? throw std::invalid_argument("a belt has at least one tooth") : count} {}
    constexpr std::int64_t count() const { return count_; }
    friend constexpr auto operator<=>(Teeth, Teeth) = default;

private:
    std::int64_t count_;
};

/// A belt length or a pitch, in whole nanometres: the finest pitch of the tables (0.0816 in = 2.0726 mm as
/// printed) is then exact and so is every length made of it. Never negative.
class Length {
public:
    static constexpr Length nanometres(std::int64_t nm) { return Length{nm}; }
    static constexpr Length micrometres(std::int64_t um) { return Length{um * 1000}; }
    static constexpr Length millimetres(std::int64_t mm) { return Length{mm * 1'000'000}; }
    constexpr std::int64_t inNanometres() const { return nm_; }
    /// For geometry and drawing only.
    constexpr double inMillimetres() const { return static_cast<double>(nm_) / 1e6; }
    friend constexpr auto operator<=>(Length, Length) = default;
    friend constexpr Length operator+(Length a, Length b) { return Length{a.nm_ + b.nm_}; }
    friend constexpr Length operator-(Length a, Length b) { return Length{a.nm_ - b.nm_}; }
    friend constexpr Length operator*(Length pitch, Teeth teeth) { return Length{pitch.nm_ * teeth.count()}; }

private:
    explicit constexpr Length(std::int64_t nm)
        : nm_{nm < 0 ? throw std::invalid_argument("a length is never negative") : nm} {}
    std::int64_t nm_;
};

} // namespace riband
