#include "core/shop/wanted_before.h"

#include "core/store/catalogue.h"
#include "core/store/orders.h"

#include <map>

namespace riband::shop {

std::vector<belt::identify::Sale> wantedBefore(store::Connection& connection) {
    std::map<store::BeltId, std::int64_t> ordered;
    for (const auto& [id, times] : store::Orders{connection}.timesOrdered())
        ordered[id] = times;
    std::vector<belt::identify::Sale> sales;
    for (const store::StockedBelt& each : store::Catalogue{connection}.all())
        if (const auto at = ordered.find(each.id); at != ordered.end())
            sales.push_back({each.belt, static_cast<double>(at->second)});
    return sales;
}

} // namespace riband::shop
