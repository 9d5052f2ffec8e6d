#include "core/shop/advised.h"

#include <set>

namespace riband::shop {

namespace {

using ForShelf = store::AdvisedWay::ForShelf;

std::vector<ForShelf> counted(const std::map<Extent, std::int64_t>& belts) {
    std::vector<ForShelf> all;
    for (const auto& [extent, count] : belts)
        all.push_back({extent, count});
    return all;
}

std::set<store::PieceId> piecesOf(const store::AdvisedWay& way) {
    std::set<store::PieceId> pieces;
    for (const auto& from : way.pieces)
        pieces.insert(from.piece);
    return pieces;
}

} // namespace

store::AdvisedWay advisedWay(const Outlook& outlook, const Way& way) {
    store::AdvisedWay advised{.cost = way.cost,
                              .costMoney = asMoney(outlook.belt, way.cost),
                              .worthLeft = way.worthLeft,
                              .sleevesOpened = way.plan.newSleeves,
                              .fromShelf = static_cast<std::int64_t>(way.plan.taken.size()),
                              .pieces = {},
                              .forShelf = {}};
    std::map<Extent, std::int64_t> shelf;
    for (std::size_t i = 0; i < way.plan.mountings.size(); ++i) {
        advised.pieces.push_back(
            {outlook.pieces[way.plan.mountings[i].piece].id, way.left(i, outlook.problem.rules)});
        if (i < way.forShelf.size())
            for (const Extent belt : way.forShelf[i])
                ++shelf[belt];
    }
    advised.forShelf = counted(shelf);
    return advised;
}

store::AdvisedWay sumOf(store::AdvisedWay one, const store::AdvisedWay& other) {
    one.cost += other.cost;
    one.costMoney = one.costMoney + other.costMoney;
    one.worthLeft += other.worthLeft;
    one.sleevesOpened += other.sleevesOpened;
    one.fromShelf += other.fromShelf;
    one.pieces.insert(one.pieces.end(), other.pieces.begin(), other.pieces.end());
    std::map<Extent, std::int64_t> shelf;
    for (const ForShelf& belts : one.forShelf)
        shelf[belts.extent] += belts.belts;
    for (const ForShelf& belts : other.forShelf)
        shelf[belts.extent] += belts.belts;
    one.forShelf = counted(shelf);
    return one;
}

bool otherPieces(const store::AdvisedWay& one, const store::AdvisedWay& other) {
    return piecesOf(one) != piecesOf(other);
}

} // namespace riband::shop
