#pragma once

#include "core/store/orders.h"

#include <vector>

namespace riband::store {

/// What was sold in a span, by what the ledger sold: belts that came back count minus. Without tax.
struct Sale {
    std::int64_t lines = 0;          ///< order lines
    std::int64_t width = 0;          ///< µm or ribs
    Money revenue = Money::minor(0); ///< the line's total less its tax, by the share of it that was cut then
    Money cost = Money::minor(0);    ///< what the width of the lines whose cost is known had cost
    /// Of lines with width that came into the book without a cost: it is not known, and not nothing.
    Money uncosted = Money::minor(0);
    bool costKnown() const { return uncosted == Money::minor(0) || uncosted < revenue; } ///< of some line
    Money margin() const { return revenue - uncosted - cost; } ///< of the lines whose cost is known
};
struct BeltSale {
    BeltId belt;
    Sale sale;
};
struct CustomerSale {
    std::string customer; ///< "" walk-ins
    Sale sale;
};
/// An order line that brought less than its width had cost.
struct BelowCost {
    std::string order; ///< code
    Moment at;         ///< of the order
    BeltId belt;
    std::string customer;
    Money revenue, cost;
};
/// Orders of one state made in a span.
struct OrdersMade {
    OrderState state;
    std::int64_t orders;
    Money total; ///< with tax
};

/// What sales brought and what the width sold had cost, of one span: orders and ledger together, read once
/// for all questions.
class Revenue {
public:
    Revenue(Connection& connection, Moment from, Moment until);
    std::vector<BeltSale> byBelt() const;
    std::vector<CustomerSale> byCustomer() const;
    Sale total() const; ///< its width is 0: units don't mix
    /// Greatest loss first.
    std::vector<BelowCost> belowCost(std::size_t most) const;

private:
    /// An order line with what was sold of it in the span.
    struct Line {
        LineId id;
        BeltId belt;
        OrderId order;
        Sale sale;
    };
    BelowCost told(const Line& line) const;

    Connection& connection_;
    std::vector<Line> lines_;
};

std::vector<OrdersMade> ordersMade(Connection& connection, Moment from, Moment until);

} // namespace riband::store
