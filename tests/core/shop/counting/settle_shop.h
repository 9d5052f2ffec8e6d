#pragma once

#include "core/shop/counting/count.h"
#include "core/shop/counting/settle.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

/// A shop whose pieces are counted and settled.
struct SettleShop : TestShop {
    store::PieceId at(Extent extent, const std::string& place = "A1", std::int64_t cost = 1'000) {
        const store::PieceId made = piece(h8m1200, extent, cutting::PieceKind::Remnant, cost);
        move(shop, made, place);
        return made;
    }
    using TestShop::at;
    /// Measured twice.
    void measure(store::CountId count, store::PieceId id, Extent extent) {
        note(shop, count, id, extent, store::Method::Calliper);
        note(shop, count, id, extent, store::Method::Calliper);
    }
    Finding only() {
        const std::vector<Finding> all = findings(shop);
        REQUIRE(all.size() == 1);
        return all.front();
    }
    Settled acceptFirst(const Finding& finding) {
        return settle(shop, finding.difference, finding.proposals.front());
    }
};

} // namespace riband::shop
