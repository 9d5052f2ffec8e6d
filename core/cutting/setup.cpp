#include "core/cutting/setup.h"

#include "core/belt/drive/open_belt.h"

#include <algorithm>
#include <cctype>
#include <numbers>
#include <stdexcept>
#include <string_view>

// The tooth tips lie on the plain shaft, the cords keep their length: the shaft acts like a pulley whose
// pitch diameter is its own plus twice (tooth height + pitch line), and the distance follows from the exact
// length of an open belt. Derivation and doubts: docs/mathematics.md, "The distance of the shafts".

namespace riband::cutting {

namespace {

using std::numbers::pi;

constexpr double shortSleeve = 500;      // mm; common practice, no source
constexpr double nearSmallest = 1.25;    // times the smallest shaft; common practice, no source
constexpr double ribbedBackOverCord = 1; // mm from the cords to the back; common practice, no source

/// From shaft to cord, and how far that may be wrong.
struct Offset {
    double mm;
    double doubt;
};

/// What a source leaves out is taken from the middle of all profiles of the tables, with their spread as
/// doubt: tooth heights are 0.18 to 0.44 of the pitch, pitch lines 0.04 to 0.13.
Offset estimated(const std::optional<double>& known, double pitch, double share, double spread) {
    return known ? Offset{*known, 0} : Offset{share * pitch, spread * pitch};
}

/// The spread of printed values of ht + a.
double printedSpread(belt::Family family) {
    switch (family) {
    case belt::Family::InchTrapezoidal:
        return 0.02;
    case belt::Family::CurvilinearR:
    case belt::Family::CurvilinearG:
        return 0.2;
    default:
        return 0.1;
    }
}

Offset toothedOffset(const belt::Profile& profile) {
    const double pitch = profile.pitch.inMillimetres();
    const Offset height = estimated(profile.form.height, pitch, 0.31, 0.13);
    const Offset line = estimated(profile.form.pitchLine, pitch, 0.085, 0.045);
    return {height.mm + line.mm, height.doubt + line.doubt + printedSpread(profile.family)};
}

/// Rib tips on the shaft; no standard says how far the cords are from them. Heights differ by a tenth or
/// more.
Offset ribbedOffset(const belt::Profile& profile) {
    const double total = profile.form.total.value_or(1.5 * profile.pitch.inMillimetres());
    return {total - ribbedBackOverCord, 0.1 * total};
}

/// A belt as the shafts see it.
struct OnShafts {
    Offset offset;
    double length;      ///< mm, at the cords
    double lengthDoubt; ///< mm
    double width;       ///< mm, of the piece
    bool approximate;
};

OnShafts onShafts(const belt::Belt& belt, const belt::Profile& profile, Extent piece,
                  const belt::Tables& tables) {
    const bool ribbed = profile.ribbed();
    const Width pitch = Width::micrometres(profile.pitch.inNanometres() / 1000);
    OnShafts on{ribbed ? ribbedOffset(profile) : toothedOffset(profile), belt.length.inMillimetres(), 0,
                static_cast<double>(piece.shownWidth(pitch).inMicrometres()) / 1000,
                ribbed || !profile.form.height || !profile.form.pitchLine};
    if (ribbed) on.length += 2 * pi * profile.form.effectiveLine.value_or(0);
    if (const auto tolerance = tables.lengthTolerance(belt))
        on.lengthDoubt =
            static_cast<double>(std::max(tolerance->plus, tolerance->minus).inMicrometres()) / 1000;
    return on;
}

bool says(const std::string& text, std::string_view word) {
    const auto same = [](char a, char b) { return std::tolower(static_cast<unsigned char>(a)) == b; };
    return std::search(text.begin(), text.end(), word.begin(), word.end(), same) != text.end();
}

bool isPolyurethane(const belt::Belt& belt, const belt::Profile& profile) {
    if (says(belt.construction, "polyurethane")) return true;
    return profile.body.starts_with("polyurethane") && !says(belt.construction, "rubber");
}

double thinner(const Shaft& shaft) { return std::min(shaft.diameterDriven, shaft.diameterTension); }

/// The distance for a shaft pair, or why it can't be.
Outcome<double, SetUpFault> distanceOn(const Shaft& shaft, const OnShafts& on, double gap) {
    if (on.width > shaft.usable - gap) return SetUpFault::TooWide;
    const auto distance = belt::drive::centreDistance(shaft.diameterDriven + 2 * on.offset.mm,
                                                      shaft.diameterTension + 2 * on.offset.mm, on.length);
    const double touching = (shaft.diameterDriven + shaft.diameterTension) / 2;
    if (!distance || *distance < std::max(shaft.closest, touching)) return SetUpFault::TooShort;
    if (*distance > shaft.farthest) return SetUpFault::TooLong;
    return *distance;
}

bool bendsTooMuch(const Shaft& shaft, const belt::Profile& profile) {
    return profile.smallestShaft && thinner(shaft) < *profile.smallestShaft;
}

std::vector<SetUp::Remark> remarksOn(const belt::Belt& belt, const belt::Profile& profile, const Shaft& shaft,
                                     const Cutter& cutter) {
    using Remark = SetUp::Remark;
    std::vector<Remark> remarks;
    if (belt.length.inMillimetres() < shortSleeve) remarks.push_back(Remark::LittleTension);
    if (bendsTooMuch(shaft, profile))
        remarks.push_back(Remark::ShaftUnderSmallest);
    else if (profile.smallestShaft && thinner(shaft) < nearSmallest * *profile.smallestShaft)
        remarks.push_back(Remark::NearSmallestShaft);
    if (says(belt.construction, "steel") && !cutter.cutsSteelCord) remarks.push_back(Remark::SteelCord);
    if (says(belt.construction, "aramid") && !cutter.cutsAramidCord) remarks.push_back(Remark::AramidCord);
    if (isPolyurethane(belt, profile) && !cutter.cutsPolyurethane) remarks.push_back(Remark::Polyurethane);
    if (profile.ribbed()) remarks.push_back(Remark::CutInTheGroove);
    return remarks;
}

/// Of the reasons against every shaft the one that came nearest to fitting: width is looked at first, then
/// length.
SetUpFault nearestFault(const std::vector<SetUpFault>& faults) {
    for (const SetUpFault fault : {SetUpFault::TooShort, SetUpFault::TooLong, SetUpFault::TooWide})
        if (std::count(faults.begin(), faults.end(), fault) > 0) return fault;
    return SetUpFault::NoShaft;
}

} // namespace

Outcome<SetUp, SetUpFault> setUp(const belt::Belt& belt, Extent piece, const belt::Tables& tables,
                                 const Cutter& cutter) {
    const belt::Profile* profile = tables.profile(belt.profile);
    if (!profile) throw std::invalid_argument{"a belt is of a profile of the tables"};
    const OnShafts on = onShafts(belt, *profile, piece, tables);
    std::vector<SetUpFault> faults;
    std::optional<SetUp> best;
    const auto rank = [&](std::size_t i) {
        return std::pair{!bendsTooMuch(cutter.shafts[i], *profile), thinner(cutter.shafts[i])};
    };
    for (std::size_t i = 0; i < cutter.shafts.size(); ++i) {
        const auto distance = distanceOn(cutter.shafts[i], on, cutter.gap);
        if (!distance)
            faults.push_back(distance.reason());
        else if (!best || rank(i) > rank(best->shaft))
            best = SetUp{i, *distance, pi * on.offset.doubt + on.lengthDoubt / 2, on.approximate, {}};
    }
    if (!best) return nearestFault(faults);
    if (on.approximate) best->doubt = std::max(best->doubt, 1.0);
    best->remarks = remarksOn(belt, *profile, cutter.shafts[best->shaft], cutter);
    return *best;
}

} // namespace riband::cutting
