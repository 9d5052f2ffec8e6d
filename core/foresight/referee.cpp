#include "core/foresight/referee.h"

namespace riband::foresight {

Referee::Referee(Setting setting) : setting_{std::move(setting)} {
    if (const auto fault = setting_.fault(); !fault.empty()) throw std::invalid_argument(fault);
}

void Referee::breach(const std::string& rule) const {
    throw Breach("order " + std::to_string(tally_.orders) + ": " + rule);
}

void Referee::book(const Order& order, const Answer& answer) {
    ++tally_.orders;
    waitUntil(order.day);
    owed_.clear();
    for (const auto& line : order.lines)
        owed_[line.width] += line.quantity;
    if (answer.take.empty() && answer.mountings.empty()) breach("nothing was taken and nothing was cut");
    take(answer.take);
    for (const auto& mounting : answer.mountings)
        mount(mounting, order.day);
    for (const auto name : answer.scrap)
        if (!rack_.erase(name) && !used_.contains(name)) breach("what is scrapped was never there");
    for (const auto& [width, count] : owed_)
        if (count != 0) breach("the order was not served exactly");
    for (const auto& line : order.lines)
        tally_.sold += std::int64_t{line.width} * line.quantity;
    checkLimits();
}

void Referee::waitUntil(double day) {
    if (day < tally_.days) breach("days run forward");
    const double passed = day - tally_.days;
    for (const auto& [name, piece] : rack_) {
        tally_.remnantDays += passed;
        tally_.widthDays += passed * piece.size;
    }
    for (const auto& [width, count] : shelf_) {
        tally_.readyDays += passed * count;
        tally_.widthDays += passed * width * count;
    }
    tally_.days = day;
    std::erase_if(rack_,
                  [&](const auto& entry) { return day - entry.second.opened > setting_.ageLimitDays; });
}

void Referee::take(const std::vector<Line>& lines) {
    for (const auto& [width, quantity] : lines) {
        if (quantity <= 0) breach("a take is of one belt at least");
        if (shelf_[width] < quantity) breach("the shelf has not so many ready belts");
        if (owed_[width] < quantity) breach("more was taken than the order asks for");
        shelf_[width] -= quantity;
        owed_[width] -= quantity;
    }
}

Referee::Piece Referee::lift(const Mounting& mounting, double day) {
    if (mounting.opensSleeve) {
        if (!used_.insert(mounting.piece).second) breach("a new sleeve needs a fresh name");
        ++tally_.sleeves;
        return {setting_.sleeve, day};
    }
    const auto found = rack_.find(mounting.piece);
    if (found == rack_.end()) breach("there is no such piece on the rack");
    const Piece piece = found->second;
    rack_.erase(found);
    return piece;
}

void Referee::cut(const Cut& cut) {
    if (cut.count <= 0 || cut.width <= 0) breach("a cut is of one belt at least");
    if (cut.use == For::Order) {
        if (owed_[cut.width] < cut.count) breach("more was cut than the order asks for");
        owed_[cut.width] -= cut.count;
        return;
    }
    if (setting_.shelf == Shelf::None) breach("nothing may be cut for the shelf");
    if (std::find(setting_.listed.begin(), setting_.listed.end(), cut.width) == setting_.listed.end())
        breach("only listed widths may lie on the shelf");
    shelf_[cut.width] += cut.count;
}

void Referee::mount(const Mounting& mounting, double day) {
    if (mounting.cuts.empty()) breach("a mounting cuts one belt at least");
    const Piece piece = lift(mounting, day);
    ++tally_.mountings;
    std::int64_t left = std::int64_t{piece.size} - setting_.rules.trim;
    Size widest = 0;
    bool forShelf = false;
    for (const auto& each : mounting.cuts) {
        cut(each);
        left -= std::int64_t{each.count} * (each.width + setting_.rules.kerf);
        widest = std::max(widest, each.width);
        forShelf = forShelf || each.use == For::Shelf;
    }
    if (left < setting_.rules.reserve(widest)) breach("too little is left to hold the piece");
    if (left != mounting.left) breach("what is left was reckoned wrongly");
    if (forShelf && setting_.shelf == Shelf::Stub && mounting.keepAs)
        breach("a mounting that finishes an end must scrap its rest");
    if (!mounting.keepAs) return;
    const auto name = *mounting.keepAs;
    const bool ownName = !mounting.opensSleeve && name == mounting.piece;
    if (!ownName && !used_.insert(name).second) breach("a rest needs a fresh name or its own piece's");
    rack_[name] = {static_cast<Size>(left), piece.opened};
}

void Referee::checkLimits() const {
    if (std::ssize(rack_) > setting_.rackLimit) breach("the rack holds too many remnants");
    for (const auto& [width, count] : shelf_)
        if (count > shelfLimit) breach("the shelf holds too many belts of a width");
}

} // namespace riband::foresight
