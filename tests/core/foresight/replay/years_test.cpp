#include "core/foresight/replay/years.h"

#include "tests/catch.h"
#include "tests/core/foresight/buying/cases.h"

#include <algorithm>

using namespace riband::foresight;

namespace {

bool sorted(const std::vector<Order>& orders) {
    return std::is_sorted(orders.begin(), orders.end(),
                          [](const Order& a, const Order& b) { return a.day < b.day; });
}

} // namespace

TEST_CASE("A drawn year has the pace of the history, in order, and repeats with its dice", "[replay]") {
    const Record record = everyDays(3, 365, {{30000, 2}});
    double orders = 0;
    for (std::uint64_t year = 0; year < 40; ++year) {
        const auto drawn = resampled(record, Dice{year});
        CHECK(sorted(drawn));
        CHECK(drawn.back().day < 365);
        orders += static_cast<double>(drawn.size()) / 40;
    }
    CHECK(orders == Approx(365 / 3.0).epsilon(0.03));
    CHECK(resampled(record, Dice{4}).size() == resampled(record, Dice{4}).size());
    CHECK(resampled(Record{}, Dice{4}).empty());
}

TEST_CASE("What came within a month comes within a month", "[replay]") {
    Record record{.orders = {}, .days = 365}; // all orders in one week
    for (int day = 100; day < 107; ++day)
        record.orders.push_back({static_cast<double>(day), {{30000, 1}}});
    bool none = false, all = false;
    for (std::uint64_t year = 0; year < 60; ++year) {
        const auto drawn = resampled(record, Dice{year});
        none |= drawn.empty();
        all |= drawn.size() >= 7;
    }
    CHECK(none);
    CHECK(all);
}

TEST_CASE("The outlook's year has the pace and the widths that were learned", "[replay]") {
    const Setting setting = hundredMillimetres({30000});
    const Record record = everyDays(2, 365, {{30000, 1}});
    const auto year = expectedYear(setting, record, Dice{9});
    CHECK(sorted(year));
    CHECK(static_cast<double>(year.size()) == Approx(182).epsilon(0.25));
    const auto listed = std::count_if(year.begin(), year.end(),
                                      [](const Order& order) { return order.lines.front().width == 30000; });
    CHECK(static_cast<double>(listed) > 0.9 * static_cast<double>(year.size()));
}

TEST_CASE("The last year is the last year", "[replay]") {
    const Record record = everyDays(10, 1000, {{30000, 1}});
    const Record year = lastYear(record);
    CHECK(year.days == 365);
    CHECK(year.orders.size() == 37);
    CHECK(year.orders.front().day >= 0);
    CHECK(lastYear(everyDays(10, 100, {{30000, 1}})).days == 100);
}
