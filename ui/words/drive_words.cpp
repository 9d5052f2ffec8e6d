#include "ui/words/drive_words.h"

#include "core/belt/belt.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QLocale>

#include <cmath>
#include <numbers>

namespace riband::ui {

namespace {

using namespace belt::drive;

QString number(double value, int decimals) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(value, 'f', decimals);
}

/// Without zeros behind: "2", "1.833".
QString shortNumber(double value) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(value, 'g', 4);
}

QString upwards(double millimetres) { return number(std::ceil(millimetres * 100) / 100, 2); }

QString moveOf(double move) { return Words::tr("set the pulley %1").arg(shownMove(move)); }

QString turnsOf(double turns) {
    const QString count = shortNumber(std::abs(turns));
    return turns > 0 ? Words::tr("%1 turns for one of the first").arg(count)
                     : Words::tr("%1 turns for one of the first, the other way round").arg(count);
}

QString nameOf(const belt::Belt& belt) {
    const QString name = text(belt::designation(belt));
    return belt.teeth ? Words::tr("%1, %2 teeth").arg(name).arg(belt.teeth->count()) : name;
}

QString tooShort(const DriveFault& fault, const TwoPulleys& drive) {
    QString sentence = Words::tr("A belt of %1 is too short: the pulleys would overlap. The least is %2 mm")
                           .arg(shownMillimetres(fault.given), upwards(fault.least));
    if (drive.profile && !drive.profile->ribbed())
        sentence += Words::tr(", %1 teeth")
                        .arg(static_cast<qint64>(
                            std::ceil(fault.least / drive.profile->pitch.inMillimetres() - 1e-9)));
    return sentence + QLatin1Char('.');
}

QString meshWords(const std::optional<int>& teeth) {
    return *teeth == 1 ? Words::tr("1 tooth in mesh") : Words::tr("%n teeth in mesh", nullptr, *teeth);
}

QString carryWords(const Carry& carry) {
    if (carry.referenceKilowatts <= 0)
        return Words::tr("At this speed the belt's own weight takes all its pull: it carries nothing.");
    if (carry.meshFactor <= 0) return Words::tr("With a single tooth in mesh it carries nothing.");
    QStringList parts;
    if (carry.kilowatts) {
        const double percent = std::ceil(*carry.share * 100);
        parts << Words::tr("The width carries about %1 kW; the drive takes %2 % of that.")
                     .arg(shortNumber(*carry.kilowatts), number(percent, 0));
        if (*carry.share > 1) parts << Words::tr("Too narrow.");
    }
    parts << (carry.nextListed ? Words::tr("The least width is %1 mm, the next listed %2 mm.")
                                     .arg(number(*carry.leastWidth, 1), text(carry.nextListed->label))
                               : Words::tr("The least width is %1 mm; no listed one is so wide.")
                                     .arg(number(*carry.leastWidth, 1)));
    return parts.join(QLatin1Char(' '));
}

} // namespace

QString shownMillimetres(double millimetres) { return Words::tr("%1 mm").arg(number(millimetres, 2)); }
QString shownDegrees(double degrees) { return Words::tr("%1°").arg(number(degrees, 1)); }
QString shownRatio(double ratio) { return Words::tr("%1:1").arg(shortNumber(ratio)); }
QString shownShare(double share) { return Words::tr("%1 %").arg(number(share * 100, 0)); }

QString shownShift(double shift) {
    if (std::abs(shift) < 0.005) return Words::tr("as wanted");
    return shift > 0 ? Words::tr("%1 farther").arg(shownMillimetres(shift))
                     : Words::tr("%1 nearer").arg(shownMillimetres(-shift));
}

QString shownMove(double move) {
    return move < 0 ? Words::tr("%1 back").arg(shownMillimetres(-move))
                    : Words::tr("%1 on").arg(shownMillimetres(move));
}

QString shownStock(const std::vector<Stocked>& stock) {
    Extent widest = Extent::none(stock.front().widest.unit());
    QStringList constructions;
    for (const Stocked& stocked : stock) {
        widest = std::max(widest, stocked.widest);
        if (!stocked.belt.construction.empty()) constructions << text(stocked.belt.construction);
    }
    QString words = widest.isNone() ? Words::tr("here as a ready belt")
                                    : Words::tr("here, up to %1 wide").arg(shown(widest));
    if (!constructions.isEmpty())
        words += QStringLiteral(" (%1)").arg(constructions.join(QStringLiteral(", ")));
    return words;
}

