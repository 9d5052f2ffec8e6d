#pragma once

#include <compare>
#include <cstdint>
#include <stdexcept>

namespace riband {

/// A count of ribs of a V-ribbed belt or sleeve. Never negative.
class Ribs {
public:
    explicit constexpr Ribs(std::int64_t count)
        : count_{count < 0 ? throw std::invalid_argument("a count of ribs is never negative") : count} {}
    constexpr std::int64_t count() const { return count_; }
    friend constexpr auto operator<=>(Ribs, Ribs) = default;
    friend constexpr Ribs operator+(Ribs a, Ribs b) { return Ribs{a.count_ + b.count_}; }

private:
    std::int64_t count_;
};

/// A width in whole micrometres, so that sums never drift. Never negative. The two inch widths that end in
/// half a micrometre (3/16 in = 4762.5 um, 5/16 in = 7937.5 um) are rounded up.
class Width {
public:
    static constexpr Width micrometres(std::int64_t um) { return Width{um}; }
    static constexpr Width millimetres(std::int64_t mm) { return Width{mm * 1000}; }
    constexpr std::int64_t inMicrometres() const { return um_; }
    friend constexpr auto operator<=>(Width, Width) = default;
    friend constexpr Width operator+(Width a, Width b) { return Width{a.um_ + b.um_}; }
    friend constexpr Width operator-(Width a, Width b) { return Width{a.um_ - b.um_}; }
    friend constexpr Width operator*(Width pitch, Ribs ribs) { return Width{pitch.um_ * ribs.count()}; }

private:
    explicit constexpr Width(std::int64_t um)
        : um_{um < 0 ? throw std::invalid_argument("a width is never negative") : um} {}
    std::int64_t um_;
};

template <class A, class B>
concept Multiplies = requires(A a, B b) {
    a* b;
};
static_assert(!Multiplies<Width, Width>); // an area is not a width

} // namespace riband
