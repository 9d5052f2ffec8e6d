#include "app/drive_options.h"

#include "app/console.h"
#include "core/belt/drive/said_pulley.h"
#include "core/belt/said_profile.h"
#include "ui/words/drive_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>
#include <cmath>

namespace riband::app {

namespace {

using namespace belt::drive;
using ui::Words;

constexpr qlonglong mostTeeth = 100'000;
constexpr double mostNumber = 1e9;
constexpr double rounding = 0.1; // mm by which a printed inch length may miss its teeth

[[noreturn]] void refuse(const QString& option, const QString& text, const QString& why) {
    throw BadInput(QStringLiteral("--%1 %2: %3").arg(option, text, why));
}

std::optional<Teeth> teethOf(const Options& options, const char* name) {
    const QString option = QLatin1String(name);
    if (!options.has(option)) return std::nullopt;
    bool whole = false;
    const qlonglong number = options.value(option).toLongLong(&whole);
    if (!whole || number < 1 || number > mostTeeth)
        refuse(option, options.value(option), Words::tr("a whole number of teeth is needed."));
    return Teeth{number};
}

/// A plain number, a comma or a point being the decimal sign.
std::optional<double> numberOf(const Options& options, const char* name, bool zeroToo = false) {
    const QString option = QLatin1String(name);
    if (!options.has(option)) return std::nullopt;
    bool good = false;
    const double value = options.value(option).replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&good);
    if (!good || !(value <= mostNumber) || value < 0 || (value == 0 && !zeroToo))
        refuse(option, options.value(option),
               Words::tr("a number over nothing and up to %1 is needed.").arg(mostNumber, 0, 'f', 0));
    return value;
}

Pulley pulleyBy(const Options& options, const belt::Profile* profile, const char* teeth,
                const char* diameter) {
    const auto count = teethOf(options, teeth);
    const auto millimetres = millimetresOf(options, diameter);
    if (count.has_value() == millimetres.has_value())
        throw BadInput(
            Words::tr("Say either --%1 or --%2.").arg(QLatin1String(teeth), QLatin1String(diameter)));
    const auto pulley = belt::drive::pulleyAsSaid(profile, {count, millimetres});
    if (pulley) return *pulley;
    const QString option = QLatin1String(count ? teeth : diameter);
    refuse(option, options.value(option), ui::say(pulley.reason(), profile));
}

/// A toothed belt has whole teeth: what was printed to a tenth is taken for them.
double wholeTeethOf(double said, const belt::Profile& profile, const QString& text) {
    const double pitch = profile.pitch.inMillimetres();
    const double teeth = std::max(1.0, std::round(said / pitch));
    if (std::abs(teeth * pitch - said) <= rounding) return teeth * pitch;
    const double fewer = std::max(1.0, std::floor(said / pitch));
    refuse(QStringLiteral("length"), text,
           Words::tr("this is not a whole number of teeth of %1: %2 teeth are %3 mm, %4 teeth %5 mm.")
               .arg(ui::shown(profile.pitch))
               .arg(fewer)
               .arg(fewer * pitch)
               .arg(fewer + 1)
               .arg((fewer + 1) * pitch));
}

} // namespace

Usage driveUsage() {
    return {QStringLiteral("drive"),
            Words::tr("Finds the belts for pulleys, or the centre distance for a belt."),
            {},
            {{"profile", Words::tr("The profile; may be left out with plain diameters."), "P"},
             {"z1", Words::tr("Teeth of the first pulley, which drives."), "N"},
             {"z2", Words::tr("Teeth of the second pulley."), "N"},
             {"d1", Words::tr("Its pitch diameter, effective if ribbed."), "MM"},
             {"d2", Words::tr("That of the second."), "MM"},
             {"centre", Words::tr("The centre distance that is wanted."), "MM"},
             {"teeth", Words::tr("Or the teeth of a belt that is known."), "N"},
             {"length", Words::tr("Or its length."), "MM"},
             {"adjust", Words::tr("The drive can be set so much nearer and farther."), "MM"},
             {"width", Words::tr("The width that is wanted."), "MM"},
             {"ribs", Words::tr("Or the ribs."), "N"},
             {"power", Words::tr("What the drive carries, in kW."), "KW"},
             {"torque", Words::tr("Or the torque on the first pulley, in Nm."), "NM"},
             {"speed", Words::tr("Turns of the first pulley in a minute."), "N"},
             {"service", Words::tr("Service factor, 1 if not said."), "F"},
             {"layout", Words::tr("More pulleys: x_mm,y_mm,teeth,diameter_mm,side."), "CSV"},
             {"move", Words::tr("Which pulley of the layout can be set by --adjust."), "N"},
             {"along", Words::tr("The way it is set, counter-clockwise from x; 0 if not said."), "DEG"},
             {"shop", Words::tr("The shop: what is in stock comes first."), "FILE"}}};
}

