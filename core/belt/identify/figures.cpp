#include "core/belt/identify/figures.h"

#include <algorithm>
#include <cmath>

namespace riband::belt::identify {
namespace {

/// Of a size that a table gives: what makers differ by. Heights are printed 0.02 to 0.15 mm apart, of R types
/// 5 to 9 % low (facts of the trade, "Where sources disagree"); the rest common practice, no source.
constexpr double makersShare = .02, makersLeast = .03;
constexpr double dimpledHeight = .96, dimpledShare = .04;
constexpr double rootShare = .04, roundRootShare = .08;
constexpr double supposedShare = .15;

/// The mean share of the pitch, and the spread of the shares, among profiles that have the figure.
struct Share {
    double mean;
    double spread;
};

using Pick = std::optional<double> ToothForm::*;

bool isRound(SeenShape shape) {
    return shape != SeenShape::Trapezoid && shape != SeenShape::WideTrapezoid && shape != SeenShape::Ribs;
}

/// Same shape; a round one stands in for another round one.
bool maySupply(const Profile& giver, const Profile& taker) {
    if (giver.doubleSided != taker.doubleSided || giver.ribbed() || taker.ribbed()) return false;
    const SeenShape a = seenShape(giver), b = seenShape(taker);
    return a == b || (isRound(a) && isRound(b));
}

Share shareOf(const Tables& tables, const Profile& taker, Pick pick) {
    double sum = 0, squares = 0, count = 0;
    for (const Profile& giver : tables.profiles()) {
        if (!maySupply(giver, taker) || !(giver.form.*pick)) continue;
        const double share = *(giver.form.*pick) / giver.pitch.inMillimetres();
        sum += share;
        squares += share * share;
        ++count;
    }
    if (count == 0) return {0, 0};
    const double mean = sum / count;
    return {mean, std::max(supposedShare * mean, std::sqrt(std::max(0.0, squares / count - mean * mean)))};
}

Figure given(double figure, double share) { return {figure, std::hypot(share * figure, makersLeast)}; }

Figure orSuppose(const Tables& tables, const Profile& profile, Pick pick, double makers) {
    if (const auto& figure = profile.form.*pick) return given(*figure, makers);
    const Share share = shareOf(tables, profile, pick);
    return {share.mean * profile.pitch.inMillimetres(), share.spread * profile.pitch.inMillimetres()};
}

/// Makers' range is taken as even between its ends.
Figure thicknessOf(const Tables& tables, const Profile& profile) {
    const ToothForm& form = profile.form;
    if (!form.totalLeast || !form.totalMost)
        return orSuppose(tables, profile, &ToothForm::total, makersShare);
    const double mean = (*form.totalLeast + *form.totalMost) / 2;
    const double spread = (*form.totalMost - *form.totalLeast) / std::sqrt(12.0);
    return {mean, std::hypot(spread, given(mean, makersShare).spread)};
}

Figure heightOf(const Tables& tables, const Profile& profile) {
    Figure height = orSuppose(tables, profile, &ToothForm::height, makersShare);
    if (profile.shape != ToothShape::DimpledRound) return height;
    return given(dimpledHeight * height.mean, dimpledShare);
}

Figures toothed(const Tables& tables, const Profile& profile) {
    Figures figures{};
    figures.pitch = profile.pitch.inMillimetres();
    figures.thickness = thicknessOf(tables, profile);
    figures.height = heightOf(tables, profile);
    figures.root = orSuppose(tables, profile, &ToothForm::rootWidth,
                             isRound(seenShape(profile)) ? roundRootShare : rootShare);
    const Figure line = orSuppose(tables, profile, &ToothForm::pitchLine, 0);
    const double toTips = figures.height.mean + line.mean;
    figures.toTips = {toTips, std::hypot(figures.height.spread, line.spread)};
    figures.toBack = {std::max(.1, figures.thickness.mean - toTips),
                      std::hypot(figures.thickness.spread, line.spread)};
    return figures;
}

/// How high a rib is no standard says: the back of a belt of height h lies somewhere between its cords (be
/// out from the effective line) and h.
Figures ribbed(const Tables& tables, const Profile& profile) {
    Figures figures{};
    figures.pitch = profile.pitch.inMillimetres();
    figures.thickness = thicknessOf(tables, profile);
    figures.cords = profile.form.effectiveLine.value_or(0);
    const double h = figures.thickness.mean;
    const double spread = (h - figures.cords) / std::sqrt(12.0);
    figures.toBack = {(figures.cords + h) / 2, spread};
    figures.toTips = {h - figures.toBack.mean, spread};
    return figures;
}

std::vector<SoldWidth> widthsOf(const Tables& tables, const Profile& profile) {
    std::vector<SoldWidth> widths;
    if (profile.ribbed()) return widths;
    const Belt belt{profile.name, std::nullopt, Length::millimetres(1000), ""};
    for (const StandardWidth& each : tables.widths(profile.name)) {
        const Width width = each.extent.width();
        const auto tolerance = tables.widthTolerance(belt, width);
        const double between =
            tolerance ? static_cast<double>((tolerance->plus + tolerance->minus).inMicrometres()) : 1000.0;
        widths.push_back({static_cast<double>(width.inMicrometres()) / 1e3, between / 4e3});
    }
    return widths;
}

} // namespace

SeenShape seenShape(const Profile& profile) {
    switch (profile.shape) {
    case ToothShape::Trapezoid: {
        // Of metric trapezoids those of 50 degrees are the broad ones (AT); XL has 50 degrees, too, and is
        // not.
        const bool wide =
            profile.family == Family::MetricTrapezoidal && profile.form.flankAngleDegrees.value_or(40) > 45;
        return wide ? SeenShape::WideTrapezoid : SeenShape::Trapezoid;
    }
    case ToothShape::HalfRound:
        return SeenShape::HalfRound;
    case ToothShape::FlatTopRound:
        return SeenShape::FlatTopRound;
    case ToothShape::DimpledRound:
        return SeenShape::DimpledRound;
    case ToothShape::FullRound:
        return SeenShape::FullRound;
    case ToothShape::Rib:
        return SeenShape::Ribs;
    }
    return SeenShape::Ribs;
}

std::vector<Sizes> sizesOf(const Tables& tables) {
    std::vector<Sizes> all;
    for (const Profile& profile : tables.profiles())
        all.push_back({&profile, profile.ribbed() ? ribbed(tables, profile) : toothed(tables, profile),
                       seenShape(profile), widthsOf(tables, profile)});
    return all;
}

Figures knowingThickness(const Figures& figures, const Measurement& thickness) {
    const double before = figures.thickness.spread * figures.thickness.spread;
    const double reading = thickness.error * thickness.error;
    const double trust = before / (before + reading);
    Figures known = figures;
    known.thickness = {figures.thickness.mean + trust * (thickness.value - figures.thickness.mean),
                       std::sqrt(before * (1 - trust))};
    if (figures.cords > 0) return known; // of a ribbed belt the height of the ribs stays unknown
    const double shift = known.thickness.mean - figures.thickness.mean;
    const double line = std::max(0.0, figures.toBack.spread * figures.toBack.spread - before);
    known.toBack = {std::max(.1, figures.toBack.mean + shift),
                    std::sqrt(line + known.thickness.spread * known.thickness.spread)};
    return known;
}

} // namespace riband::belt::identify
