#include "ui/counter/order_in_hand.h"

namespace riband::ui {

void OrderInHand::put(SlipLine line) {
    if (!line.line.way) nowFrom(line.line.belt, line.source);
    if (editing_)
        lines_[*editing_] = std::move(line);
    else
        lines_.push_back(std::move(line));
    editing_.reset();
}

void OrderInHand::remove(std::size_t index) {
    if (index >= lines_.size()) return;
    nowFrom(lines_[index].line.belt, {}); // what stays is planned anew, and nobody has looked yet
    lines_.erase(lines_.begin() + static_cast<std::ptrdiff_t>(index));
    editing_.reset();
}

/// The lines of a belt are planned together, but for those whose way was chosen.
void OrderInHand::nowFrom(const belt::Belt& belt, const std::string& source) {
    for (SlipLine& line : lines_)
        if (line.line.belt == belt && !line.line.way) line.source = source;
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

std::vector<shop::Wish> OrderInHand::wishesFor(const belt::Belt& belt) const {
    std::vector<shop::Wish> wishes;
    for (std::size_t i = 0; i < lines_.size(); ++i)
        if (lines_[i].line.belt == belt && editing_ != i)
            wishes.push_back({lines_[i].line.extent, lines_[i].line.quantity});
    return wishes;
}

} // namespace riband::ui
