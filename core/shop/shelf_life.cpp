#include "core/shop/shelf_life.h"

#include "core/shop/demand.h"
#include "core/shop/people.h"

#include <algorithm>

namespace riband::shop {

namespace {

/// "rubber or polyurethane": the usual body is named first.
const char* bodyIn(const std::string& words) {
    for (const char* body : shelfBodies)
        if (words.starts_with(body)) return body;
    return nullptr;
}

} // namespace

ShelfLife::ShelfLife(const Shop& shop)
    : tables_{*shop.tables}, set_{store::readShelfLives(shop.connection)} {}

store::ShelfYears ShelfLife::of(const std::string& body) const {
    if (const auto found = set_.find(body); found != set_.end()) return found->second;
    const belt::Tables::ShelfLife life = tables_.shelfLife(body);
    return {life.years, life.extension};
}

store::ShelfYears ShelfLife::of(const store::StockedBelt& belt) const {
    if (const char* body = bodyIn(belt.body)) return of(std::string{body});
    const belt::Profile* profile = tables_.profile(belt.belt.profile);
    if (const char* body = profile ? bodyIn(profile->body) : nullptr) return of(std::string{body});
    store::ShelfYears shortest = of(std::string{shelfBodies.front()});
    for (const char* body : shelfBodies)
        if (const auto life = of(std::string{body}); life.years < shortest.years) shortest = life;
    return shortest;
}

void setShelfLives(const Shop& shop, const store::ShelfLives& lives) {
    store::Transaction transaction{shop.connection};
    demandRole(shop, store::Role::Owner);
    for (const auto& [body, life] : lives) {
        const bool known = std::find(shelfBodies.begin(), shelfBodies.end(), body) != shelfBodies.end();
        const bool right = life.years >= 1 && life.years <= longestShelfLife && life.extension >= 0 &&
                           life.extension <= longestShelfLife;
        if (!known || !right) refuse(Refusal::Why::BadQuantity, body);
    }
    store::writeShelfLives(shop.connection, lives);
    transaction.commit();
}

} // namespace riband::shop