QString say(PulleyFault fault, const belt::Profile* profile) {
    switch (fault) {
    case PulleyFault::NothingOrBoth:
        return Words::tr("Give either teeth or a diameter.");
    case PulleyFault::NotPositive:
        return Words::tr("A diameter is more than nothing.");
    case PulleyFault::TeethNeedProfile:
        return Words::tr("Teeth need the profile, for their pitch.");
    case PulleyFault::RibsHaveNoTeeth:
        return Words::tr("Ribbed pulleys have no teeth: give their effective diameters.");
    case PulleyFault::BackHasNoTeeth:
        return Words::tr("The back of %1 has no teeth.").arg(text(profile->name));
    case PulleyFault::NoThickness:
        return Words::tr("The tables do not have the thickness of %1.").arg(text(profile->name));
    }
    return {};
}

QString sayNotOneProfile(const std::vector<const belt::Profile*>& may) {
    if (may.empty()) return Words::tr("there is no such profile.");
    QStringList names;
    for (const belt::Profile* profile : may)
        names << text(profile->name);
    return Words::tr("this may be %1. They look alike but do not fit each other: say which.")
        .arg(names.join(QStringLiteral(", ")));
}

QString say(const DriveFault& fault, const TwoPulleys& drive) {
    if (fault.kind == DriveFault::Kind::BeltTooShort) return tooShort(fault, drive);
    return Words::tr(
               "At a centre distance of %1 the pulleys overlap. The least is %2 mm, and flanges need more.")
        .arg(shownMillimetres(fault.given), upwards(fault.least));
}

QString say(const RouteFault& fault) {
    const auto first = fault.first + 1, second = fault.second + 1;
    switch (fault.kind) {
    case RouteFault::Kind::TooFew:
        return Words::tr("A belt needs two pulleys at least.");
    case RouteFault::Kind::Overlap:
        return Words::tr("Pulleys %1 and %2 overlap: they must be at least %3 mm farther apart.")
            .arg(first)
            .arg(second)
            .arg(upwards(fault.by));
    case RouteFault::Kind::NotTouched:
        return Words::tr("Pulley %1 does not touch the belt: it misses it by %2.")
            .arg(first)
            .arg(shownMillimetres(fault.by));
    case RouteFault::Kind::ThroughPulley:
        return Words::tr("The belt behind pulley %1 would run through pulley %2: it must be at least %3 mm "
                         "farther away.")
            .arg(first)
            .arg(second)
            .arg(upwards(fault.by));
    case RouteFault::Kind::Crossed:
        return Words::tr(
                   "The belt would cross itself behind pulleys %1 and %2. Give the pulleys in the order in "
                   "which the belt comes to them.")
            .arg(first)
            .arg(second);
    case RouteFault::Kind::Impossible:
        return Words::tr(
            "No belt lies so. Check the order of the pulleys and which of them press on the back.");
    }
    return {};
}

QString say(const Remark& remark, const TwoPulleys& drive) {
    const QString profile = drive.profile ? text(drive.profile->name) : QString();
    const qint64 teeth = remark.teeth ? remark.teeth->count() : 0;
    switch (remark.kind) {
    case Remark::Kind::FewTeeth:
        return Words::tr("Fewer than six teeth are in mesh: each one missing takes a fifth of the pull.");
    case Remark::Kind::PulleyUnderSmallest:
        return Words::tr("Pulley %1 is under the smallest for %2, %3 teeth: ask the belt maker.")
            .arg(remark.pulley)
            .arg(profile)
            .arg(teeth);
    case Remark::Kind::TooClose:
        return Words::tr("The pulleys nearly touch: see that the flanges have room.");
    case Remark::Kind::VeryFar:
        return Words::tr(
            "The distance is over twice both diameters, more than is usual: long runs may flutter.");
    case Remark::Kind::NoWholeTeeth:
        return Words::tr(
                   "The diameter of pulley %1 is not that of a whole number of teeth of %2: count them.")
            .arg(remark.pulley)
            .arg(profile);
    case Remark::Kind::LooksLikeOutside:
        return Words::tr(
                   "The diameter of pulley %1 looks like the outside of one of %2 teeth; the pitch diameter "
                   "is larger. Count the teeth.")
            .arg(remark.pulley)
            .arg(teeth);
    }
    return {};
}

