#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QStringList>

namespace riband::ui {

namespace {

QString listed(const std::vector<belt::Belt>& belts) {
    QStringList names;
    for (const belt::Belt& belt : belts)
        names << text(belt::designation(belt));
    if (names.size() < 2) return names.join(QString());
    const QString last = names.takeLast();
    return Words::tr("%1 and %2", "the last two of a list").arg(names.join(QStringLiteral(", ")), last);
}

QString theNearest(const std::vector<belt::Belt>& belts) {
    if (belts.size() == 1) return Words::tr("The nearest is %1.").arg(listed(belts));
    return Words::tr("The nearest are %1.").arg(listed(belts));
}

QString withNearest(const QString& sentence, const belt::ReadFault& fault) {
    if (fault.nearest.empty() || fault.kind == belt::ReadFault::Kind::SeveralBelts) return sentence;
    return sentence + QLatin1Char(' ') + theNearest(fault.nearest);
}

/// "9.525 mm" of the profile that the nearest belts have; nothing if there are none.
QString pitchOfNearest(const belt::ReadFault& fault, const belt::Tables& tables) {
    if (fault.nearest.empty()) return {};
    const belt::Profile* profile = tables.profile(fault.nearest.front().profile);
    return profile ? shown(profile->pitch) : QString();
}

QString notWholeTeeth(const belt::ReadFault& fault, const belt::Tables& tables) {
    const QString pitch = pitchOfNearest(fault, tables);
    const QString part = text(fault.part);
    if (pitch.isEmpty()) return Words::tr("“%1” is not a whole number of teeth long.").arg(part);
    return Words::tr("“%1” is not a whole number of teeth long: the teeth are %2 apart.").arg(part, pitch);
}

bool isNumber(const QString& part) {
    return !part.isEmpty() &&
           std::all_of(part.begin(), part.end(), [](QChar sign) { return sign.isDigit(); });
}

QString tooWide(const belt::ReadFault& fault) {
    const QString part = text(fault.part);
    if (!fault.limit) return Words::tr("No sleeve is as wide as “%1”. Check the width.").arg(part);
    return Words::tr("No sleeve is as wide as “%1”: at most %2. Check the width.")
        .arg(part, shown(*fault.limit));
}

/// DPJ and its like: a D before one of the ribbed profiles of ISO 9982.
bool hasRibsOnBothSides(const QString& profile) {
    static const QStringList ribbed{QStringLiteral("PH"), QStringLiteral("PJ"), QStringLiteral("PK"),
                                    QStringLiteral("PL"), QStringLiteral("PM")};
    return profile.startsWith(QLatin1Char('D'), Qt::CaseInsensitive) &&
           ribbed.contains(profile.mid(1).toUpper());
}

QString unreadable(const belt::ReadFault& fault) {
    const QString part = text(fault.part);
    using Kind = belt::ReadFault::Kind;
    if (hasRibsOnBothSides(part))
        return Words::tr(
                   "“%1” has ribs on both sides. No sleeve is made of these here: order the belt itself.")
            .arg(part);
    switch (fault.kind) {
    case Kind::Empty:
        return Words::tr("Type what is printed on the belt, for example H8M 1200 30.");
    case Kind::NotUnderstood:
        if (isNumber(part))
            return Words::tr("“%1” is too large a number for a belt, a width or a count. Check it.")
                .arg(part);
        return Words::tr("“%1” means nothing here. Write profile, length and width, for example H8M 1200 30.")
            .arg(part);
    case Kind::TooLong:
        return Words::tr("That is over 200 characters. Type one belt at a time.");
    case Kind::NoProfile:
        return Words::tr("The profile is missing. Add its letters, for example T5, L, H8M or PJ.");
    case Kind::UnknownProfile:
        return Words::tr("No profile is called “%1”. Check the letters and the pitch.").arg(part);
    case Kind::NoLength:
        return Words::tr("The length is missing. Add it, or the number of teeth, for example H8M 1200.");
    case Kind::SeveralBelts:
        return Words::tr("“%1” may be %2. Write which.").arg(part, listed(fault.nearest));
    case Kind::VBelt:
        return Words::tr("“%1” is a V-belt. These are made one by one, not cut from a sleeve.").arg(part);
    case Kind::OpenEnded:
        return Words::tr("“%1” is sold by the metre, open-ended, not cut from a sleeve.").arg(part);
    default:
        return {};
    }
}

QString impossible(const belt::ReadFault& fault, const belt::Tables& tables) {
    const QString part = text(fault.part);
    using Kind = belt::ReadFault::Kind;
    switch (fault.kind) {
    case Kind::LengthNotMultiple:
        return notWholeTeeth(fault, tables);
    case Kind::LengthImpossible:
        return Words::tr("No belt has the length “%1”. Check the length.").arg(part);
    case Kind::WidthNotPositive:
        return Words::tr("A width is more than nothing. Which width?");
    case Kind::WidthOverSleeve:
        return tooWide(fault);
    case Kind::HalfARib:
        return Words::tr("A ribbed belt is cut in the groove, so its ribs are whole. How many ribs?");
    case Kind::NoRibs:
        return Words::tr("A ribbed belt has at least one rib. How many ribs?");
    case Kind::QuantityImpossible:
        return Words::tr("“%1” is no number of belts. Say a whole number from 1 on.").arg(part);
    default:
        return unreadable(fault);
    }
}

QString shapeOf(const belt::Reading& reading, const belt::Tables& tables) {
    const belt::Profile* profile = tables.profile(reading.belt.profile);
    return profile ? say(profile->shape) : QString();
}

QString named(const belt::Reading& reading, const QString& mark) {
    return Words::tr("%1: %2", "a belt and what tells it apart")
        .arg(text(belt::designation(reading.belt)), mark);
}

QString teethOrLength(const belt::Reading& reading) {
    if (!reading.belt.teeth) return shown(reading.belt.length);
    return Words::tr("%1 teeth, %2 long").arg(reading.belt.teeth->count()).arg(shown(reading.belt.length));
}

QString widthOf(const belt::Reading& reading) {
    return reading.width ? Words::tr("%1 wide").arg(shown(*reading.width)) : Words::tr("width not said");
}

/// Where a number may be a count or a size, both are told.
QString countAndWidthOf(const belt::Reading& reading) {
    return Words::tr("%1 × %2", "quantity, width").arg(reading.quantity).arg(widthOf(reading));
}

QString notListed(const belt::Reading& reading) {
    const QString sentence = Words::tr("A whole number of teeth, but in no maker's list.");
    if (reading.nearestMade.empty()) return sentence;
    return sentence + QLatin1Char(' ') + theNearest(reading.nearestMade);
}

} // namespace

QString say(const belt::ReadFault& fault, const belt::Tables& tables) {
    return withNearest(impossible(fault, tables), fault);
}

QString say(belt::Question question) {
    using belt::Question;
    switch (question) {
    case Question::WhichToothShape:
        return Words::tr("Which tooth? Look at it from the side.");
    case Question::ToothedOrRibbed:
        return Words::tr("Teeth across the belt, or ribs along it?");
    case Question::ToothedOrVBelt:
        return Words::tr("A toothed belt, or a narrow V-belt without teeth?");
    case Question::WhichMxlCode:
        return Words::tr("How many teeth? The number may be teeth, or tenths or hundredths of an inch.");
    case Question::MillimetreOrInch:
        return Words::tr("Millimetres or inches?");
    case Question::WidthTimesTen:
        return Words::tr("Is the width in millimetres or in tenths of them?");
    case Question::WhichIsLength:
        return Words::tr("Which number is the length, and which the width?");
    case Question::HowWide:
        return Words::tr("How wide?");
    case Question::HowManyRibs:
        return Words::tr("How many ribs?");
    case Question::HowLong:
        return Words::tr("How long, or how many teeth?");
    }
    return {};
}

QString tellApart(const belt::Reading& reading, belt::Question question, const belt::Tables& tables) {
    using belt::Question;
    switch (question) {
    case Question::WhichToothShape:
    case Question::ToothedOrRibbed:
    case Question::ToothedOrVBelt:
        return named(reading, shapeOf(reading, tables));
    case Question::WhichMxlCode:
        return named(reading, teethOrLength(reading));
    case Question::MillimetreOrInch:
    case Question::WhichIsLength:
        return named(reading, teethOrLength(reading) + QStringLiteral(", ") + widthOf(reading));
    case Question::WidthTimesTen:
    case Question::HowWide:
    case Question::HowManyRibs:
        return named(reading, countAndWidthOf(reading));
    case Question::HowLong:
        return named(reading, teethOrLength(reading));
    }
    return {};
}

QString say(belt::Reading::Remark remark, const belt::Reading& reading) {
    using Remark = belt::Reading::Remark;
    const QString said = text(reading.said);
    const QString length = shown(reading.belt.length);
    switch (remark) {
    case Remark::CodeRounded:
        return Words::tr("The code %1 is rounded: the belt is %2 long.").arg(said, length);
    case Remark::MatchedLength:
        return Words::tr("%1 was said; the belt that is made is %2 long.").arg(said, length);
    case Remark::WidthFromLabel:
        return Words::tr("%1 stands for %2.")
            .arg(text(reading.saidWidth), reading.width ? shown(*reading.width) : Words::tr("a usual width"));
    case Remark::ShortForBelt:
        return Words::tr("Under 20 pitches: so short a belt is hardly ever made.");
    case Remark::LengthNotListed:
        return notListed(reading);
    case Remark::HalfLost:
        return Words::tr("%1 is the short way to write %2.").arg(said, length);
    }
    return {};
}

QString say(belt::ToothShape shape) {
    using belt::ToothShape;
    switch (shape) {
    case ToothShape::Trapezoid:
        return Words::tr("straight flanks, flat tip");
    case ToothShape::HalfRound:
        return Words::tr("plain half-round, deep");
    case ToothShape::FlatTopRound:
        return Words::tr("half-round with a flat tip, shallower");
    case ToothShape::DimpledRound:
        return Words::tr("round with a dimple along the tip");
    case ToothShape::FullRound:
        return Words::tr("round with fuller flanks, no dimple");
    case ToothShape::Rib:
        return Words::tr("ribs along the belt");
    }
    return {};
}

QString say(belt::Family family) {
    using belt::Family;
    switch (family) {
    case Family::InchTrapezoidal:
        return Words::tr("toothed, inch pitch, trapezoidal");
    case Family::MetricTrapezoidal:
        return Words::tr("toothed, metric pitch, trapezoidal");
    case Family::CurvilinearH:
        return Words::tr("toothed, round tooth H");
    case Family::CurvilinearR:
        return Words::tr("toothed, round tooth R");
    case Family::CurvilinearS:
        return Words::tr("toothed, round tooth S");
    case Family::CurvilinearG:
        return Words::tr("toothed, round tooth G");
    case Family::ModuleTrapezoidal:
        return Words::tr("toothed, module pitch, trapezoidal");
    case Family::VRibbed:
        return Words::tr("V-ribbed");
    }
    return {};
}

} // namespace riband::ui
