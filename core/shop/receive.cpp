#include "core/shop/receive.h"

#include "core/shop/delivery.h"
#include "core/shop/demand.h"
#include "core/shop/kept.h"
#include "core/shop/limits.h"
#include "core/shop/spread.h"

#include <algorithm>

namespace riband::shop {

namespace {

using Why = Refusal::Why;

std::vector<std::int64_t> weightsOf(const std::vector<Delivery>& lines) {
    const bool costs = std::any_of(lines.begin(), lines.end(),
                                   [](const Delivery& line) { return line.costEach > Money::minor(0); });
    std::vector<std::int64_t> weights;
    for (const Delivery& line : lines)
        weights.insert(weights.end(), static_cast<std::size_t>(line.sleeves),
                       costs ? line.costEach.inMinor() : 1);
    return weights;
}

void demandGoods(const Shop& shop, const GoodsIn& goods) {
    if (goods.lines.empty()) refuse(Why::BadQuantity, "0");
    for (const Delivery& line : goods.lines)
        demandDelivery(shop, line, keptBelt(shop, line.belt).unit);
    demandCost(shop, goods.freight);
    if (!goods.expected) return;
    const store::ExpectedDelivery expected = store::Goods{shop.connection}.expected(*goods.expected);
    if (expected.closed) refuse(Why::AlreadyDone, expected.reference);
}

std::vector<store::PieceId> bookAll(const Shop& shop, store::Account source,
                                    const std::vector<Delivery>& deliveries, const GoOn& goOn) {
    store::Transaction transaction{shop.connection};
    std::vector<store::PieceId> made;
    KeptBelts belts{shop};
    constexpr std::size_t between = 64; // deliveries from one question to the next
    for (std::size_t i = 0; i < deliveries.size(); ++i) {
        if (goOn && i % between == 0 &&
            !goOn(static_cast<double>(i) / static_cast<double>(deliveries.size())))
            return {};
        bookDelivery(shop, source, belts.of(deliveries[i].belt), deliveries[i], {}, made);
    }
    if (goOn && !goOn(1)) return {};
    transaction.commit();
    return made;
}

} // namespace

std::vector<std::vector<Money>> freightShares(Money freight, const std::vector<Delivery>& lines) {
    std::vector<std::vector<Money>> shares;
    const std::vector<std::int64_t> weights = weightsOf(lines);
    if (weights.empty()) return std::vector<std::vector<Money>>(lines.size());
    const std::vector<Money> each = spread(freight, weights);
    auto next = each.begin();
    for (const Delivery& line : lines) {
        shares.emplace_back(next, next + line.sleeves);
        next += line.sleeves;
    }
    return shares;
}

std::vector<store::PieceId> receive(const Shop& shop, const std::vector<Delivery>& deliveries,
                                    const GoOn& goOn) {
    return bookAll(shop, store::Account::Bought, deliveries, goOn);
}

std::vector<store::PieceId> takeOver(const Shop& shop, const std::vector<Delivery>& deliveries,
                                     const GoOn& goOn) {
    return bookAll(shop, store::Account::Found, deliveries, goOn);
}

Received receiveGoods(const Shop& shop, const GoodsIn& goods) {
    store::Transaction transaction{shop.connection};
    demandGoods(shop, goods);
    const std::vector<std::vector<Money>> freight = freightShares(goods.freight, goods.lines);
    store::Goods book{shop.connection};
    Received received{book.add({store::DeliveryId{0}, inOneLine(goods.supplier), inOneLine(goods.reference),
                                shop.now(), shop.person, goods.freight, goods.expected}),
                      {}};
    KeptBelts belts{shop};
    for (std::size_t i = 0; i < goods.lines.size(); ++i) {
        const Delivery& line = goods.lines[i];
        const std::size_t before = received.pieces.size();
        bookDelivery(shop, store::Account::Bought, belts.of(line.belt), line, freight[i], received.pieces);
        for (std::size_t k = before; k < received.pieces.size(); ++k)
            book.add(received.delivery, {received.pieces[k], freight[i][k - before], line.labelled});
        if (goods.expected) countArrived(shop, *goods.expected, line, line.sleeves);
    }
    transaction.commit();
    return received;
}

std::vector<Mislabelled> mislabelled(const Shop& shop, store::DeliveryId delivery) {
    std::vector<Mislabelled> rows;
    for (const store::ArrivedPiece& arrived : store::Goods{shop.connection}.piecesOf(delivery)) {
        if (!arrived.labelled) continue;
        const store::StockPiece piece = store::Pieces{shop.connection}.at(arrived.piece);
        const store::StockedBelt belt = store::Catalogue{shop.connection}.at(piece.belt);
        const store::RecordedMovement came = store::Ledger{shop.connection}.historyOf(arrived.piece).front();
        const store::Posting booked = arrivalOf(came.movement, arrived.piece);
        const Extent extent = Extent::of(belt.unit, booked.amount);
        const std::int64_t invoiced = (booked.cost - arrived.freight).inMinor();
        const std::int64_t short_ = arrived.labelled->count() - extent.count();
        rows.push_back({piece, belt.designation, extent, *arrived.labelled,
                        Money::minor(roundedQuotient(invoiced * short_, arrived.labelled->count()))});
    }
    return rows;
}

std::optional<KnownCode> knownCode(const Shop& shop, const std::string& code) {
    const auto meaning = store::Goods{shop.connection}.meaning(code);
    if (!meaning) return std::nullopt;
    return KnownCode{store::Catalogue{shop.connection}.at(meaning->belt), meaning->extent};
}

} // namespace riband::shop
