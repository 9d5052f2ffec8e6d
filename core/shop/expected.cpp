#include "core/shop/expected.h"

#include "core/shop/delivery.h"
#include "core/shop/demand.h"
#include "core/shop/kept.h"
#include "core/shop/limits.h"

#include <algorithm>

namespace riband::shop {

namespace {

using Why = Refusal::Why;

store::ExpectedLine lineOf(const Shop& shop, const ExpectedGoods& goods, int position) {
    const store::StockedBelt belt = keptBelt(shop, goods.belt);
    demandDelivery(
        shop,
        {.belt = goods.belt, .sleeves = goods.sleeves, .extent = goods.extent, .costEach = goods.costEach},
        belt.unit);
    return {.position = position,
            .belt = belt.id,
            .extent = goods.extent,
            .sleeves = goods.sleeves,
            .costEach = goods.costEach};
}

store::ExpectedDelivery deliveryOf(const Shop& shop, const Expectation& expectation) {
    if (expectation.lines.empty()) refuse(Why::BadQuantity, "0");
    store::ExpectedDelivery delivery{store::ExpectedId{0},
                                     inOneLine(expectation.supplier),
                                     inOneLine(expectation.reference),
                                     expectation.due,
                                     false,
                                     {}};
    for (const ExpectedGoods& goods : expectation.lines)
        delivery.lines.push_back(lineOf(shop, goods, static_cast<int>(delivery.lines.size()) + 1));
    return delivery;
}

store::ExpectedDelivery openDelivery(const Shop& shop, store::ExpectedId id) {
    store::ExpectedDelivery delivery = store::Goods{shop.connection}.expected(id);
    if (delivery.closed) refuse(Why::AlreadyDone, delivery.reference);
    return delivery;
}

/// What came is counted by belt and width (and counted back when goods in is undone): they stay.
void keepArrived(const Shop& shop, const store::ExpectedLine& before, const Expectation& expectation,
                 store::ExpectedDelivery& after) {
    if (before.arrived == 0) return;
    for (std::size_t i = 0; i < after.lines.size(); ++i) {
        store::ExpectedLine& line = after.lines[i];
        if (expectation.lines[i].position != before.position) continue;
        if (line.belt != before.belt || line.extent != before.extent || line.sleeves < before.arrived) break;
        line.arrived = before.arrived;
        return;
    }
    refuse(Why::HasArrived, store::Catalogue{shop.connection}.at(before.belt).designation);
}

} // namespace

store::ExpectedId expect(const Shop& shop, const Expectation& expectation) {
    return expectAll(shop, {expectation}).front();
}

std::vector<store::ExpectedId> expectAll(const Shop& shop, const std::vector<Expectation>& expectations) {
    store::Transaction transaction{shop.connection};
    std::vector<store::ExpectedId> ids;
    const Moment now = shop.now(); // one for all: they are a list
    for (const Expectation& expectation : expectations)
        ids.push_back(store::Goods{shop.connection}.expect(deliveryOf(shop, expectation), shop.person, now));
    transaction.commit();
    return ids;
}

void changeExpected(const Shop& shop, store::ExpectedId id, const Expectation& expectation) {
    store::Transaction transaction{shop.connection};
    const store::ExpectedDelivery before = openDelivery(shop, id);
    store::ExpectedDelivery after = deliveryOf(shop, expectation);
    after.id = id;
    for (const store::ExpectedLine& line : before.lines)
        keepArrived(shop, line, expectation, after);
    store::Goods{shop.connection}.change(after);
    transaction.commit();
}

void dropExpected(const Shop& shop, store::ExpectedId id) {
    store::Transaction transaction{shop.connection};
    store::Goods{shop.connection}.close(openDelivery(shop, id).id, true);
    transaction.commit();
}

void takeBack(const Shop& shop, const std::vector<store::ExpectedId>& ids) {
    store::Transaction transaction{shop.connection};
    for (const store::ExpectedId id : ids) {
        for (const store::ExpectedLine& line : openDelivery(shop, id).lines)
            if (line.arrived > 0)
                refuse(Why::HasArrived, store::Catalogue{shop.connection}.at(line.belt).designation);
        store::Goods{shop.connection}.close(id, true);
    }
    transaction.commit();
}

std::optional<ExpectedList> lastExpectedList(const Shop& shop) {
    ExpectedList list;
    for (const store::ExpectedDelivery& delivery : store::Goods{shop.connection}.listedLast()) {
        const bool hasArrived = std::any_of(delivery.lines.begin(), delivery.lines.end(),
                                            [](const store::ExpectedLine& line) { return line.arrived > 0; });
        if (delivery.closed || hasArrived) return std::nullopt;
        list.day = delivery.reference;
        list.deliveries.push_back(delivery.id);
    }
    return list.deliveries.empty() ? std::nullopt : std::optional{list};
}

Expectation expectationOf(const Shop& shop, const store::ExpectedDelivery& expected) {
    Expectation all{expected.supplier, expected.reference, expected.due, {}};
    const store::Catalogue catalogue{shop.connection};
    for (const store::ExpectedLine& line : expected.lines)
        all.lines.push_back({.belt = catalogue.at(line.belt).belt,
                             .sleeves = static_cast<int>(line.sleeves),
                             .extent = line.extent,
                             .costEach = line.costEach,
                             .position = line.position});
    return all;
}

} // namespace riband::shop
