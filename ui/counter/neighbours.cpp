#include "ui/counter/neighbours.h"

#include <algorithm>

namespace riband::ui {

namespace {

std::int64_t apart(const belt::Belt& a, const belt::Belt& b) {
    const std::int64_t d = a.length.inNanometres() - b.length.inNanometres();
    return d < 0 ? -d : d;
}

Extent freeOf(const shop::Shop& shop, const store::StockedBelt& belt) {
    Extent here = Extent::none(belt.unit);
    for (const auto& piece : store::Pieces{shop.connection}.ofBelt(belt.id))
        here = here + (piece.extent - piece.reserved);
    return here;
}

} // namespace

std::vector<Neighbour> neighboursInStock(const shop::Shop& shop, const belt::Belt& wanted, std::size_t most) {
    auto belts = store::Catalogue{shop.connection}.ofProfile(wanted.profile);
    std::stable_sort(belts.begin(), belts.end(), [&](const auto& a, const auto& b) {
        return apart(a.belt, wanted) < apart(b.belt, wanted);
    });
    std::vector<Neighbour> found;
    for (const auto& belt : belts) {
        if (found.size() == most) break;
        if (belt.belt == wanted) continue;
        const Extent here = freeOf(shop, belt);
        if (!here.isNone()) found.push_back({belt, here});
    }
    return found;
}

} // namespace riband::ui
