#pragma once

#include <cstdint>

namespace riband::foresight {

/// Dice that fall alike on every machine: SplitMix64 (Steele, Lea, Flood: Fast splittable pseudorandom number
/// generators, 2014). The standard library's distributions may differ between compilers, so none is used.
class Dice {
public:
    explicit constexpr Dice(std::uint64_t seed) : state_{seed} {}
    /// Dice of their own for the n-th of a family, so that paired runs meet the same throws.
    static constexpr Dice of(std::uint64_t seed, std::uint64_t n) {
        Dice mixed{seed ^ (n * 0xD1342543DE82EF95ULL)};
        mixed.next();
        return Dice{mixed.next()};
    }
    constexpr std::uint64_t next() {
        std::uint64_t z = (state_ += 0x9E3779B97F4A7C15ULL);
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
        return z ^ (z >> 31);
    }
    /// In [0, 1).
    constexpr double share() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }
    /// 0 .. count - 1.
    constexpr int below(int count) { return static_cast<int>(share() * count); }
    /// low .. high, both possible.
    constexpr std::int64_t between(std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(share() * static_cast<double>(high - low + 1));
    }

private:
    std::uint64_t state_;
};

} // namespace riband::foresight
