#pragma once

#include <cstddef>
#include <exception>
#include <functional>

namespace riband::foresight {

/// The person stopped long work; nothing of it is kept.
class Stopped : public std::exception {
public:
    const char* what() const noexcept override { return "stopped"; }
};

/// What goes along with long work. Both may be empty; they are called from several threads, one at a time.
struct Work {
    std::function<void(double)> told; ///< 0 to 1, how much is done
    std::function<bool()> stopped{};
};

/// Does `each` for 0 .. count - 1 on all cores; which thread does which doesn't matter, so `each` must not
/// depend on it. Throws Stopped, or what `each` threw first; the others end their present piece of work
/// before.
void onAllCores(std::size_t count, const std::function<void(std::size_t)>& each, const Work& work);

} // namespace riband::foresight
