#include "core/belt/load.h"

#include <tuple>

namespace riband::belt {
namespace {

Family familyOf(const Field& field) {
    static const std::map<std::string, Family, std::less<>> families{
        {"inch trapezoidal", Family::InchTrapezoidal},     {"metric trapezoidal", Family::MetricTrapezoidal},
        {"curvilinear H", Family::CurvilinearH},           {"curvilinear R", Family::CurvilinearR},
        {"curvilinear S", Family::CurvilinearS},           {"curvilinear G", Family::CurvilinearG},
        {"module trapezoidal", Family::ModuleTrapezoidal}, {"V-ribbed", Family::VRibbed}};
    const auto at = families.find(field.text());
    if (at == families.end()) field.fail("is no family of profiles");
    return at->second;
}

ToothShape shapeOf(const Field& field) {
    static const std::map<std::string, ToothShape, std::less<>> shapes{
        {"trapezoid", ToothShape::Trapezoid},
        {"round", ToothShape::HalfRound},
        {"round, flat-topped", ToothShape::FlatTopRound},
        {"two-lobed parabola", ToothShape::DimpledRound},
        {"round, modified", ToothShape::FullRound},
        {"rib", ToothShape::Rib}};
    const auto at = shapes.find(field.text());
    if (at == shapes.end()) field.fail("is no shape of a tooth");
    return at->second;
}

/// "5.4-6.0": what makers print.
void takeRange(const Field& field, ToothForm& form) {
    if (field.empty()) return;
    const std::string& text = field.text();
    const auto dash = text.find('-');
    if (dash == std::string::npos) field.fail("is no range of two sizes");
    const std::string least = text.substr(0, dash), most = text.substr(dash + 1);
    form.totalLeast = field.part(least).decimal();
    form.totalMost = field.part(most).decimal();
    if (*form.totalLeast > *form.totalMost) field.fail("is no range from small to large");
}

ToothForm formOf(const TableRow& row) {
    ToothForm form;
    form.height = row["ht_mm"].decimalIfAny();
    form.total = row["hs_mm"].decimalIfAny();
    takeRange(row["hs_range_mm"], form);
    form.pitchLine = row["a_mm"].decimalIfAny();
    form.rootWidth = row["S_root_mm"].decimalIfAny();
    form.flankAngleDegrees = row["two_beta_deg"].decimalIfAny();
    form.rootRadius = row["rr_root_mm"].decimalIfAny();
    form.tipRadius = row["ra_tip_mm"].decimalIfAny();
    form.ribAngleDegrees = row["rib_angle_deg"].decimalIfAny();
    form.effectiveLine = row["be_mm"].decimalIfAny();
    return form;
}

/// An inch pitch and its millimetres must be the same: 0.375 in = 9.525 mm.
void checkPitch(const TableRow& row, Length pitch) {
    if (pitch.inNanometres() == 0) row["pitch_mm"].fail("is no pitch");
    const Field inches = row["pitch_in"];
    if (!inches.empty() && inches.millionths() * 254 != pitch.inNanometres() * 10)
        inches.fail("in is not the pitch in millimetres");
}

Profile profileOf(const TableRow& row) {
    Profile profile{.name = row["profile"].text(),
                    .family = familyOf(row["family"]),
                    .standard = row["short_standard"].text(),
                    .standardInFull = row["standard"].text(),
                    .shape = shapeOf(row["shape"]),
                    .doubleSided = !row["base"].empty(),
                    .base = row["base"].text(),
                    .pitch = row["pitch_mm"].length(),
                    .form = formOf(row),
                    .body = row["usual_body"].text(),
                    .smallestPulley = {},
                    .smallestShaft = {},
                    .smallestRoller = {},
                    .confidence = row["confidence"].confidence()};
    checkPitch(row, profile.pitch);
    return profile;
}

Profile& profileNamed(const Field& field, Tables::Data& data) {
    const auto at = data.byName.find(field.text());
    if (at == data.byName.end()) field.fail("is no profile");
    return data.profiles[at->second];
}

void takeShape(const TableRow& row, Profile& profile) {
    const std::string& parameter = row["parameter"].text();
    ToothForm& form = profile.form;
    const auto is = [&](std::string_view name) { return parameter.find(name) != std::string::npos; };
    if (!row["x_mm"].empty()) {
        // The table writes signed figures; a tooth hangs below its land.
        form.joints.push_back({row["x_mm"].decimal(), row["y_mm"].decimal()});
        return;
    }
    const auto value = row["value_mm"].decimalIfAny();
    if (!value) return; // a misprint of the source, left out
    if (is("root arc radius") || is("root radius"))
        form.rootRadius = value;
    else if (is("tip arc radius") || is("tip radius"))
        form.tipRadius = value;
    else if (is("coefficient C"))
        form.parabola = value;
    else if (is("root width"))
        form.rootWidth = value;
    else if (is("flank radius"))
        form.flankRadius = value;
    else if (is("nose radius"))
        form.noseRadius = value;
    else
        row["parameter"].fail("is no figure of a tooth");
}

/// A double-sided tooth is the tooth of its single-sided profile.
void lendFormsToDoubleSided(Tables::Data& data) {
    for (Profile& profile : data.profiles) {
        if (!profile.doubleSided) continue;
        const auto base = data.byName.find(profile.base);
        if (base == data.byName.end()) throw TableFault{"profiles", 0, profile.base + " is no profile"};
        const Profile& single = data.profiles[base->second];
        const auto [total, least, most] =
            std::tuple{profile.form.total, profile.form.totalLeast, profile.form.totalMost};
        profile.form = single.form;
        std::tie(profile.form.total, profile.form.totalLeast, profile.form.totalMost) =
            std::tuple{total, least, most};
        profile.smallestPulley = single.smallestPulley;
        profile.smallestShaft = single.smallestShaft;
        profile.smallestRoller = single.smallestRoller;
    }
}

bool alike(const Profile& a, const Profile& b) {
    if (a.name == b.name || a.ribbed() || b.ribbed() || a.doubleSided != b.doubleSided) return false;
    const auto p = a.pitch.inNanometres(), q = b.pitch.inNanometres();
    return std::abs(p - q) * 40 <= std::max(p, q); // XL 5.08 and T5 5.0 differ by 1.6 %
}

void findLookAlikes(Tables::Data& data) {
    for (std::size_t i = 0; i < data.profiles.size(); ++i)
        for (std::size_t j = 0; j < data.profiles.size(); ++j)
            if (alike(data.profiles[i], data.profiles[j])) data.rows[i].lookAlikes.push_back(j);
}

} // namespace

ProfileRows& rowsOf(const Field& profile, Tables::Data& data) {
    const auto at = data.byName.find(profile.text());
    if (at == data.byName.end()) profile.fail("is no profile");
    return data.rows[at->second];
}

void loadProfiles(const TableTexts& texts, Tables::Data& data) {
    eachRow(texts, "profiles", [&](const TableRow& row) {
        Profile profile = profileOf(row);
        if (!data.byName.emplace(profile.name, data.profiles.size()).second)
            row["profile"].fail("stands twice");
        data.profiles.push_back(std::move(profile));
    });
    data.rows.resize(data.profiles.size());
    eachRow(texts, "tooth_shapes",
            [&](const TableRow& row) { takeShape(row, profileNamed(row["profile"], data)); });
    eachRow(texts, "min_pulleys", [&](const TableRow& row) {
        Profile& profile = profileNamed(row["profile"], data);
        profile.smallestPulley = Teeth{row["smallest_pulley_teeth"].whole()};
        profile.smallestShaft = row["plain_shaft_of_same_pitch_radius_mm"].decimalIfAny();
        profile.smallestRoller = row["smallest_smooth_roller_under_teeth_mm"].decimalIfAny();
    });
    lendFormsToDoubleSided(data);
    findLookAlikes(data);
}

} // namespace riband::belt
