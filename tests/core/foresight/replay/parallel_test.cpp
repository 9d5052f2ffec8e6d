#include "core/foresight/parallel.h"

#include "tests/catch.h"

#include <atomic>
#include <vector>

using namespace riband::foresight;

TEST_CASE("Every piece of work is done once, and progress ends at one", "[replay][parallel]") {
    std::vector<std::atomic<int>> done(500);
    double told = 0;
    onAllCores(done.size(), [&](std::size_t i) { ++done[i]; },
               {[&](double part) { told = std::max(told, part); }});
    for (const auto& times : done)
        CHECK(times == 1);
    CHECK(told == 1);
    onAllCores(0, [](std::size_t) { FAIL("nothing to do"); }, {});
}

TEST_CASE("Long work is stopped in order", "[replay][parallel]") {
    std::atomic<int> done = 0;
    const Work work{nullptr, [&] { return done > 10; }};
    CHECK_THROWS_AS(onAllCores(
                        100000, [&](std::size_t) { ++done; }, work),
                    Stopped);
    CHECK(done < 1000);
}

TEST_CASE("What a piece of work throws comes out", "[replay][parallel]") {
    CHECK_THROWS_AS(onAllCores(50,
                               [](std::size_t i) {
                                   if (i == 7) throw std::invalid_argument("seven");
                               },
                               {}),
                    std::invalid_argument);
}
