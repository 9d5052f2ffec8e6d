#include "core/foresight/best_fit.h"
#include "tests/catch.h"
#include "tests/core/foresight/buying/cases.h"

#include <algorithm>
#include <cmath>
#include <deque>

using namespace riband::foresight;

// The promise of the reorder rule, met by a shop that is played week by week with deliveries on their way:
// its own bookkeeping, and orders that the rule has never seen.

namespace {

constexpr double leadDays = 10, reviewDays = 7;

class PlayedShop {
public:
    PlayedShop(double service, int less) : service_{service}, less_{less} {}

    /// Share of the weeks in which somebody was sent away.
    double shareOfBadWeeks(int weeks) {
        int bad = 0;
        for (int week = 0; week < weeks; ++week) {
            review(week * reviewDays);
            bad += sells(week * reviewDays) ? 0 : 1;
        }
        return static_cast<double>(bad) / weeks;
    }

private:
    void review(double now) {
        std::vector<Remnant> remnants;
        for (const double size : rack_)
            remnants.push_back({static_cast<Size>(size), 0});
        const Need need = needOf(setting_, remnants, futures_, leadDays + reviewDays, 120,
                                 Dice::of(17, static_cast<std::uint64_t>(now)));
        const int wanted = need.sleevesFor(service_) - less_;
        for (int there = sleeves_ + static_cast<int>(onTheirWay_.size()); there < wanted; ++there)
            onTheirWay_.push_back(now + leadDays);
    }

    bool sells(double now) {
        bool all = true;
        for (double day = now; (day -= std::log1p(-dice_.share()) / perDay) < now + reviewDays;) {
            while (!onTheirWay_.empty() && onTheirWay_.front() <= day) {
                onTheirWay_.pop_front();
                ++sleeves_;
            }
            all = serve(dice_.share() < 0.5 ? 30000 : 50000) && all;
        }
        return all;
    }

    /// The smallest that fits; a rest under 37.5 mm gives nothing any more.
    bool serve(double width) {
        const double needs = 2500 + width + 5000;
        auto best = rack_.end();
        for (auto piece = rack_.begin(); piece != rack_.end(); ++piece)
            if (*piece >= needs && (best == rack_.end() || *piece < *best)) best = piece;
        if (best == rack_.end()) {
            if (sleeves_ == 0) return false;
            --sleeves_;
            rack_.push_back(100000);
            best = rack_.end() - 1;
        }
        *best -= 2500 + width;
        if (*best < 37500) rack_.erase(best);
        return true;
    }

    static constexpr double perDay = 0.35;
    Setting setting_ = hundredMillimetres({30000, 50000});
    Record record_{.orders = {{0, {{30000, 1}}}, {1, {{50000, 1}}}}, .days = 7};
    Futures futures_{record_, given(perDay * 7 * 40000)};
    Dice dice_{23};
    double service_;
    int less_;
    int sleeves_ = 3;
    std::deque<double> onTheirWay_;
    std::vector<double> rack_;
};

} // namespace

TEST_CASE("A shop that buys by the rule sends nobody away more often than was wanted", "[buying][service]") {
    const int weeks = 400;
    const double service = 0.90;
    const double bad = PlayedShop{service, 0}.shareOfBadWeeks(weeks);
    CHECK(bad <= 1 - service + 3 * std::sqrt(service * (1 - service) / weeks));
    CHECK(PlayedShop(service, 1).shareOfBadWeeks(weeks) > bad); // one sleeve less is felt
}
