#pragma once

#include "core/cutting/planner.h"
#include "core/shop/past.h"
#include "core/store/advices.h"

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
    Past past;                   ///< what is wanted now is its last order
    std::map<Extent, int> shelf; ///< ready belts of each width that nobody waits for
    /// All can be served only if the belts for the shelf that wait to be cut of these pieces give way.
    bool shelfGivesWay = false;
};

/// The width of every piece of the belt that is not promised (problem.pieces[].extent; of ready belts those
/// of an asked width); belts for the shelf that are only planned give way where there is not enough
/// otherwise. An unknown belt gives an outlook without pieces. Refuses UnitMixed, BadWidth,
/// BadQuantity and NoSuchBelt (a profile of no table).
Outlook lookAt(const Shop& shop, const belt::Belt& belt, const std::vector<Wish>& wishes);

/// Why this piece; the screen makes one line of it, always with the figure.
struct Reason {
    enum class Kind {
        FromShelf,        ///< `count` ready belts: no cutting at all
        OnlyPiece,        ///< nothing else is wide enough
        Finishes,         ///< the piece (all of `count`) is used up: of `figure` nothing more can be made
        FinishesForShelf, ///< `count` belts for the shelf use the piece up but for `figure`
        AvoidsDead,       ///< smallest that fits would leave a dead `figure` of piece `other`
        SmallestThatFits, ///< leaves `figure`
        KeepsWider,       ///< leaves `other` whole; this piece leaves `figure`
        KeepsFor,         ///< leaves `other` whole for an order of `keptFor`; `figure` saved, expected
        AboutTheSame,     ///< as good as `other`; leaves `figure`
        Oldest,           ///< equal otherwise; to be used first
        SeveralPieces,    ///< `count` mountings, `figure` thrown away: only `other`, if any, takes it all
        NewSleeve,        ///< no remnant is wide enough; the sleeve leaves `figure`
        Unserved,         ///< not enough here: `count` belts can't be given
    };
    Kind kind = Kind::SmallestThatFits;
    Extent figure = Extent::none(Unit::Micrometre);
    std::string other{};
    std::int64_t count = 0; ///< where `figure` stays: belts for the shelf that are cut as well
    /// What `other` is kept for: so many belts of a width, and how many in a hundred orders want that.
    struct Kept {
        Extent extent;
        std::int64_t belts;
        int percent;
        friend bool operator==(const Kept&, const Kept&) = default;
    };
    std::optional<Kept> keptFor{};
};

/// One way to serve the wishes.
struct Way {
    cutting::Plan plan; ///< of the wishes alone: its rests are those before anything is cut for the shelf
    Reason reason;
    std::int64_t extra = 0; ///< expected cost over the suggested way, in the belt's unit (µm or ribs)
    /// What is to be cut as well, onto the shelf, in each mounting of the plan; narrow first.
    std::vector<std::vector<Extent>> forShelf{};
    double cost = 0;      ///< expected: worth taken and labour, less worth put back; µm or ribs
    double worthLeft = 0; ///< expected, of the rests and of the belts for the shelf

    bool fillsShelf() const;
    /// After the belts for the shelf.
    Extent left(std::size_t mounting, const cutting::Rules& rules) const;
};

struct Suggestion {
    Way best;
    std::vector<Way> others; ///< cheapest first
    store::AdviceBasis basis = store::AdviceBasis::SmallestThatFits;
    WorthFault fault = WorthFault::None; ///< why it doesn't rest on a worth table
    int worthVersion = 0;                ///< of the table that it rests on
};

/// The way without its belts for the shelf, and what it then costs.
void declineShelf(const Outlook& outlook, Way& way);

/// What so much width costs, at the price of the belt's sleeve; an expectation, to the nearest minor unit.
Money asMoney(const store::StockedBelt& belt, double width);

/// Pure. The first answer at once is `quick`, the smallest that fits. The final one is never worse: by worth
/// table and look-ahead (docs/foresight.md), with finishing; where there is no table, or more is wanted than
/// can be weighed at once, by the exact plan.
Suggestion quick(const Outlook& outlook);
Suggestion suggest(const Outlook& outlook, const cutting::Limits& limits = {});

} // namespace riband::shop
