#include "tests/core/belt/identify/counter.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>

// How long one answer takes, beside a plain sum over as many possible belts in the same run. Prints; judges
// nothing.

using namespace riband::belt::identify;

namespace {

using Clock = std::chrono::steady_clock;

template <class Work>
double median(Work&& work) {
    std::vector<double> milliseconds;
    for (int i = 0; i < 21; ++i) {
        const auto start = Clock::now();
        work();
        milliseconds.push_back(std::chrono::duration<double, std::milli>(Clock::now() - start).count());
    }
    std::sort(milliseconds.begin(), milliseconds.end());
    return milliseconds[milliseconds.size() / 2];
}

} // namespace

int main() {
    const Prior& prior = listsOnly();
    double sink = 0;
    const double reference = median([&] {
        for (const Possible& each : prior.belts())
            sink += std::exp(each.logPrior);
    });
    const Sample few{{over(20, 160.1)}};
    const Sample back{{read(Measure::Outside, 1210)}};
    const Sample tape{{over(20, 160.1), read(Measure::Outside, 1210)}};
    const Sample all{{over(20, 160.1), read(Measure::Teeth, 150), read(Measure::Outside, 1210),
                      read(Measure::Flat, 1200), read(Measure::Thickness, 5.7),
                      read(Measure::ToothHeight, 3.3), read(Measure::ToothRoot, 5), read(Measure::Width, 30)},
                     SeenShape::HalfRound};
    std::printf("%zu possible belts; reference (their chances summed) %.2f ms\n", prior.belts().size(),
                reference);
    for (const auto& [name, sample] :
         {std::pair{"pitch", &few}, {"tape", &back}, {"pitch and tape", &tape}, {"nine measures", &all}}) {
        const double time = median([&, s = sample] { sink += identify(*s, prior).together; });
        std::printf("%-16s %6.2f ms, %5.1f times the reference\n", name, time, time / reference);
    }
    return sink > 0 ? 0 : 1;
}