std::optional<double> millimetresOf(const Options& options, const char* name) {
    const QString option = QLatin1String(name);
    if (!options.has(option)) return std::nullopt;
    const auto length = readLength(options.value(option).toStdString());
    if (!length) refuse(option, options.value(option), ui::say(length.reason()));
    return length->inMillimetres();
}

const belt::Profile* profileOf(const Options& options, const belt::Tables& tables) {
    if (!options.has("profile")) return nullptr;
    const QString text = options.value("profile").trimmed();
    const auto may = belt::profilesSaid(text.toStdString(), tables);
    if (may.size() == 1) return may.front();
    refuse(QStringLiteral("profile"), text, ui::sayNotOneProfile(may));
}

TwoPulleys pulleysOf(const Options& options, const belt::Profile* profile) {
    return {profile, pulleyBy(options, profile, "z1", "d1"), pulleyBy(options, profile, "z2", "d2")};
}

std::optional<Extent> widthOf(const Options& options, const belt::Profile* profile) {
    const bool ribbed = profile && profile->ribbed();
    const QString wrong = ribbed ? QStringLiteral("width") : QStringLiteral("ribs");
    const QString right = ribbed ? QStringLiteral("ribs") : QStringLiteral("width");
    if (options.has(wrong)) throw BadInput(Words::tr("For this belt say --%1.").arg(right));
    if (!options.has(right)) return std::nullopt;
    const auto extent = readExtent(options.value(right).toStdString(), ribbed ? Unit::Rib : Unit::Micrometre);
    if (!extent) refuse(right, options.value(right), ui::say(extent.reason()));
    if (extent->isNone()) refuse(right, options.value(right), Words::tr("a width is more than nothing."));
    return *extent;
}

std::optional<Range> rangeOf(const Options& options) {
    const auto adjust = millimetresOf(options, "adjust");
    return adjust ? std::optional{Range{*adjust, *adjust}} : std::nullopt;
}

std::optional<Duty> dutyOf(const Options& options) {
    const auto power = numberOf(options, "power"), torque = numberOf(options, "torque");
    const auto speed = numberOf(options, "speed");
    const double service = numberOf(options, "service").value_or(1);
    if (!power && !torque) {
        if (speed || options.has("service"))
            throw BadInput(Words::tr("--speed and --service go with --power or --torque."));
        return std::nullopt;
    }
    if (power && torque) throw BadInput(Words::tr("Say either --%1 or --%2.").arg("power", "torque"));
    if (!speed) throw BadInput(Words::tr("--power and --torque need --speed."));
    return power ? Duty{*power, *speed, service} : dutyOfTorque(*torque, *speed, service);
}

std::optional<double> beltLengthOf(const Options& options, const belt::Profile* profile) {
    const auto teeth = teethOf(options, "teeth");
    const auto length = millimetresOf(options, "length");
    if (teeth && (!profile || profile->ribbed()))
        throw BadInput(Words::tr("--teeth needs the --profile of a toothed belt."));
    if (teeth) return (profile->pitch * *teeth).inMillimetres();
    if (!length || !profile || profile->ribbed()) return length;
    return wholeTeethOf(*length, *profile, options.value("length"));
}

} // namespace riband::app
