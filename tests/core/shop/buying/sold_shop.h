#pragma once

#include "core/shop/buying/what_if.h"
#include "core/store/offers.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

/// A shop that has sold a belt of 30 mm of H8M 1200 every week for 60 weeks, and nothing else.
struct SoldShop : TestShop {
    SoldShop() {
        const Moment today = time;
        store::ShopSettings plain = store::Settings{connection}.read();
        plain.advice.shelfLimit = 0; // one belt a mounting
        store::Settings{connection}.write(plain);
        time -= std::chrono::days{60 * 7};
        for (int sleeves = 0; sleeves < 6; ++sleeves)
            piece(h8m1200, mm(470), cutting::PieceKind::Sleeve, 4000);
        piece(t5x500, mm(380), cutting::PieceKind::Sleeve, 2500);
        for (int week = 0; week < 60; ++week) {
            const Ordered ordered = order(h8m1200, mm(30), 1);
            cutAll(ordered);
            handOver(shop, ordered.order);
            time += std::chrono::days{7};
        }
        time = today;
        store::Catalogue catalogue{connection};
        store::StockedBelt belt = *catalogue.find(h8m1200);
        belt.newSleeve = mm(470);
        belt.sleeveCost = Money::minor(4000);
        belt.deliveryDays = 4;
        belt.price = WidthPrice::thousandths(30'000); // 0.30 a mm
        belt.listed = {mm(20), mm(30), mm(50)};
        catalogue.change(belt);
    }

    BuyingOutlook outlook() { return lookAtBuying(shop); }
    std::size_t indexOf(const BuyingOutlook& outlook, const std::string& name) const {
        for (std::size_t i = 0; i < outlook.belts.size(); ++i)
            if (outlook.belts[i].belt.designation == name) return i;
        throw std::out_of_range(name);
    }
    const BuyingBelt& h8m(const BuyingOutlook& outlook) const {
        return outlook.belts[indexOf(outlook, "H8M 1200")];
    }
};

} // namespace riband::shop
