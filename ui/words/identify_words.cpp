#include "ui/words/identify_words.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QLocale>
#include <QStringList>

#include <cmath>

namespace riband::ui {

namespace {

using namespace belt::identify;

/// At most two decimals, no zeros behind.
QString number(double value) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    QString text = locale.toString(value, 'f', 2);
    while (text.endsWith(QLatin1Char('0')))
        text.chop(1);
    if (text.endsWith(locale.decimalPoint())) text.chop(1);
    return text;
}

QString millimetres(double value) { return Words::tr("%1 mm").arg(number(value)); }

QString listed(const QStringList& names) {
    if (names.size() < 2) return names.join(QString());
    return Words::tr("%1 or %2", "the last two of a list of which one is meant")
        .arg(names.mid(0, names.size() - 1).join(QStringLiteral(", ")), names.last());
}

QString allOf(const QStringList& parts) {
    if (parts.size() < 2) return parts.join(QString());
    return Words::tr("%1 and %2", "the last two of a list of which all are meant")
        .arg(parts.mid(0, parts.size() - 1).join(QStringLiteral(", ")), parts.last());
}

QString withChance(const Candidate& candidate) {
    return QStringLiteral("%1 (%2)").arg(nameOf(candidate), shownChance(candidate.probability));
}

QString capitalised(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

QStringList whyContradictory(const Identification& answer) {
    QStringList sentences;
    if (answer.disagreements.size() > 1)
        sentences << (answer.disagreements.front().fitsOtherwise
                          ? Words::tr("These can't all be right; one of them will do:")
                          : Words::tr("No belt of the tables comes near; off are:"));
    for (const Disagreement& each : answer.disagreements)
        sentences << say(each);
    sentences << Words::tr("Measure again.");
    return sentences;
}

QStringList whySettled(const Identification& answer) {
    const Candidate& best = answer.candidates.front();
    QStringList sentences{Words::tr("%1 fits all that was measured.").arg(withChance(best))};
    if (!best.listed) sentences << Words::tr("It is in no maker's list: count the teeth again.");
    if (const QString supply = say(best.supply); !supply.isEmpty()) sentences << supply;
    return sentences;
}

QString inDoubtBetween(const Identification& answer) {
    QStringList names;
    for (const Candidate& each : answer.candidates) {
        if (names.size() == 4 || each.probability < .02) break;
        names << withChance(each);
    }
    if (static_cast<std::size_t>(names.size()) < answer.among) names << Words::tr("another");
    return Words::tr("It may be %1.").arg(listed(names));
}

QStringList whyOpen(const Identification& answer, const Sample& sample) {
    QStringList sentences;
    if (!answer.lengthAsked && answer.profileSettled)
        sentences << Words::tr("The profile is %1; how long the belt is was not measured.")
                         .arg(withChance(answer.candidates.front()));
    else
        sentences << inDoubtBetween(answer);
    if (answer.apart) sentences << say(*answer.apart, pitchesTaken(sample), answer.next);
    if (answer.next)
        sentences << say(*answer.next);
    else
        sentences << Words::tr("No further measurement tells more: look for print, or at the pulleys.");
    if (const QString supply = say(answer.candidates.front().supply); !supply.isEmpty()) sentences << supply;
    return sentences;
}

QString lookOf(const Interchange& interchange) {
    QStringList parts;
    if (interchange.height != 0)
        parts << Words::tr("the tooth is %1 %2")
                     .arg(millimetres(std::abs(interchange.height)),
                          interchange.height > 0 ? Words::tr("higher") : Words::tr("lower"));
    if (interchange.thickness != 0)
        parts << Words::tr("the belt is %1 %2")
                     .arg(millimetres(std::abs(interchange.thickness)),
                          interchange.thickness > 0 ? Words::tr("thicker") : Words::tr("thinner"));
    return parts.join(QStringLiteral(", "));
}

} // namespace

QString nameOf(Measure what, int over) {
    switch (what) {
    case Measure::PitchOver:
        return Words::tr("the distance over %1 teeth").arg(over);
    case Measure::Teeth:
        return Words::tr("the number of teeth");
    case Measure::Outside:
        return Words::tr("the length round the back");
    case Measure::Inside:
        return Words::tr("the length round the inside");
    case Measure::Flat:
        return Words::tr("the length cut open");
    case Measure::HalfLoop:
        return Words::tr("the length laid flat as a loop");
    case Measure::Thickness:
        return Words::tr("the total thickness");
    case Measure::ToothHeight:
        return Words::tr("the height of the tooth");
    case Measure::ToothRoot:
        return Words::tr("the width of the tooth at its root");
    case Measure::Shape:
        return Words::tr("the shape of the tooth");
    case Measure::RibCount:
        return Words::tr("the number of ribs");
    case Measure::RibsOver:
        return Words::tr("the distance over %1 ribs").arg(over);
    case Measure::Width:
        return Words::tr("the width");
    }
    return {};
}

QString shownReading(Measure what, double value) {
    if (what == Measure::Teeth) return Words::tr("%1 teeth").arg(number(value));
    if (what == Measure::RibCount) return Words::tr("%1 ribs").arg(number(value));
    return millimetres(value);
}

QString say(SeenShape shape) {
    switch (shape) {
    case SeenShape::Trapezoid:
        return say(belt::ToothShape::Trapezoid);
    case SeenShape::WideTrapezoid:
        return Words::tr("broad trapezoid, the tooth wider than the gap");
    case SeenShape::HalfRound:
        return say(belt::ToothShape::HalfRound);
    case SeenShape::FlatTopRound:
        return say(belt::ToothShape::FlatTopRound);
    case SeenShape::DimpledRound:
        return say(belt::ToothShape::DimpledRound);
    case SeenShape::FullRound:
        return say(belt::ToothShape::FullRound);
    case SeenShape::Ribs:
        return say(belt::ToothShape::Rib);
    }
    return {};
}

QString say(const SampleFault& fault) {
    using Kind = SampleFault::Kind;
    const QString what = capitalised(nameOf(fault.what, fault.over));
    switch (fault.kind) {
    case Kind::Nothing:
        return Words::tr("Nothing was measured. Begin with the distance over 20 teeth, laid flat.");
    case Kind::NotPositive:
        return Words::tr("%1: a measure and its error are more than nothing.").arg(what);
    case Kind::TooLarge:
        return Words::tr("%1: no belt is as large as that.").arg(what);
    case Kind::NotWhole:
        return Words::tr("%1: count whole ones.").arg(what);
    case Kind::TooFew:
        return fault.what == Measure::RibsOver
                   ? Words::tr(
                         "Measure over 2 ribs or more, from the middle of the first to that of the last.")
                   : Words::tr("Measure over at least one pitch.");
    }
    return {};
}

QString say(const Next& next) {
    switch (next.what) {
    case Measure::PitchOver:
        return Words::tr(
                   "Lay the belt flat, teeth up, and measure from the middle of one tooth to the middle of "
                   "the tooth %1 further on.")
            .arg(next.over);
    case Measure::Teeth:
        return Words::tr("Count all teeth: mark the first with chalk.");
    case Measure::Outside:
        return Words::tr("Measure round the back with a tape.");
    case Measure::Inside:
        return Words::tr("Measure round the inside, along the tips, with a tape.");
    case Measure::HalfLoop:
        return Words::tr("Press the loop flat and measure from bend to bend.");
    case Measure::Thickness:
        return Words::tr("Measure the total thickness, tooth and back, without squeezing.");
    case Measure::ToothHeight:
        return Words::tr("Measure how high the tooth stands.");
    case Measure::ToothRoot:
        return Words::tr("Measure how wide the tooth is where it grows from the belt.");
    case Measure::Shape:
        return Words::tr("Look at the tooth from the side: which shape is it?");
    case Measure::RibsOver:
        return Words::tr("Measure from the middle of one rib to the middle of the %1th, that one counted.")
            .arg(next.over);
    default:
        return {};
    }
}

QString say(const Disagreement& disagreement) {
    const QString what = capitalised(nameOf(disagreement.what, disagreement.over));
    if (disagreement.what == Measure::Shape)
        return Words::tr("The shape of the tooth is not that of %1, which all else fits.")
            .arg(text(disagreement.belt.profile));
    if (disagreement.expected == 0)
        return Words::tr("%1 does not go with %2, which all else fits.")
            .arg(what, text(disagreement.belt.profile));
    // A measure of one profile says nothing of the length.
    const QString belt = tellsLength(disagreement.what) ? text(belt::designation(disagreement.belt))
                                                        : text(disagreement.belt.profile);
    const QString off = shownReading(disagreement.what, std::abs(disagreement.by()));
    const QString given = shownReading(disagreement.what, disagreement.given);
    const QString expected = shownReading(disagreement.what, disagreement.expected);
    return (disagreement.by() > 0 ? Words::tr("%1 is %2, which is %3 more than the %4 of %5.")
                                  : Words::tr("%1 is %2, which is %3 less than the %4 of %5."))
        .arg(what, given, off, expected, belt);
}

QString say(const Apart& apart, int taken, const std::optional<Next>& next) {
    const QString first = text(apart.first->name), second = text(apart.second->name);
    if (apart.perPitch > 0 && next && next->what == Measure::PitchOver) {
        const int before = taken > 0 ? taken : 10;
        if (before < next->over)
            return Words::tr("Over %1 teeth %2 and %3 differ by %4; over %5 by %6: measure %5.")
                .arg(before)
                .arg(first, second, millimetres(apart.over(before)))
                .arg(next->over)
                .arg(millimetres(apart.over(next->over)));
        return Words::tr("Over %1 teeth %2 and %3 differ by %4.")
            .arg(next->over)
            .arg(first, second, millimetres(apart.over(next->over)));
    }
    if (apart.perPitch > 0 && taken > 0)
        return Words::tr("Over %1 teeth %2 and %3 differ by %4.")
            .arg(taken)
            .arg(first, second, millimetres(apart.over(taken)));
    if (apart.first->ribbed() || apart.second->ribbed()) return {};
    QStringList sizes;
    const auto differ = [&sizes](double by, const QString& words) {
        if (by >= .005) sizes << words.arg(millimetres(by));
    };
    differ(apart.thickness, Words::tr("by %1 in thickness"));
    differ(apart.height, Words::tr("by %1 in the height of the tooth"));
    differ(apart.root, Words::tr("by %1 at its root"));
    if (sizes.isEmpty())
        return apart.sameShape ? QString{} : Words::tr("%1 and %2 differ in shape only.").arg(first, second);
    return (apart.sameShape ? Words::tr("%1 and %2 have one shape and differ %3.")
                            : Words::tr("%1 and %2 differ in shape, and %3."))
        .arg(first, second, allOf(sizes));
}

QString why(const Identification& answer, const Sample& sample) {
    QStringList sentences;
    if (answer.contradictory())
        sentences = whyContradictory(answer);
    else if (answer.settled)
        sentences = whySettled(answer);
    else
        sentences = whyOpen(answer, sample);
    sentences.removeAll(QString());
    return sentences.join(QLatin1Char(' '));
}

QString say(const Interchange& interchange, const QString& first, const QString& second) {
    using Verdict = Interchange::Verdict;
    switch (interchange.verdict) {
    case Verdict::Same: {
        QStringList standards;
        for (const std::string& each : interchange.standards)
            standards << text(each);
        if (standards.size() < 2) return Words::tr("%1 and %2 are one belt.").arg(first, second);
        return Words::tr("%1 and %2 are dimensionally the same, stated in %3.")
            .arg(first, second, standards.join(QStringLiteral(", ")));
    }
    case Verdict::OtherLength:
        return Words::tr("%1 and %2 have one tooth but not one length.").arg(first, second);
    case Verdict::SameTooth:
        return Words::tr("%1 and %2 have one tooth, but one of them has it on both sides: not for each other "
                         "unless nothing is driven by the back.")
            .arg(first, second);
    case Verdict::SamePitchNo:
        return Words::tr("%1 and %2 have the same pitch but never interchange: %3.")
            .arg(first, second, lookOf(interchange));
    case Verdict::NearlyPitchNo:
        return Words::tr("%1 and %2 never interchange: over 10 teeth they are %3 apart, over 20 %4.")
            .arg(first, second, millimetres(std::abs(interchange.perPitch) * 10),
                 millimetres(std::abs(interchange.perPitch) * 20));
    case Verdict::Never:
        return Words::tr("%1 and %2 never interchange.").arg(first, second);
    }
    return {};
}

QString sayWear(const Sample& sample, const Candidate& candidate) {
    if (sample.condition == Condition::New) return {};
    const bool ribbed = candidate.profile->ribbed();
    const double stretch = ribbed ? wear::stretchOfRibbed : wear::stretchOfToothed;
    const double length = candidate.belt ? candidate.belt->length.inMillimetres() : 1000;
    const QString ofLength =
        Words::tr("up to %1 in %2 long").arg(millimetres(stretch * length), millimetres(length));
    if (ribbed) return Words::tr("A used one measures %1 (common practice).").arg(ofLength);
    return Words::tr("A used one measures %1, its teeth up to %2 % thin (common practice).")
        .arg(ofLength)
        .arg(std::lround(wear::toothLoss * 100));
}

QString say(const OldWidth& width) {
    const QString measured = shown(width.measured);
    if (!width.standard) return measured;
    const QString standard = shown(width.standard->extent);
    if (!width.fits)
        return Words::tr("%1 is no width that is sold; the nearest is %2. Cut as measured.")
            .arg(measured, standard);
    if (!width.tolerance) return Words::tr("%1 is the standard width %2.").arg(measured, standard);
    return Words::tr("%1 is the standard width %2, tolerance %3 mm.")
        .arg(measured, standard, shown(*width.tolerance));
}

QString say(Supply supply) {
    switch (supply) {
    case Supply::FromSleeve:
        return {};
    case Supply::DoubleSidedSleeve:
        return Words::tr("It has teeth on both sides: it is cut from a double-sided sleeve only.");
    case Supply::NoSleeve:
        return Words::tr("No sleeve gives this belt.");
    case Supply::ByTheMetre:
        return Words::tr("An open-ended belt is sold by the metre, not cut from a sleeve.");
    }
    return {};
}

QString nameOf(const Candidate& candidate) {
    return candidate.belt ? text(belt::designation(*candidate.belt)) : text(candidate.profile->name);
}

QString shownChance(double probability) {
    const double percent = probability * 100;
    if (percent > 99) return Words::tr("over 99 %");
    return Words::tr("%1 %").arg(static_cast<int>(std::lround(percent)));
}

} // namespace riband::ui
