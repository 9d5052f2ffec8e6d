#include "core/shop/delivery_time.h"

#include "core/shop/allot.h"

#include <algorithm>

namespace riband::shop {

int deliveryDays(const store::StockedBelt& belt, const store::ShopSettings& settings) {
    return belt.deliveryDays > 0 ? belt.deliveryDays : settings.buying.deliveryDays;
}

std::vector<int> deliveryDays(const Shop& shop, const store::Order& order) {
    store::Transaction transaction{shop.connection}; // one state of the shop; nothing is kept
    std::vector<Wanted> wanted;
    for (const store::OrderLine& line : order.lines)
        if (line.quantity > line.cancelled)
            wanted.push_back({line.id, line.belt, line.extent, line.quantity - line.cancelled, {}, {}});
    const std::vector<store::LineId> notHere = allot(shop, wanted).unserved;
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    std::vector<int> days;
    for (const store::OrderLine& line : order.lines) {
        const bool here = std::find(notHere.begin(), notHere.end(), line.id) == notHere.end();
        days.push_back(here ? 0 : deliveryDays(store::Catalogue{shop.connection}.at(line.belt), settings));
    }
    return days;
}

} // namespace riband::shop
