#include "core/belt/reader.h"

#include "core/belt/reading/said_width.h"
#include "core/measure/text.h"

namespace riband::belt {
namespace {

/// Millimetres with as many decimals as it takes not to be read as the label of a listed width: 19.1 stands
/// for 19.05, 19.100 for itself.
std::string plainMillimetres(Width width, const Profile& profile, const Tables& tables) {
    reading::SaidNumber number;
    number.unit = reading::Measure::Millimetre;
    number.millionths = width.inMicrometres() * 1000;
    std::string text = printMillimetres(width);
    const auto point = text.find('.');
    number.decimals = point == std::string::npos ? 0 : static_cast<int>(text.size() - point - 1);
    for (; number.decimals < 3; ++number.decimals) {
        if (reading::saidWidths(number, profile, false, tables).front().width == width) break;
        text += number.decimals == 0 ? ".0" : "0";
    }
    return text;
}

const StandardWidth* listed(Width width, const Profile& profile, const Tables& tables) {
    for (const StandardWidth& standard : tables.widths(profile.name))
        if (standard.extent == Extent{width}) return &standard;
    return nullptr;
}

/// "322L075", or "322L-27.3mm" for a width that has no code.
std::string inchForm(const Belt& belt, Width width, const Profile& profile, const Tables& tables) {
    const StandardWidth* standard = listed(width, profile, tables);
    const std::string start = lengthCode(belt) + profile.name;
    if (standard && !standard->code.empty()) return start + standard->code;
    return start + '-' + plainMillimetres(width, profile, tables) + "mm";
}

std::string finePitchForm(const Belt& belt, Width width, const Profile& profile) {
    if (profile.name == "XXL") return lengthCode(belt) + "XXL" + printMillimetres(width);
    return profile.name + '-' + lengthCode(belt) + '-' + printMillimetres(width) + "mm";
}

std::string trapezoidForm(const Belt& belt, Width width, const Profile& profile) {
    const std::string& single = profile.doubleSided ? profile.base : profile.name;
    std::string text = printMillimetres(width) + ' ' + single + " / " + lengthCode(belt);
    return profile.doubleSided ? text + " DL" : text;
}

/// S belts say tenths of a millimetre; an odd width is said in plain ones with its unit.
std::string flatTopForm(const Belt& belt, Width width, const Profile& profile, const Tables& tables) {
    const std::string start = lengthCode(belt) + profile.name;
    if (listed(width, profile, tables)) return start + std::to_string(width.inMicrometres() / 100);
    return start + '-' + printMillimetres(width) + "mm";
}

std::string toothedForm(const Belt& belt, Width width, const Profile& profile, const Tables& tables) {
    switch (profile.family) {
    case Family::InchTrapezoidal:
        if (profile.name == "XXL" || profile.name == "40DP") return finePitchForm(belt, width, profile);
        return inchForm(belt, width, profile, tables);
    case Family::MetricTrapezoidal:
        return trapezoidForm(belt, width, profile);
    case Family::CurvilinearS:
        return flatTopForm(belt, width, profile, tables);
    case Family::ModuleTrapezoidal:
        return profile.name.substr(1) + '-' + lengthCode(belt) + '-' + printMillimetres(width);
    default:
        return lengthCode(belt) + profile.name + printMillimetres(width);
    }
}

} // namespace

std::string printed(const Belt& belt, Extent width, const Tables& tables) {
    const Profile* profile = tables.profile(belt.profile);
    if (!profile) return designation(belt);
    std::string text = profile->ribbed() ? std::to_string(width.count()) + profile->name + lengthCode(belt)
                                         : toothedForm(belt, width.width(), *profile, tables);
    if (!belt.construction.empty()) text += ", " + belt.construction;
    return text;
}

} // namespace riband::belt
