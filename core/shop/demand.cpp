#include "core/shop/demand.h"

#include "core/measure/text.h"

namespace riband::shop {

namespace {

constexpr std::int64_t mostBelts = 10'000;

constexpr Extent widest(Unit unit) {
    return unit == Unit::Rib ? Extent{Ribs{40'000}} : Extent{Width::millimetres(100'000)};
}

} // namespace

void refuse(Refusal::Why why, const std::string& detail) { throw Refusal{why, detail}; }

void demandExtent(Unit unit, Extent extent) {
    if (extent.unit() != unit) refuse(Refusal::Why::UnitMixed, printCount(extent));
    if (extent.isNone() || extent > widest(unit)) refuse(Refusal::Why::BadWidth, printCount(extent));
}

void demandQuantity(std::int64_t quantity) {
    if (quantity < 1 || quantity > mostBelts) refuse(Refusal::Why::BadQuantity, std::to_string(quantity));
}

void demandBelts(Unit unit, Extent extent, std::int64_t quantity) {
    demandExtent(unit, extent);
    demandQuantity(quantity);
    const std::int64_t most = widest(unit).count() * 100;
    if (extent.count() * quantity > most) refuse(Refusal::Why::BadQuantity, std::to_string(quantity));
}

} // namespace riband::shop
