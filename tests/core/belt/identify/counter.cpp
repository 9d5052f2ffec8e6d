#include "tests/core/belt/identify/counter.h"

#include "core/belt/identify/wear.h"
#include "tests/core/belt/read_tables.h"

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace riband::belt::identify {

const Prior& listsOnly() {
    static const Prior prior{std::shared_ptr<const Tables>{std::shared_ptr<void>{}, &theTables()}};
    return prior;
}

Measurement read(Measure what, double value) { return {what, value, Errors{}.of(what), 0}; }

Measurement over(int pitches, double millimetres) {
    return {Measure::PitchOver, millimetres, Errors{}.of(Measure::PitchOver), pitches};
}

Measurement ribsOver(int ribs, double millimetres) {
    return {Measure::RibsOver, millimetres, Errors{}.of(Measure::RibsOver), ribs};
}

const Sizes& sizesOf(std::string_view profile) {
    for (const Sizes& each : listsOnly().sizes())
        if (each.profile->name == profile) return each;
    throw std::invalid_argument("no such profile in the tables");
}

double Hand::even() { return static_cast<double>(dice_() >> 11) * 0x1.0p-53; }

double Hand::normal(double mean, double spread) {
    for (;;) {
        const double radius = std::sqrt(-2 * std::log(1 - even()));
        const double deviation = radius * std::cos(2 * std::numbers::pi * even());
        if (!careful_ || std::abs(deviation) <= 2) return mean + spread * deviation;
    }
}

Hand::Held Hand::pickUp(const Profile& profile, const MadeLength& made, double wear) {
    const Figures& figures = sizesOf(profile.name).figures;
    const Extension belt{made.length.inMillimetres(),
                         made.teeth ? static_cast<double>(made.teeth->count()) : 0};
    const double thin = 1 - wear::toothLoss * wear;
    const double height = normal(figures.height.mean, figures.height.spread);
    const double lost = wear * (wear::backLoss * figures.thickness.mean +
                                (profile.doubleSided ? 2 : 1) * wear::toothLoss * height);
    return {&profile,      belt,
            wear,          normal(figures.thickness.mean, figures.thickness.spread) - lost,
            height * thin, normal(figures.root.mean, figures.root.spread) * thin};
}

double Hand::miscounted(double count) {
    if (careful_ || even() > .02) return count;
    return even() < .5 ? count - 1 : count + 1;
}

Measurement Hand::measure(const Held& held, Measure what, int pitches) {
    const Figures& figures = sizesOf(held.profile->name).figures;
    const bool ribbed = held.profile->ribbed();
    const double stretch = 1 + held.wear * (ribbed ? wear::stretchOfRibbed : wear::stretchOfToothed);
    const double error = Errors{}.of(what);
    const auto near = [&](double value) { return Measurement{what, normal(value, error), error, pitches}; };
    switch (what) {
    case Measure::PitchOver:
        return near(figures.pitch * pitches * stretch);
    case Measure::RibsOver:
        return near(figures.pitch * (pitches - 1));
    case Measure::Teeth:
        return {what, miscounted(held.belt.teeth), error, 0};
    case Measure::Outside: {
        // The back of a ribbed belt lies anywhere between its cords and its height.
        const double back = ribbed ? figures.cords + even() * (figures.thickness.mean - figures.cords)
                                   : held.thickness - figures.toTips.mean;
        return near(held.belt.length * stretch + 2 * std::numbers::pi * back);
    }
    case Measure::Thickness:
        return near(held.thickness);
    case Measure::ToothHeight:
        return near(held.height);
    case Measure::ToothRoot:
        return near(held.root);
    default:
        throw std::invalid_argument("nobody measures that here");
    }
}

} // namespace riband::belt::identify
