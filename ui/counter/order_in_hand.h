#pragma once

#include "core/shop/order.h"

#include <optional>
#include <vector>

namespace riband::ui {

/// A line on the slip with what is needed to price it.
struct SlipLine {
    shop::DraftLine line;
    store::StockedBelt belt;
    store::LinePrice price;
    std::string source; ///< where it comes from: "remnant 7K2-M", "from ready belts"
    bool cut = true;    ///< something has to be cut for it
};

/// The order that is being put together at the Counter, not yet booked.
class OrderInHand {
public:
    /// Adds the line, or puts it in the place of the one that is being edited.
    void put(SlipLine line);
    void remove(std::size_t index);
    void edit(std::size_t index);
    void stopEditing() { editing_.reset(); }
    std::optional<std::size_t> editing() const { return editing_; }
    void clear();

    const std::vector<SlipLine>& lines() const { return lines_; }
    bool isEmpty() const { return lines_.empty(); }
    shop::Draft draft() const;
    /// All wishes for this belt in the order of the slip, since they are planned together: with `wish`, in
    /// the place of the line that is being edited if there is one.
    std::vector<shop::Wish> wishesWith(const belt::Belt& belt, shop::Wish wish) const;
    /// Nothing is to be cut for the shelf beside a line of this belt, the edited one left out.
    bool declinesShelf(const belt::Belt& belt) const;

    std::string customer, phone, note;
    std::optional<Moment> due;
    /// The parked or quoted order that this one takes up again, and its code.
    std::optional<store::OrderId> instead;
    std::string insteadCode;

private:
    void nowAs(const SlipLine& line);
    std::vector<SlipLine> lines_;
    std::optional<std::size_t> editing_;
};

} // namespace riband::ui
