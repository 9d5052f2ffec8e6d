#include "ui/counter/order_in_hand.h"

namespace riband::ui {

void OrderInHand::put(SlipLine line) {
    if (!line.line.way) nowAs(line);
    if (editing_)
        lines_[*editing_] = std::move(line);
    else
        lines_.push_back(std::move(line));
    editing_.reset();
}

void OrderInHand::remove(std::size_t index) {
    if (index >= lines_.size()) return;
    SlipLine gone = lines_[index];
    gone.source.clear(); // what stays is planned anew, and nobody has looked yet
    nowAs(gone);
    lines_.erase(lines_.begin() + static_cast<std::ptrdiff_t>(index));
    editing_.reset();
}

/// The lines of a belt are planned together, but for those whose way was chosen: from the same pieces, with
/// or without belts for the shelf.
void OrderInHand::nowAs(const SlipLine& line) {
    for (SlipLine& each : lines_) {
        if (each.line.belt != line.line.belt || each.line.way) continue;
        each.source = line.source;
        each.cut = line.cut;
        each.line.noShelf = line.line.noShelf;
    }
}

void OrderInHand::edit(std::size_t index) {
    if (index < lines_.size()) editing_ = index;
}

void OrderInHand::clear() { *this = OrderInHand{}; }

shop::Draft OrderInHand::draft() const {
    shop::Draft made;
    for (const SlipLine& line : lines_)
        made.lines.push_back(line.line);
    made.customer = customer;
    made.phone = phone;
    made.due = due;
    made.note = note;
    return made;
}

std::vector<shop::Wish> OrderInHand::wishesWith(const belt::Belt& belt, shop::Wish wish) const {
    std::vector<shop::Wish> wishes;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (editing_ == i)
            wishes.push_back(wish);
        else if (lines_[i].line.belt == belt)
            wishes.push_back({lines_[i].line.extent, lines_[i].line.quantity});
    }
    if (!editing_) wishes.push_back(wish);
    return wishes;
}

bool OrderInHand::declinesShelf(const belt::Belt& belt) const {
    for (std::size_t i = 0; i < lines_.size(); ++i)
        if (lines_[i].line.belt == belt && editing_ != i && lines_[i].line.noShelf) return true;
    return false;
}

} // namespace riband::ui
