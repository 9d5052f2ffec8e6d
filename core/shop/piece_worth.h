#pragma once

#include "core/shop/suggest.h"

namespace riband::shop {

/// What a piece on the rack is expected to be good for.
struct PieceWorth {
    Extent worth;                        ///< of its width, by the belt's worth table
    std::optional<Reason::Kept> keptFor; ///< the order that adds most to it
    int version;                         ///< of the table
};

/// The belt's worth table, if it is one of today's widths and rules; nothing else of the belt is read.
/// `widest`: of its pieces.
std::optional<foresight::WorthTable> currentTable(const Shop& shop, const store::StockedBelt& belt,
                                                  const store::ShopSettings& settings, Extent widest);

/// Answers for many pieces: each belt is read once. Nothing for ready belts, and where there is no table.
class PieceWorths {
public:
    explicit PieceWorths(const Shop& shop) : shop_{shop} {}
    std::optional<PieceWorth> of(const store::StockPiece& piece);

private:
    struct Known {
        foresight::Setting setting;
        std::optional<Future> future;
    };
    const Known& known(store::BeltId belt);
    const Shop& shop_;
    std::map<store::BeltId, Known> byBelt_;
};

} // namespace riband::shop
