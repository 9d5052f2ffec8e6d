#include "core/store/offers.h"

#include "core/store/statement.h"

namespace riband::store {

std::map<BeltId, std::vector<SleeveOffer>> SleeveOffers::all() const {
    std::map<BeltId, std::vector<SleeveOffer>> offers;
    Statement rows{connection_, "SELECT s.belt, b.unit, s.extent, s.cost, s.delivery_days FROM sleeve_offer s"
                                " JOIN belt b ON b.id = s.belt ORDER BY s.belt, s.extent"};
    while (rows.next())
        offers[rows.get<BeltId>(0)].push_back(
            {rows.extent(2, rows.get<Unit>(1)), rows.get<Money>(3), rows.get<int>(4)});
    return offers;
}

void SleeveOffers::replace(BeltId belt, const std::vector<SleeveOffer>& offers) {
    change(connection_, "DELETE FROM sleeve_offer WHERE belt = ?", belt);
    for (const SleeveOffer& offer : offers)
        change(connection_,
               "INSERT INTO sleeve_offer (belt, extent, cost, delivery_days) VALUES (?, ?, ?, ?)", belt,
               offer.extent, offer.cost, offer.deliveryDays);
}

} // namespace riband::store
