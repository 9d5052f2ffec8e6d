#pragma once

#include "core/measure/date.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <optional>
#include <vector>

namespace riband::store {

/// How a customer paid.
enum class Payment : std::uint8_t { Cash, Card, Transfer, Invoice };

/// What was paid for one order when it was handed over, tax and rounding in it.
struct Taking {
    OrderId order;
    Moment at;
    PersonId person;
    Payment kind;
    Money amount;
};

/// The only code that names the table `taking`.
class Takings {
public:
    explicit Takings(Connection& connection) : connection_{connection} {}
    void add(const Taking& taking); ///< one an order; inside the caller's transaction
    std::optional<Taking> of(OrderId order) const;
    /// from <= at < until, oldest first
    std::vector<Taking> between(Moment from, Moment until) const;

private:
    Connection& connection_;
};

} // namespace riband::store
