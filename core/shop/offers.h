#pragma once

#include "core/shop/promises.h"
#include "core/shop/suggest.h"

#include <memory>

namespace riband::shop {

/// A piece and what of it is not promised.
struct Offer {
    store::StockPiece piece;
    Extent free;
};

/// What the pieces of one belt can give: of sleeves and remnants the width that is not promised, of ready
/// belts those of an asked width that are not taken.
std::vector<Offer> offersOf(const std::vector<store::StockPiece>& pieces, const Promises& promises,
                            const cutting::Rules& rules, const std::vector<Extent>& asked);

/// A sleeve of which something is promised will be open anyway: it counts as a remnant.
cutting::Piece asProblemPiece(const Offer& offer);

/// The narrowest rest that goes back to the rack: it can be held again, and a listed width can be cut of it.
Extent leastKept(const cutting::Rules& rules, const std::vector<Extent>& listed);

/// What a width is good for in a running shop until sales tell more: all of it, or nothing where no listed
/// width can ever be cut from it again (docs/mathematics.md).
std::shared_ptr<const cutting::Worth> usableWorth(const cutting::Rules& rules,
                                                  const std::vector<Extent>& listed);

/// The problem of these lines over these offers, in their order.
cutting::Problem problemOf(const store::StockedBelt& belt, const store::ShopSettings& settings,
                           const std::vector<Offer>& offers, std::vector<cutting::Line> lines);

} // namespace riband::shop
