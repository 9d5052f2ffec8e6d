#include "core/foresight/parallel.h"
#include "core/foresight/replay/replay.h"
#include "core/foresight/replay/years.h"
#include "tests/core/foresight/buying/cases.h"

#include <chrono>
#include <cstdio>

// A year of 1,000 belts, ten times, as it is and with less trim; against the same on one thread, as a ratio.

using namespace riband::foresight;

namespace {

constexpr std::size_t belts = 1000;
constexpr int years = 10;

Record recordOf(std::size_t belt) {
    Dice dice = Dice::of(5, belt);
    Record record{.orders = {}, .days = 365};
    const double step = 1 + 25 * dice.share(); // from one a day to two a month
    for (double day = step * dice.share(); day < 365; day += 2 * step * dice.share() + 1e-3)
        record.orders.push_back({day, {{10000 * (2 + dice.below(7)), 1 + dice.below(3)}}});
    return record;
}

void replayBelt(std::size_t belt) {
    ReplayRules now;
    now.setting = hundredMillimetres({20000, 30000, 50000, 80000});
    now.setting.sleeve = 400000;
    now.sleeve = {400000, 6000, 7};
    ReplayRules other = now;
    other.setting.rules.trim = 2000;
    const Record record = recordOf(belt);
    const StockRule stockNow = stockRuleOf(now, record), stockOther = stockRuleOf(other, record);
    for (int year = 0; year < years; ++year) {
        const auto orders = resampled(record, Dice::of(belt, static_cast<std::uint64_t>(year)));
        playYear(now, stockNow, orders, 365);
        playYear(other, stockOther, orders, 365);
    }
}

double secondsOf(const std::function<void()>& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

} // namespace

int main() {
    const double all = secondsOf([] { onAllCores(belts, replayBelt, {}); });
    const double one = secondsOf([] {
        for (std::size_t belt = 0; belt < belts; ++belt)
            replayBelt(belt);
    });
    std::printf("replay: %zu belts, %d years, two rules: %.2f s on all cores, %.2f s on one, ratio %.2f\n",
                belts, years, all, one, one / all);
}