QString describe(const Run& run) {
    QStringList parts{
        Words::tr("belt %1 at %2").arg(shownMillimetres(run.length), shownMillimetres(run.centre)),
        Words::tr("ratio %1").arg(shownRatio(run.ratio)),
        Words::tr("arcs %1 and %2")
            .arg(shownDegrees(run.arcSmallDegrees), shownDegrees(run.arcLargeDegrees))};
    if (run.mesh) parts << meshWords(run.teethInMesh());
    parts << Words::tr("free runs %1").arg(shownMillimetres(run.span));
    return parts.join(QStringLiteral(", "));
}

QString describe(const Choice& choice) {
    QStringList parts{
        Words::tr("%1: at %2, %3")
            .arg(nameOf(choice.belt), shownMillimetres(choice.run.centre), shownShift(choice.shift)),
        Words::tr("ratio %1").arg(shownRatio(choice.run.ratio)),
        Words::tr("arcs %1 and %2")
            .arg(shownDegrees(choice.run.arcSmallDegrees), shownDegrees(choice.run.arcLargeDegrees))};
    if (choice.run.mesh) parts << meshWords(choice.run.teethInMesh());
    if (choice.inStock()) parts << shownStock(choice.stock);
    if (!choice.listed) parts << Words::tr("in no maker's list");
    if (!choice.reachable) parts << Words::tr("more than the drive can be set");
    return parts.join(QStringLiteral(", "));
}

QString describe(const RouteChoice& choice) {
    const QString size = choice.excess >= 0
                             ? Words::tr("%1 longer than the route").arg(shownMillimetres(choice.excess))
                             : Words::tr("%1 shorter than the route").arg(shownMillimetres(-choice.excess));
    QStringList parts{QStringLiteral("%1: %2").arg(nameOf(choice.belt), size)};
    if (choice.move) parts << moveOf(*choice.move);
    if (choice.inStock()) parts << shownStock(choice.stock);
    if (!choice.listed) parts << Words::tr("in no maker's list");
    return parts.join(QStringLiteral(", "));
}

QString describe(const Contact& contact, std::size_t number) {
    const double degrees = contact.arc * 180 / std::numbers::pi;
    QStringList parts{Words::tr("pulley %1: arc %2").arg(number).arg(shownDegrees(degrees))};
    if (number > 1) parts << turnsOf(contact.turns);
    if (contact.mesh) parts << meshWords(static_cast<int>(std::floor(*contact.mesh + 1e-9)));
    return parts.join(QStringLiteral(", "));
}

QString describe(const OtherWidth& width) {
    return Words::tr("%1 instead: about %2 of the pull").arg(shown(width.width), shownShare(width.share));
}

QString sayNotListed() {
    return Words::tr("A belt of this length is in no maker's list; these are the next.");
}

QString sayNothingFits(const Choices& choices) {
    if (!choices.least) return Words::tr("No belt of this profile goes round these pulleys.");
    if (choices.wanted.centre > *choices.greatest)
        return Words::tr("No belt that is made is so long: the greatest centre distance is %1.")
            .arg(shownMillimetres(*choices.greatest));
    if (choices.wanted.centre < *choices.least)
        return Words::tr("No belt that is made is so short: the least centre distance is %1.")
            .arg(shownMillimetres(*choices.least));
    return Words::tr("No belt that is made fits within what the drive can be set.");
}

QStringList describe(const Pull& pull, const std::optional<Carry>& carry) {
    QStringList lines{
        Words::tr("Belt speed %1 m/s, pull %2 N, torque %3 Nm on the first pulley and %4 Nm on the "
                  "second, losses left out.")
            .arg(number(pull.beltSpeed, 2), number(pull.effective, 0), shortNumber(pull.torqueFirst),
                 shortNumber(pull.torqueSecond))};
    if (!carry) return lines << Words::tr("What the width carries is told by the belt maker's data alone.");
    lines << carryWords(*carry);
    return lines << Words::tr(
                        "By %1, whose figures are from memory here: look them up, and go by the belt maker's "
                        "data.")
                        .arg(text(carry->standard));
}

QStringList driveCautions() {
    return {
        Words::tr("Power, tension and smallest pulleys: the belt maker's data decide."),
        Words::tr(
            "Lock the machine out before a guard is opened or a belt is touched, and put every guard back "
            "before it runs. Local rules and trained people go first.")};
}

} // namespace riband::ui
