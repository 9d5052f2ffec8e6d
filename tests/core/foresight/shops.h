#pragma once

#include "core/foresight/scenario.h"

namespace riband::foresight {

/// A sleeve of 400 mm in the 8 mm pitch: 2.5 mm trim, no kerf, 5 mm end, 15 mm stub; a mounting is worth 4
/// mm.
inline Setting eightMillimetre(Shelf shelf = Shelf::None) {
    Setting setting;
    setting.listed = {20000, 30000, 50000, 85000};
    setting.rules.mountingCost = 4000;
    setting.holdingCost = 2000;
    setting.shelf = shelf;
    return setting;
}

inline Scenario eightMillimetreShop(Shelf shelf = Shelf::None) {
    Scenario shop;
    shop.name = "8 mm";
    shop.setting = eightMillimetre(shelf);
    shop.mix = {.3, .35, .25, .1};
    shop.odd = {.15, 20000, 100000, 500};
    return shop;
}

/// Narrow inch belts, one order a week: the trim is much of what is used.
inline Scenario narrowShop(Shelf shelf) {
    auto shop = eightMillimetreShop(shelf);
    shop.name = "narrow";
    shop.setting.listed = {9500, 12700, 19050, 25400};
    shop.mix = {.2, .3, .25, .25};
    shop.odd = {.08, 8000, 40000, 500};
    shop.years = 8;
    return shop;
}

inline Scenario ribbedShop(Shelf shelf = Shelf::None) {
    Scenario shop;
    shop.name = "ribbed";
    shop.setting.ribs = true;
    shop.setting.sleeve = 110;
    shop.setting.listed = {3, 4, 5, 6, 8, 10, 12};
    shop.setting.rules = {1, 0, 1, 3, 1.1};
    shop.setting.shelf = shelf;
    shop.mix = {.07, .13, .17, .28, .15, .12, .08};
    shop.odd = {.08, 3, 20, 1};
    return shop;
}

} // namespace riband::foresight
