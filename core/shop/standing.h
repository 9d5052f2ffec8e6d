#pragma once

#include "core/shop/allot.h"
#include "core/shop/cut.h"

#include <set>

namespace riband::shop {

/// How orders and tickets stand, and how mountings are given up again; all inside the caller's transaction.

/// Belts of a line that are not cut yet and still wanted, on a ticket or not.
std::int64_t waiting(const store::OrderLine& line);

/// Belts of an order that are waiting and on no planned mounting.
std::map<store::LineId, std::int64_t> missingOf(const store::Order& order, const Promises& promises);

/// How the orders stand whose belts these are, each once, the longest waiting first.
std::vector<OrderAfter> ordersAfter(const Shop& shop, const std::vector<store::TicketCut>& cuts);

/// Sets an open or ready order to what its lines say: cancelled if nothing of it is wanted any more, ready if
/// no belt is waiting, else open. Gives the new state.
store::OrderState settleOrder(const Shop& shop, store::OrderId order);
/// Sets a ticket to what its mountings say: open while one is planned, else cut if one was, else void.
void settleTicket(const Shop& shop, store::TicketId ticket);

/// Makes every planned mounting void that has a belt of these orders (of this belt only, if one is named);
/// says how many belts of which lines (of other orders, too) are on no ticket thereby.
std::map<store::LineId, std::int64_t> release(const Shop& shop, const std::set<store::OrderId>& orders,
                                              std::optional<store::BeltId> only = std::nullopt);

/// The one cutter, or 0 (the usual one) if there are several or none.
store::CutterId commonOf(const std::set<store::CutterId>& cutters);
/// Those on which the mountings are planned that `release` would make void.
std::set<store::CutterId> cuttersOf(const Shop& shop, const std::set<store::OrderId>& orders,
                                    std::optional<store::BeltId> only);

/// What is planned anew stays on the cutter that it was planned on; 0: nothing is said, the usual one.
void putOn(const Shop& shop, store::TicketId ticket, store::CutterId cutter);

/// Makes planned mountings of a piece void, the last made first, until the piece can give the others.
std::vector<Voided> voidImpossible(const Shop& shop, store::PieceId piece);

/// So many belts of these lines, to be planned; nobody is asked what to cut for the shelf beside, so nothing
/// is.
std::vector<Wanted> wantedOf(const Shop& shop, const std::map<store::LineId, std::int64_t>& belts);

/// Refuses WidthTaken unless everything is served.
void demandServed(const Shop& shop, const Allotment& allotment);

/// The order with this id if it is open or ready; else refuses AlreadyDone.
store::Order openOrder(const Shop& shop, store::OrderId order);
/// The line of an order.
store::OrderLine lineOf(const store::Order& order, store::LineId line);

} // namespace riband::shop
