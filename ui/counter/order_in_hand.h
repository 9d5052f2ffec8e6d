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
    /// The other wishes for the same belt: they are planned together.
    std::vector<shop::Wish> wishesFor(const belt::Belt& belt) const;

    std::string customer, phone, note;
    std::optional<Moment> due;
    /// The parked or quoted order that this one takes up again, and its code.
    std::optional<store::OrderId> instead;
    std::string insteadCode;

private:
    void nowFrom(const belt::Belt& belt, const std::string& source);
    std::vector<SlipLine> lines_;
    std::optional<std::size_t> editing_;
};

} // namespace riband::ui
