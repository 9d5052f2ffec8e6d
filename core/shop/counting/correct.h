#pragma once

#include "core/shop/cut.h"

namespace riband::shop::counting {

// What settling a count books; all inside the caller's transaction.

/// The piece is wider (+) or narrower (-) by so much than the book says; the other side of it is `account`
/// (Difference, Trim, End, or Found). Its cost goes with width that is gone; width that was in no book has
/// none. Refuses PieceReserved of a ready belt that an order waits for, MoreThanThere.
store::MovementId correct(const Shop& shop, const store::StockPiece& piece, std::int64_t change,
                          store::Account account, const std::string& note);
/// `width` of the piece's change went to `account` (Trim, End), the rest of it to Difference.
store::MovementId correctWaste(const Shop& shop, const store::StockPiece& piece, std::int64_t change,
                               store::Account account, std::int64_t width, const std::string& note);
/// `width` was booked from one piece of a belt and went from another: it goes from `from` to `to`, and `rest`
/// of what `from` lacks beyond that to the account Difference.
store::MovementId correctSwap(const Shop& shop, const store::StockPiece& from, const store::StockPiece& to,
                              std::int64_t width, std::int64_t rest, const std::string& note);
/// A piece that was in no book: it comes from the account Found to this place.
std::pair<store::PieceId, store::MovementId> bookFind(const Shop& shop, store::BeltId belt, Extent extent,
                                                      const std::string& place, const std::string& note);
/// Mountings that the piece can't give any more are void.
std::vector<Voided> voided(const Shop& shop, store::PieceId piece);

} // namespace riband::shop::counting
