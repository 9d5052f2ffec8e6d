#include "core/shop/preview.h"

#include "core/foresight/advisor.h"
#include "core/foresight/referee.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace riband::shop {

namespace {

constexpr int runs = 4;
constexpr double studentsT = 3.182; ///< quantile 0.975 for four runs (three degrees of freedom)
constexpr int ordersOfRun = trialOrders / runs;
constexpr std::uint64_t trialDice = 4711;

std::optional<store::BeltId> busiest(const Shop& shop) {
    const auto times = store::Orders{shop.connection}.timesOrdered();
    const auto most = std::max_element(times.begin(), times.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    if (most == times.end()) return std::nullopt;
    return most->first;
}

bool canGive(const foresight::Setting& setting, const foresight::Line& line) {
    const auto& rules = setting.rules;
    return rules.trim + line.width + rules.kerf + rules.reserve(line.width) <= setting.sleeve;
}

/// As the outlook expects them, evenly through the year; what either sleeve can't give is left out.
std::vector<foresight::Order> runOf(const Trial& trial, const foresight::Outlook& outlook, int run) {
    std::vector<foresight::Order> orders;
    foresight::Dice dice{trialDice + static_cast<std::uint64_t>(run)};
    const double gap = trial.now.setting.daysPerYear / outlook.ordersPerYear();
    for (int i = 0; i < ordersOfRun; ++i) {
        foresight::Order order{i * gap, {}};
        outlook.draw(dice, order.lines);
        std::erase_if(order.lines, [&](const foresight::Line& line) {
            return !canGive(trial.now.setting, line) || !canGive(trial.then.setting, line);
        });
        if (!order.lines.empty()) orders.push_back(std::move(order));
    }
    return orders;
}

/// What several runs add up to.
struct Totals {
    double waste = 0; ///< %, of each run
    double mountings = 0, orders = 0, remnantDays = 0, readyDays = 0, days = 0;

    TrialFigures figures() const {
        return {.waste = waste / runs,
                .mountingsPerOrder = orders > 0 ? mountings / orders : 0,
                .remnants = remnantDays / std::max(1.0, days),
                .ready = readyDays / std::max(1.0, days),
                .orders = static_cast<int>(orders)};
    }
    Totals& operator+=(const Totals& more) {
        waste += more.waste;
        mountings += more.mountings;
        orders += more.orders;
        remnantDays += more.remnantDays;
        readyDays += more.readyDays;
        days += more.days;
        return *this;
    }
};

Totals totalsOf(const foresight::Referee& referee, const foresight::Setting& setting) {
    const foresight::Tally& tally = referee.tally();
    double left = 0;
    for (const auto& [name, piece] : referee.rack())
        left += piece.size;
    for (const auto& [width, count] : referee.shelf())
        left += static_cast<double>(width) * count;
    const double used = static_cast<double>(tally.sleeves) * setting.sleeve - left;
    return {.waste = used > 0 ? 100 * (used - static_cast<double>(tally.sold)) / used : 0,
            .mountings = static_cast<double>(tally.mountings),
            .orders = static_cast<double>(tally.orders),
            .remnantDays = tally.remnantDays,
            .readyDays = tally.readyDays,
            .days = tally.days};
}

std::optional<Totals> play(const foresight::Setting& setting, const std::vector<foresight::Order>& orders,
                           const std::function<bool(double)>& goOn) {
    foresight::Advisor advisor{setting};
    foresight::Referee referee{setting};
    for (std::size_t i = 0; i < orders.size(); ++i) {
        if (!goOn(static_cast<double>(i) / static_cast<double>(orders.size()))) return std::nullopt;
        referee.book(orders[i], advisor.answer(orders[i]));
    }
    return totalsOf(referee, setting);
}

void judge(TrialOutcome& outcome, const std::array<double, runs>& lessWaste) {
    double sum = 0, squares = 0;
    for (const double less : lessWaste)
        sum += less;
    outcome.lessWaste = sum / runs;
    for (const double less : lessWaste)
        squares += (less - outcome.lessWaste) * (less - outcome.lessWaste);
    outcome.margin = studentsT * std::sqrt(squares / (runs - 1) / runs);
}

std::optional<Trial> trialOf(const Shop& shop, const store::StockedBelt& now, const store::StockedBelt& then,
                             const store::ShopSettings& settingsThen) {
    const Extent none = Extent::none(now.unit);
    Trial trial{now.designation, pastOf(shop, now, store::Settings{shop.connection}.read(), none),
                pastOf(shop, then, settingsThen, none), now.preCut, then.preCut};
    if (trial.now.orders.empty()) return std::nullopt;
    if (!trial.now.setting.fault().empty() || !trial.then.setting.fault().empty()) return std::nullopt;
    return trial;
}

} // namespace

std::optional<Trial> trialOf(const Shop& shop, const store::ShopSettings& proposed) {
    const auto id = busiest(shop);
    if (!id) return std::nullopt;
    const store::StockedBelt belt = store::Catalogue{shop.connection}.at(*id);
    return trialOf(shop, belt, belt, proposed);
}

std::optional<Trial> trialOf(const Shop& shop, const store::StockedBelt& proposed) {
    return trialOf(shop, store::Catalogue{shop.connection}.at(proposed.id), proposed,
                   store::Settings{shop.connection}.read());
}

bool TrialOutcome::tells() const { return std::abs(lessWaste) > margin; }

std::optional<TrialOutcome> tryOut(const Trial& trial, const std::function<bool(double)>& goOn) {
    const std::optional<Future> future = futureOf(trial.now);
    if (!future) return std::nullopt;
    Totals now, then;
    std::array<double, runs> lessWaste{};
    for (int run = 0; run < runs; ++run) {
        const auto orders = runOf(trial, future->outlook, run);
        int played = 2 * run;
        const auto told = [&](double share) { return goOn((played + share) / (2 * runs)); };
        const auto before = play(trial.now.setting, orders, told);
        ++played;
        const auto after = before ? play(trial.then.setting, orders, told) : std::nullopt;
        if (!after) return std::nullopt;
        now += *before;
        then += *after;
        lessWaste[static_cast<std::size_t>(run)] = before->waste - after->waste;
    }
    TrialOutcome outcome{now.figures(), then.figures()};
    judge(outcome, lessWaste);
    return outcome;
}

} // namespace riband::shop
