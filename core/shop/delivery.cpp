#include "core/shop/delivery.h"

#include "core/measure/text.h"
#include "core/shop/demand.h"
#include "core/shop/kept.h"
#include "core/shop/limits.h"

#include <algorithm>

namespace riband::shop {

namespace {

using store::Account;
using store::Act;
using Why = Refusal::Why;

Account homeOf(cutting::PieceKind kind) {
    return kind == cutting::PieceKind::Ready ? Account::Ready : Account::Rack;
}

store::NewPiece pieceOf(const Delivery& delivery, store::BeltId belt, Date today) {
    return {.belt = belt,
            .kind = delivery.kind,
            .parent = std::nullopt,
            .place = delivery.place,
            .received = today,
            .made = delivery.made,
            .batch = inOneLine(delivery.batch)};
}

void rememberCost(const Shop& shop, store::StockedBelt& belt, const Delivery& delivery) {
    const bool told = delivery.kind == cutting::PieceKind::Sleeve && delivery.costEach > Money::minor(0);
    if (!told || belt.sleeveCost == delivery.costEach) return;
    belt.sleeveCost = delivery.costEach;
    store::Catalogue{shop.connection}.change(belt);
}

/// The width that comes with every sleeve of a code is known once it came twice alike; a first time counts.
void learnCode(const Shop& shop, store::BeltId belt, const Delivery& delivery) {
    if (delivery.supplierCode.empty()) return;
    store::Goods{shop.connection}.learn(
        {delivery.supplierCode, belt, delivery.labelled.value_or(delivery.extent)}, shop.person, shop.now());
}

bool fulfils(const store::ExpectedLine& line, store::BeltId belt, const Delivery& delivery) {
    return line.belt == belt &&
           (line.extent == delivery.extent || (delivery.labelled && line.extent == *delivery.labelled));
}

} // namespace

void demandCost(const Shop& shop, Money cost) {
    if (cost >= Money::minor(0) && cost <= dearestSleeve) return;
    refuse(Why::BadQuantity, printMoney(cost, store::Settings{shop.connection}.read().prices.currency));
}

void demandDelivery(const Shop& shop, const Delivery& delivery, Unit unit) {
    for (const Extent extent : {delivery.extent, delivery.labelled.value_or(delivery.extent)}) {
        demandExtent(unit, extent);
        if (extent > widestPiece(unit)) refuse(Why::BadWidth, printCount(extent));
    }
    demandQuantity(delivery.sleeves);
    demandCost(shop, delivery.costEach);
    demandPlace(shop, delivery.place);
    if (delivery.made && *delivery.made > lastMade(shop)) refuse(Why::BadQuantity, printDate(*delivery.made));
}

void bookDelivery(const Shop& shop, store::Account source, store::StockedBelt& belt, const Delivery& delivery,
                  const std::vector<Money>& freight, std::vector<store::PieceId>& made) {
    demandDelivery(shop, delivery, belt.unit);
    const Moment now = shop.now();
    const std::int64_t width = delivery.extent.count();
    std::vector<store::Posting> postings;
    for (int i = 0; i < delivery.sleeves; ++i) {
        const store::PieceId piece =
            store::Pieces{shop.connection}.add(pieceOf(delivery, belt.id, dayOf(now)));
        const Money cost =
            freight.empty() ? delivery.costEach : delivery.costEach + freight[static_cast<std::size_t>(i)];
        postings.push_back({source, piece, {}, -width, -cost, {}});
        postings.push_back({homeOf(delivery.kind), piece, {}, width, cost, {}});
        made.push_back(piece);
    }
    store::Ledger{shop.connection}.record(
        store::Movement{{Act::Receive, now, shop.person, belt.id, "", {}}, std::move(postings)});
    rememberCost(shop, belt, delivery);
    learnCode(shop, belt.id, delivery);
}

void countArrived(const Shop& shop, store::ExpectedId id, const Delivery& delivery, std::int64_t sleeves) {
    store::Goods goods{shop.connection};
    const auto kept = store::Catalogue{shop.connection}.find(delivery.belt);
    const store::ExpectedDelivery expected = goods.expected(id);
    const store::ExpectedLine* chosen = nullptr;
    for (const store::ExpectedLine& line : expected.lines) {
        if (!kept || !fulfils(line, kept->id, delivery)) continue;
        const bool open = sleeves > 0 ? line.arrived < line.sleeves : line.arrived >= -sleeves;
        if (!chosen || open) chosen = &line;
        if (open) break;
    }
    if (chosen) goods.arrive(id, chosen->position, std::max(sleeves, -chosen->arrived));
}

store::Posting arrivalOf(const store::Movement& movement, store::PieceId piece) {
    const auto& postings = movement.postings();
    return *std::find_if(postings.begin(), postings.end(), [&](const store::Posting& posting) {
        return posting.piece == piece && posting.amount > 0;
    });
}

} // namespace riband::shop
