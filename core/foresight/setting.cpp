#include "core/foresight/setting.h"

namespace riband::foresight {

std::string Setting::fault() const {
    const auto& r = rules;
    if (sleeve <= 0) return "the sleeve has no width";
    if (r.trim < 0 || r.kerf < 0 || r.end < 0 || r.stub < 0)
        return "trim, kerf, end and stub can't be negative";
    if (r.mountingCost < 0 || holdingCost < 0 || interest < 0) return "costs can't be negative";
    if (r.trim + r.end >= sleeve) return "trim and end leave nothing of a sleeve";
    if (listed.empty()) return "no width is listed";
    for (Size width : listed)
        if (width <= 0 || width > sleeve)
            return "a listed width must be above 0 and no wider than the sleeve";
    if (!(ordersPerYear > 0) || !(daysPerYear > 0)) return "the rate and the days of a year must be above 0";
    if (rackLimit < 0) return "the rack limit can't be negative";
    if (shelfRoom < 0 || shelfRoom > shelfLimit)
        return "the shelf takes 0 to " + std::to_string(shelfLimit) + " belts of a width";
    if (shelfAtOnce < 0) return "the belts for the shelf in a mounting can't be negative";
    if (!(ageLimitDays > 0)) return "the age limit must be above 0";
    return {};
}

void Setting::tidy() {
    std::sort(listed.begin(), listed.end());
    listed.erase(std::unique(listed.begin(), listed.end()), listed.end());
}

Size Setting::leastUseful() const {
    const Size narrowest = *std::min_element(listed.begin(), listed.end());
    return rules.trim + narrowest + rules.kerf + rules.reserve(narrowest);
}

} // namespace riband::foresight
