#include "core/shop/reports/names.h"

#include "core/store/cutters.h"

namespace riband::shop {

namespace {

/// From the belt's weight by metre in the standard that gives its pull; what a rib weighs no table says.
std::optional<double> weightOf(const belt::Tables& tables, const store::StockedBelt& belt) {
    const belt::ReferencePull* pull = tables.referencePull(belt.belt.profile);
    if (pull == nullptr || belt.unit == Unit::Rib) return std::nullopt;
    return pull->kilogramsPerMetre / (static_cast<double>(pull->width.inMicrometres()) / 1e6);
}

double areaOfOne(const belt::Profile* profile, const store::StockedBelt& belt) {
    const double length = static_cast<double>(belt.belt.length.inNanometres()) / 1e9;
    if (belt.unit == Unit::Micrometre) return length / 1e6;
    return profile ? length * static_cast<double>(profile->pitch.inNanometres()) / 1e9 : 0;
}

} // namespace

const char* wordFor(belt::Family family) {
    using belt::Family;
    switch (family) {
    case Family::InchTrapezoidal:
        return "inch trapezoidal";
    case Family::MetricTrapezoidal:
        return "metric trapezoidal";
    case Family::CurvilinearH:
        return "curvilinear H";
    case Family::CurvilinearR:
        return "curvilinear R";
    case Family::CurvilinearS:
        return "curvilinear S";
    case Family::CurvilinearG:
        return "curvilinear G";
    case Family::ModuleTrapezoidal:
        return "module trapezoidal";
    case Family::VRibbed:
        return "V-ribbed";
    }
    return "";
}

ReportNames::ReportNames(const Shop& shop) {
    for (const store::StockedBelt& belt : store::Catalogue{shop.connection}.all()) {
        const belt::Profile* profile = shop.tables->profile(belt.belt.profile);
        belts_.emplace(belt.id, ReportBelt{belt.designation, belt.belt.profile,
                                           profile ? wordFor(profile->family) : "", belt.unit,
                                           areaOfOne(profile, belt), weightOf(*shop.tables, belt)});
    }
    for (const store::Person& person : store::People{shop.connection}.all())
        people_.emplace(person.id, person.initials);
    for (const auto& cutter : store::Cutters{shop.connection}.all())
        cutters_.emplace(cutter.id, cutter.name);
}

} // namespace riband::shop
