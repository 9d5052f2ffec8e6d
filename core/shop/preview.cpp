#include "core/shop/preview.h"

#include "core/foresight/advisor.h"
#include "core/foresight/referee.h"

#include <algorithm>

namespace riband::shop {

namespace {

constexpr int ordersOfRun = 400;
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
std::vector<foresight::Order> runOf(const Trial& trial, const foresight::Outlook& outlook) {
    std::vector<foresight::Order> orders;
    foresight::Dice dice{trialDice};
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

TrialFigures figuresOf(const foresight::Referee& referee, const foresight::Setting& setting) {
    const foresight::Tally& tally = referee.tally();
    double left = 0;
    for (const auto& [name, piece] : referee.rack())
        left += piece.size;
    for (const auto& [width, count] : referee.shelf())
        left += static_cast<double>(width) * count;
    const double used = static_cast<double>(tally.sleeves) * setting.sleeve - left;
    const double days = std::max(1.0, tally.days);
    return {.waste = used > 0 ? 100 * (used - static_cast<double>(tally.sold)) / used : 0,
            .mountingsPerOrder = static_cast<double>(tally.mountings) / static_cast<double>(tally.orders),
            .remnants = tally.remnantDays / days,
            .ready = tally.readyDays / days,
            .orders = static_cast<int>(tally.orders)};
}

std::optional<TrialFigures> play(const foresight::Setting& setting,
                                 const std::vector<foresight::Order>& orders,
                                 const std::function<bool(double)>& goOn) {
    foresight::Advisor advisor{setting};
    foresight::Referee referee{setting};
    for (std::size_t i = 0; i < orders.size(); ++i) {
        if (!goOn(static_cast<double>(i) / static_cast<double>(orders.size()))) return std::nullopt;
        referee.book(orders[i], advisor.answer(orders[i]));
    }
    return figuresOf(referee, setting);
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

std::optional<TrialOutcome> tryOut(const Trial& trial, const std::function<bool(double)>& goOn) {
    const std::optional<Future> future = futureOf(trial.now);
    if (!future) return std::nullopt;
    const auto orders = runOf(trial, future->outlook);
    const auto now = play(trial.now.setting, orders, [&](double share) { return goOn(share / 2); });
    if (!now) return std::nullopt;
    const auto then = play(trial.then.setting, orders, [&](double share) { return goOn(0.5 + share / 2); });
    if (!then) return std::nullopt;
    return TrialOutcome{*now, *then};
}

} // namespace riband::shop
