#pragma once

#include "core/foresight/hindsight.h"
#include "core/shop/learn.h"
#include "core/shop/reports/both_ways.h"

#include <map>

namespace riband::shop {

std::vector<foresight::Line> linesOf(const Deed& deed);

/// What width is worth to who knew all orders of the belt: not by the table that the suggestions go by, which
/// would be a judge in its own cause.
class JudgesPrices {
public:
    explicit JudgesPrices(const BeltDeeds& belt);
    double ofPiece(Extent extent, cutting::PieceKind kind) const;
    double ofReady(Extent extent) const;
    double mounting() const { return setting_.rules.mountingCost; }

private:
    foresight::Setting setting_;
    foresight::Hindsight hindsight_;
};

/// A belt's rack in a history that never was.
class PlayedRack {
public:
    PlayedRack(const BeltDeeds& belt, const JudgesPrices& prices, std::vector<store::StockPiece> rack)
        : belt_{belt}, prices_{prices}, pieces_{std::move(rack)} {}

    /// Does what was suggested for an order. False, and nothing of use is left, if the rack does not bear it.
    bool follow(const Deed& deed);
    /// Does what would have been suggested from this rack.
    void decide(const Deed& deed, const Past& past, const Future* future);
    double cost() const { return cost_; }

    /// Widths of the remnants and ready belts: what two racks differ in. Sleeves are there when needed.
    using Contents = std::multimap<cutting::PieceKind, Extent>;
    Contents contents() const { return contentsOf(pieces_); }
    static Contents contentsOf(std::vector<store::StockPiece> pieces);

private:
    const cutting::Rules& rules() const { return belt_.settings.rulesFor(belt_.belt.unit); }
    bool cut(store::PieceId id, Extent left);
    void shelve(Extent extent, Date today);
    bool unshelve(Extent extent);
    void bringSleeves(const std::vector<Wish>& wishes, Date today);
    store::StockPiece made(cutting::PieceKind kind, Extent extent, Date today);
    Outlook outlookFor(const std::vector<Wish>& wishes, Date today, const Past& past) const;

    const BeltDeeds& belt_;
    const JudgesPrices& prices_;
    std::vector<store::StockPiece> pieces_;
    std::int64_t made_ = 0;
    double cost_ = 0;
};

} // namespace riband::shop
