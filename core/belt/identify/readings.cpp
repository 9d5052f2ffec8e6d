#include "core/belt/identify/readings.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace riband::belt::identify {
namespace {

constexpr double slip = .005;      ///< how often a reading is nonsense
constexpr double slipWidth = 10;   ///< and how far about, in standard errors (half width of a Cauchy curve)
constexpr double cutToOrder = .25; ///< how often a width is none that is sold (common practice, no source)
constexpr double widest = 200;     ///< mm such a width may have
constexpr double miscounted = .05; ///< how often "over 5 ribs" was over 5 pitches
constexpr double sideLost = .15;   ///< of a rib pitch: how far a ribbed belt's edges are cut off the groove

double sqr(double x) { return x * x; }

/// Far out it is nothing beside a slip, and the exponential function dear.
double normal(double z) {
    constexpr double far = 12, scale = std::numbers::inv_sqrtpi / std::numbers::sqrt2;
    return std::abs(z) > far ? 0 : scale * std::exp(-z * z / 2);
}

double cauchy(double z) { return 1 / (std::numbers::pi * slipWidth * (1 + sqr(z / slipWidth))); }

Way distance(double pitches, const Figures& figures, double stretch) {
    const double span = pitches * figures.pitch;
    return {1, span, stretch * span, 0};
}

Way toothSize(const Figure& figure) {
    return {1, figure.mean, -wear::toothLoss * figure.mean, figure.spread};
}

Way thickness(const Sizes& sizes) {
    const Figures& figures = sizes.figures;
    const double teeth = sizes.profile->doubleSided ? 2 : 1;
    const double lost =
        wear::backLoss * figures.thickness.mean + teeth * wear::toothLoss * figures.height.mean;
    return {1, figures.thickness.mean, -lost, figures.thickness.spread};
}

Readings ribsOver(int ribs, const Figures& figures) {
    Readings readings;
    for (const auto& [pitches, weight] : {std::pair{ribs - 1, 1 - miscounted}, {ribs, miscounted}}) {
        Way way = distance(pitches, figures, 0);
        way.weight = weight;
        readings.ways.push_back(way);
    }
    return readings;
}

Readings widthOfRibs(const Sizes& sizes, const Sample& sample) {
    const double pitch = sizes.figures.pitch;
    Readings readings;
    readings.elsewhere = .01 / widest;
    const auto add = [&](double ribs, double weight) {
        readings.ways.push_back({weight, ribs * pitch, -wear::edgeLoss, sideLost * pitch});
    };
    constexpr int most = 40;
    if (const Measurement* counted = sample.find(Measure::RibCount))
        add(counted->value, .99);
    else
        for (int ribs = 1; ribs <= most; ++ribs)
            add(ribs, .99 / most);
    return readings;
}

Readings widthOf(const Sizes& sizes, const Sample& sample) {
    if (sizes.profile->ribbed()) return widthOfRibs(sizes, sample);
    Readings readings;
    const double sold = sizes.widths.empty() ? 0 : 1 - cutToOrder;
    readings.elsewhere = (1 - sold) / widest;
    for (const SoldWidth& each : sizes.widths)
        readings.ways.push_back(
            {sold / static_cast<double>(sizes.widths.size()), each.mean, -wear::edgeLoss, each.spread});
    return readings;
}

/// What a belt's own length may differ by: half of the tolerances of the tables (ISO 5296, ARPM IP-24,
/// DIN 7721: 0.41 mm at 254, 1.12 at 3048; ISO 9982: 8 to 16 mm at 1500).
double ownLength(bool ribbed, double length) { return ribbed ? .005 * length : .13 + .0002 * length; }

/// Round a circle the back is 2 pi x toBack longer than the line, the tips 2 pi x toTips shorter.
Way round(const Extension& belt, const Figure& away, double sign, const Figures& figures, bool ribbed) {
    const double stretch = ribbed ? wear::stretchOfRibbed : wear::stretchOfToothed;
    const double rubbed = 2 * std::numbers::pi * wear::backLoss * figures.thickness.mean;
    return {1, belt.length + sign * 2 * std::numbers::pi * away.mean,
            stretch * belt.length - (sign > 0 ? rubbed : -rubbed),
            std::hypot(ownLength(ribbed, belt.length), 2 * std::numbers::pi * away.spread)};
}

/// Pressed flat, a bend has its tips at a radius r between 0 and twice the thickness h (common practice, no
/// source): L = 2 (D - 2 (h + r)) + 2 pi (toTips + r), so D = L/2 + 2 (h + r) - pi (toTips + r).
Way halfLoop(const Extension& belt, const Figures& figures, bool ribbed) {
    const double h = figures.thickness.mean, perRadius = 2 - std::numbers::pi;
    const double middle = belt.length / 2 + 2 * h - std::numbers::pi * figures.toTips.mean + perRadius * h;
    const double stretch = ribbed ? wear::stretchOfRibbed : wear::stretchOfToothed;
    const double bend = perRadius * 2 * h / std::sqrt(12.0);
    return {1, middle, stretch * belt.length / 2,
            std::hypot(ownLength(ribbed, belt.length) / 2, bend, std::numbers::pi * figures.toTips.spread)};
}

} // namespace

