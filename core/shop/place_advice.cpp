#include "core/shop/place_advice.h"

#include "core/shop/kept.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace riband::shop {

namespace {

using Why = PlaceAdvice::Why;

class Judge {
public:
    Judge(store::BeltId belt, const std::vector<store::Place>& places,
          const std::vector<store::StockPiece>& alike)
        : belt_{belt} {
        for (const store::StockPiece& piece : alike)
            if (!piece.place.empty()) ++alike_[piece.place];
        for (const store::Place& place : places) {
            if (place.parent) holdsOthers_.insert(*place.parent);
            if (place.parent && alike_.contains(place.name)) parents_.insert(*place.parent);
        }
    }

    std::optional<PlaceAdvice> of(const store::Place& place) const {
        if (place.fixedFor && *place.fixedFor != belt_) return std::nullopt;
        const auto here = alike_.find(place.name);
        const std::int64_t count = here == alike_.end() ? 0 : here->second;
        if (place.fixedFor) return PlaceAdvice{place.name, Why::Fixed, count};
        if (count > 0) return PlaceAdvice{place.name, Why::Same, count};
        if (place.pieces > 0 || holdsOthers_.contains(place.id)) return std::nullopt;
        const bool beside = place.parent && parents_.contains(*place.parent);
        return PlaceAdvice{place.name, beside ? Why::Beside : Why::Empty, 0};
    }

private:
    store::BeltId belt_;
    std::map<std::string, std::int64_t> alike_;
    std::set<store::PlaceId> parents_, holdsOthers_;
};

int rank(Why why) {
    switch (why) {
    case Why::Fixed:
        return 0;
    case Why::Front:
    case Why::Same:
        return 1;
    case Why::Beside:
        return 2;
    case Why::Empty:
        return 3;
    }
    return 4;
}

} // namespace

bool narrow(const store::StockedBelt& belt, cutting::PieceKind kind, Extent extent) {
    return kind != cutting::PieceKind::Sleeve && extent.count() * 4 < belt.newSleeve.count();
}

std::vector<PlaceAdvice> advisePlaces(const store::StockedBelt& belt, cutting::PieceKind kind, Extent extent,
                                      const std::vector<store::Place>& places,
                                      const std::vector<store::StockPiece>& alike, std::size_t most) {
    const Judge judge{belt.id, places, alike};
    const bool toFront = narrow(belt, kind, extent);
    std::vector<std::pair<bool, PlaceAdvice>> found; ///< with whether it is on the wrong side of the rack
    for (const store::Place& place : places)
        if (auto advice = judge.of(place)) found.emplace_back(place.front != toFront, *advice);
    std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
        const auto key = [](const auto& each) {
            return std::tuple{rank(each.second.why), each.first, -each.second.alike};
        };
        return key(a) < key(b);
    });
    std::vector<PlaceAdvice> best;
    for (auto& [wrongSide, advice] : found) {
        if (best.size() == most) break;
        if (toFront && !wrongSide && advice.why != Why::Fixed) advice.why = Why::Front;
        best.push_back(advice);
    }
    return best;
}

std::vector<PlaceAdvice> advisePlaces(const Shop& shop, const store::StockedBelt& belt,
                                      cutting::PieceKind kind, Extent extent, std::size_t most) {
    return advisePlaces(belt, kind, extent, store::Places{shop.connection}.all(),
                        store::Pieces{shop.connection}.ofBelt(belt.id), most);
}

std::string placeFor(const Shop& shop, const belt::Belt& belt, cutting::PieceKind kind, Extent extent,
                     const std::vector<Delivery>& beside) {
    if (!shop.tables->profile(belt.profile)) return {};
    const store::StockedBelt kept = entryOf(shop, belt);
    const std::size_t any = beside.size() + 1; // so many suffice, whichever the others take
    std::string alike;
    std::set<std::string> taken;
    for (const Delivery& line : beside) {
        if (line.place.empty()) continue;
        if (line.belt == belt && narrow(kept, line.kind, line.extent) == narrow(kept, kind, extent))
            alike = line.place;
        else
            taken.insert(line.place);
    }
    for (const PlaceAdvice& advice : advisePlaces(shop, kept, kind, extent, any)) {
        const bool empty = advice.why != Why::Fixed && advice.alike == 0;
        if (!empty) return advice.place;
        if (!alike.empty()) return alike;
        if (!taken.contains(advice.place)) return advice.place;
    }
    return alike;
}

} // namespace riband::shop
