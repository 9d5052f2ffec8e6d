#pragma once

#include "core/shop/suggest.h"

namespace riband::shop {

/// What a piece on the rack is expected to be good for.
struct PieceWorth {
    Extent worth;                        ///< of its width, by the belt's worth table
    std::optional<Reason::Kept> keptFor; ///< the order that adds most to it
    int version;                         ///< of the table
};

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
