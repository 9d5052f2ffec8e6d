#pragma once

#include <cstdint>
#include <random>
#include <vector>

namespace riband::app {

/// Chance for the demo: the same seed gives the same run on every computer (the engine's numbers are laid
/// down by the C++ standard; the library's distributions are not, so these are our own).
class Dice {
public:
    explicit Dice(std::uint64_t seed) : engine_{seed} {}
    /// 0 to `below` - 1.
    std::size_t below(std::size_t below) { return static_cast<std::size_t>(engine_() % below); }
    bool oneIn(std::size_t times) { return below(times) == 0; }
    template <class T>
    const T& of(const std::vector<T>& things) {
        return things[below(things.size())];
    }

private:
    std::mt19937_64 engine_;
};

} // namespace riband::app
