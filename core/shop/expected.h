#pragma once

#include "core/shop/shop.h"
#include "core/store/goods.h"

namespace riband::shop {

/// So many like sleeves that were ordered from a supplier.
struct ExpectedGoods {
    belt::Belt belt; ///< a belt new to the shop is added to the catalogue
    int sleeves = 1;
    Extent extent;
    Money costEach = Money::minor(0);
    int position = 0; ///< of the line of the expected delivery that this one changes; 0: a new one
};

/// What was ordered from a supplier.
struct Expectation {
    std::string supplier{};
    std::string reference{}; ///< the shop's number of the purchase, or the supplier's
    std::optional<Date> due{};
    std::vector<ExpectedGoods> lines{};
};

/// Notes what was ordered. Refuses BadQuantity without a line, and what a delivery of these lines would be
/// refused for.
store::ExpectedId expect(const Shop& shop, const Expectation& expectation);
/// All of them, at one moment, or, if one is refused, none.
std::vector<store::ExpectedId> expectAll(const Shop& shop, const std::vector<Expectation>& expectations);

/// What is expected after all; a line that is not named any more is not expected any more. Refuses, beside
/// what `expect` does, AlreadyDone if the delivery is closed, and HasArrived (the detail is the belt) for a
/// line of which something came: it keeps its belt and width, and no fewer sleeves than came.
void changeExpected(const Shop& shop, store::ExpectedId id, const Expectation& expectation);

/// Nothing more of it will come; what came stays. Refuses AlreadyDone if it is closed.
void dropExpected(const Shop& shop, store::ExpectedId id);

/// What was noted is not expected after all: all of these or, if one is refused, none. Refuses AlreadyDone if
/// one is closed, and HasArrived (the detail is the belt) if something of one came.
void takeBack(const Shop& shop, const std::vector<store::ExpectedId>& ids);

/// A purchase list that is expected, by its day.
struct ExpectedList {
    std::string day; ///< as its deliveries' reference
    std::vector<store::ExpectedId> deliveries;
};
/// The newest of which nothing came and nothing was closed or named otherwise: it can still be taken back.
std::optional<ExpectedList> lastExpectedList(const Shop& shop);

/// As it stands, to be changed.
Expectation expectationOf(const Shop& shop, const store::ExpectedDelivery& expected);

} // namespace riband::shop
