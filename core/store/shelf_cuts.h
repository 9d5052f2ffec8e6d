#pragma once

#include "core/store/orders.h"

namespace riband::store {

/// Belts for the shelf on planned mountings: they give way when a customer needs the width.
class ShelfCuts {
public:
    explicit ShelfCuts(Connection& connection) : connection_{connection} {}
    /// Takes them off a planned mounting; what they would have used stays with the rest, which is kept from
    /// `stub` on. False if there are none. Inside the caller's transaction.
    bool drop(const TicketMounting& mounting, Extent stub);

private:
    Connection& connection_;
};

} // namespace riband::store