Readings readingsOf(const Measurement& measurement, const Sizes& sizes, const Sample& sample) {
    const Figures& figures = sizes.figures;
    const bool ribbed = sizes.profile->ribbed();
    switch (measurement.what) {
    case Measure::PitchOver:
        if (ribbed) return {};
        return {{distance(measurement.over, figures, wear::stretchOfToothed)}};
    case Measure::Thickness:
        return {{thickness(sizes)}};
    case Measure::ToothHeight:
        if (ribbed) return {};
        return {{toothSize(figures.height)}};
    case Measure::ToothRoot:
        if (ribbed) return {};
        return {{toothSize(figures.root)}};
    case Measure::RibCount:
        return {{}, ribbed ? 1.0 : 0.0};
    case Measure::RibsOver:
        return ribbed ? ribsOver(measurement.over, figures) : Readings{};
    case Measure::Width:
        return widthOf(sizes, sample);
    default:
        return {};
    }
}

std::optional<Way> lengthReading(Measure what, const Figures& figures, bool ribbed, const Extension& belt) {
    switch (what) {
    case Measure::Teeth:
        if (ribbed) return std::nullopt;
        return Way{1, belt.teeth, 0, 0};
    case Measure::Outside:
        return round(belt, figures.toBack, 1, figures, ribbed);
    case Measure::Inside:
        return round(belt, figures.toTips, -1, figures, ribbed);
    case Measure::Flat: {
        const double stretch = ribbed ? wear::stretchOfRibbed : wear::stretchOfToothed;
        return Way{1, belt.length + 2 * std::numbers::pi * figures.cords, stretch * belt.length,
                   ownLength(ribbed, belt.length)};
    }
    case Measure::HalfLoop:
        return halfLoop(belt, figures, ribbed);
    default:
        return std::nullopt;
    }
}

Aim::Aim(const Way& way, double value, double error)
    : off_{value - way.atNew}, perWear_{way.perWear}, sharpness_{1 /
                                                                 std::sqrt(sqr(way.spread) + sqr(error))} {}

double Aim::chance(double wear) const {
    const double z = (off_ - perWear_ * wear) * sharpness_;
    return ((1 - slip) * normal(z) + slip * cauchy(z)) * sharpness_;
}

double chance(const Way& way, double value, double error, double wear) {
    return Aim{way, value, error}.chance(wear);
}

double chance(const Readings& readings, double value, double error, double wear) {
    if (!readings.possible()) return impossible;
    double sum = readings.elsewhere;
    for (const Way& way : readings.ways)
        sum += way.weight * chance(way, value, error, wear);
    return sum;
}

double misfit(const Way& way, double value, double error, double mostWear) {
    const double worn = way.atNew + way.perWear * mostWear;
    const double away = std::max({std::min(way.atNew, worn) - value, value - std::max(way.atNew, worn), 0.0});
    return away / std::sqrt(sqr(way.spread) + sqr(error));
}

double misfit(const Readings& readings, double value, double error, double mostWear) {
    if (readings.elsewhere > 0) return 0;
    double least = misfitOfImpossible;
    if (!readings.ways.empty()) least = misfit(readings.ways.front(), value, error, mostWear);
    for (const Way& way : readings.ways)
        least = std::min(least, misfit(way, value, error, mostWear));
    return least;
}

double chanceOfShape(SeenShape seen, SeenShape is) {
    // Row: what it is; column: what is said. Trapezoid, wide, half-round, flat top, dimpled, full, ribs.
    static constexpr double chances[shapeCount][shapeCount] = {
        {.870, .100, .005, .020, .002, .002, .001}, // trapezoid
        {.300, .680, .005, .010, .002, .002, .001}, // wide trapezoid
        {.002, .002, .875, .030, .020, .070, .001}, // half-round
        {.020, .010, .060, .860, .010, .039, .001}, // flat top
        {.002, .002, .060, .020, .895, .020, .001}, // dimpled
        {.002, .002, .100, .050, .020, .825, .001}, // full round
        {.002, .001, .001, .001, .001, .001, .993}, // ribs
    };
    return chances[static_cast<std::size_t>(is)][static_cast<std::size_t>(seen)];
}

} // namespace riband::belt::identify
