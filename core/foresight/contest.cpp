#include "core/foresight/contest.h"

namespace riband::foresight {

double Outcome::cost(const Setting& setting) const {
    const double years = 1 / setting.daysPerYear;
    return net() + setting.rules.mountingCost * static_cast<double>(tally.mountings) +
           setting.interest * tally.widthDays * years +
           setting.holdingCost * (tally.remnantDays + tally.readyDays) * years;
}

double gapClosed(const Outcome& reference, const Outcome& player) {
    const double gap = reference.net() - reference.bound;
    return gap > 0 ? 100 * (reference.net() - player.net()) / gap : 100;
}

Outcome play(const Setting& setting, const std::vector<Order>& orders, Player& player,
             const Hindsight& hindsight) {
    Referee referee{setting};
    for (const auto& order : orders)
        referee.book(order, player.answer(order));
    Outcome outcome;
    outcome.tally = referee.tally();
    outcome.opened = static_cast<double>(outcome.tally.sleeves) * setting.sleeve;
    outcome.bound = hindsight.bound();
    for (const auto& [name, piece] : referee.rack()) {
        outcome.credit += hindsight.worthOfRemnant(piece.size);
        outcome.left += piece.size;
    }
    outcome.credit += hindsight.worthOfReady(referee.shelf());
    for (const auto& [width, count] : referee.shelf())
        outcome.left += static_cast<double>(width) * count;
    if (setting.shelf == Shelf::None && outcome.net() < outcome.bound * (1 - 1e-9))
        throw std::logic_error("a rule without foresight beat the bound of hindsight");
    return outcome;
}

} // namespace riband::foresight
