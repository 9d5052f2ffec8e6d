#include "core/foresight/parallel.h"

#include <algorithm>
#include <atomic>
#include <mutex>
#include <thread>
#include <vector>

namespace riband::foresight {

namespace {

class Crew {
public:
    Crew(std::size_t count, const std::function<void(std::size_t)>& each, const Work& work)
        : count_{count}, each_{each}, work_{work} {}

    void run() {
        const std::size_t cores = std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, count_ + 1);
        std::vector<std::jthread> others;
        for (std::size_t i = 1; i < cores; ++i)
            others.emplace_back([this] { labour(); });
        labour();
        others.clear(); // joins
        if (failed_) std::rethrow_exception(failed_);
    }

private:
    void labour() {
        for (std::size_t i = next_++; i < count_; i = next_++) {
            try {
                each_(i);
                tell();
            } catch (...) {
                const std::lock_guard lock(guard_);
                if (!failed_) failed_ = std::current_exception();
                next_ = count_;
            }
        }
    }
    void tell() {
        const std::lock_guard lock(guard_);
        ++ended_;
        if (work_.stopped && work_.stopped()) throw Stopped{};
        if (work_.told) work_.told(static_cast<double>(ended_) / static_cast<double>(count_));
    }

    std::size_t count_;
    const std::function<void(std::size_t)>& each_;
    const Work& work_;
    std::atomic<std::size_t> next_ = 0;
    std::size_t ended_ = 0;
    std::mutex guard_;
    std::exception_ptr failed_;
};

} // namespace

void onAllCores(std::size_t count, const std::function<void(std::size_t)>& each, const Work& work) {
    Crew{count, each, work}.run();
}

} // namespace riband::foresight
