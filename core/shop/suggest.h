#pragma once

#include "core/cutting/planner.h"
#include "core/shop/shop.h"

namespace riband::shop {

/// What the customer wants of one belt.
struct Wish {
    Extent extent;
    std::int64_t quantity;
};

/// Everything that a suggestion needs, read from the store at once; then thinking about it needs no store and
/// may be done by another thread.
struct Outlook {
    store::StockedBelt belt;
    std::vector<store::StockPiece> pieces; ///< in the order of problem.pieces
    cutting::Problem problem;
    Date today;
};

/// The width of every piece of the belt that is not promised (problem.pieces[].extent; of ready belts those
/// of an asked width). An unknown belt gives an outlook without pieces. Refuses UnitMixed, BadWidth,
/// BadQuantity and NoSuchBelt (a profile of no table).
Outlook lookAt(const Shop& shop, const belt::Belt& belt, const std::vector<Wish>& wishes);

/// Why this piece; the screen makes one line of it, always with the figure.
struct Reason {
    enum class Kind {
        FromShelf,        ///< `count` ready belts: no cutting at all
        OnlyPiece,        ///< nothing else is wide enough
        Finishes,         ///< the piece is used up: of `figure` nothing more can be made
        AvoidsDead,       ///< smallest that fits would leave a dead `figure` of piece `other`
        SmallestThatFits, ///< leaves `figure`
        KeepsWider,       ///< leaves `other` whole; this piece leaves `figure`
        Oldest,           ///< equal otherwise; to be used first
        SeveralPieces,    ///< no single piece takes it all: `count` mountings, `figure` thrown away
        NewSleeve,        ///< no remnant is wide enough
        Unserved,         ///< not enough here: `count` belts can't be given
    };
    Kind kind;
    Extent figure;
    std::string other;
    std::int64_t count = 0;
};

/// One way to serve the wishes.
struct Way {
    cutting::Plan plan;
    Reason reason;
    std::int64_t extra = 0; ///< worth spent over that of the suggested way, in the belt's unit (µm or ribs)
};

struct Suggestion {
    Way best;
    std::vector<Way> others; ///< cheapest first
};

/// Pure. The first answer at once is `quick`; the final one is never worse.
Suggestion quick(const Outlook& outlook);
Suggestion suggest(const Outlook& outlook, const cutting::Limits& limits = {});

} // namespace riband::shop
