#pragma once

#include "core/shop/shop.h"

#include <map>

namespace riband::shop {

/// One step in the life of a family of pieces: what an act took from one of them.
struct FamilyAct {
    store::MovementId movement;
    Moment at;
    store::Act act;
    store::PersonId person;
    std::string note;
    Extent before, after; ///< of the piece
    /// Where the width went, in the order of the book. What came back from a customer, or was found, is not
    /// here: it shows as `after` being more.
    struct Part {
        store::Account account;
        Extent extent;
        std::optional<store::PieceId> piece; ///< a new piece of the family
        std::optional<store::LineId> line;   ///< sold to
        std::string order;                   ///< code, of `line`
        std::int64_t belts = 1;              ///< like ones that the extent is the sum of
        std::optional<store::ScrapReason> reason{};
    };
    std::vector<Part> parts;
    std::optional<store::MovementId> undoes, undoneBy;
};

/// A piece of the family with all that was done to it, oldest first.
struct FamilyPiece {
    store::StockPiece piece;
    std::size_t depth; ///< 0 is the one that all come from
    std::vector<FamilyAct> acts;
};

/// All that became of one sleeve: the pieces in the order of a tree, each behind the one it was cut from.
struct Family {
    std::string belt; ///< designation
    std::vector<FamilyPiece> pieces;
    /// Over all of them, in µm or ribs: what came in is what went out and what is there (docs/ledger.md).
    std::int64_t cameIn = 0;                    ///< bought or found on the rack
    std::map<store::Account, std::int64_t> out; ///< sold, trim ...; a difference may be negative
    std::int64_t here = 0;                      ///< rack and shelf
    bool equal() const;
};
/// Of a piece, its forebears and all that was cut from any of them.
Family familyOf(const Shop& shop, store::PieceId piece);

} // namespace riband::shop
