#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// What no shop can have: a form, a table and the verbs refuse the same.

/// No cutter takes a wider piece: 5 m, or 10 000 ribs.
constexpr Extent widestPiece(Unit unit) {
    return unit == Unit::Rib ? Extent{Ribs{10'000}} : Extent{Width::millimetres(5'000)};
}
constexpr Money dearestSleeve = Money::minor(10'000'000'000);
/// What is there was made up to today, which is tomorrow already where the sun rises before the ledger's time
/// (UTC).
inline Date lastMade(const Shop& shop) { return dayOf(shop.now()) + std::chrono::days{1}; }

/// There is an amount of money in the book, in an order or in a belt's entry: what a minor unit is can't
/// change any more.
bool hasAmounts(const Shop& shop);

/// A place has a name of at most 60 characters in one line that is no code of a piece, ticket or order of
/// this shop; or none.
bool canBePlace(const Shop& shop, const std::string& place);
/// What is written by hand into a batch, a supplier or the number of a note, in one line: every line break
/// and control character is a space, and none stands at an end.
std::string inOneLine(const std::string& said);
/// Refuses CodeTaken for what can't be one.
void demandPlace(const Shop& shop, const std::string& place);

} // namespace riband::shop
