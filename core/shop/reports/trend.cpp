#include "core/shop/reports/trend.h"

#include <algorithm>
#include <cmath>

namespace riband::shop {

namespace {

constexpr double nineteenInTwenty = 1.96; ///< quantile 0.975 of the normal distribution
constexpr std::int64_t fewest = 8;

double used(const store::Scatter& scatter) { return static_cast<double>(scatter.sold + scatter.lost); }

store::Scatter sumOf(const std::vector<TrendPoint>& points) {
    store::Scatter sum;
    for (const TrendPoint& point : points) {
        sum.movements += point.scatter.movements;
        sum.sold += point.scatter.sold;
        sum.lost += point.scatter.lost;
        sum.lostLost += point.scatter.lostLost;
        sum.lostUsed += point.scatter.lostUsed;
        sum.usedUsed += point.scatter.usedUsed;
    }
    return sum;
}

} // namespace

void addBands(std::vector<TrendPoint>& points) {
    const store::Scatter sum = sumOf(points);
    const double all = used(sum);
    const double share = all > 0 ? static_cast<double>(sum.lost) / all : 0;
    const double squares = sum.lostLost - 2 * share * sum.lostUsed + share * share * sum.usedUsed;
    const double spread =
        sum.movements > 1 ? std::sqrt(std::max(0.0, squares / static_cast<double>(sum.movements - 1))) : 0;
    for (TrendPoint& point : points) {
        const double mine = used(point.scatter);
        if (mine > 0) point.lost = static_cast<double>(point.scatter.lost) / mine;
        const bool enough = point.scatter.movements >= fewest && mine > 0;
        const double half =
            nineteenInTwenty * spread * std::sqrt(static_cast<double>(point.scatter.movements)) / mine;
        point.low = enough ? std::max(0.0, share - half) : 0;
        point.high = enough ? std::min(1.0, share + half) : 1;
    }
}

Trends trends(const Shop& shop, Moment until, int months) {
    const std::chrono::year_month_day last{dayOf(until - std::chrono::milliseconds{1})};
    const auto firstOf = [](std::chrono::year_month month) { return Moment{Date{month / 1}}; };
    Trends trends;
    for (int back = months - 1; back >= 0; --back) {
        const std::chrono::year_month month = last.year() / last.month() - std::chrono::months{back};
        const TrendPoint point{{firstOf(month), firstOf(month + std::chrono::months{1})}, {}, std::nullopt};
        trends.toothed.push_back(point);
        trends.ribbed.push_back(point);
    }
    if (months <= 0) return trends;
    const std::chrono::year_month newest = last.year() / last.month();
    for (const auto& found :
         store::Flows{shop.connection}.scatters(newest - std::chrono::months{months - 1}, newest))
        for (TrendPoint& point : found.unit == Unit::Rib ? trends.ribbed : trends.toothed)
            if (point.month.from == firstOf(found.month)) point.scatter = found.scatter;
    addBands(trends.toothed);
    addBands(trends.ribbed);
    return trends;
}

} // namespace riband::shop
