#include "ui/words/entry_words.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

/// Why it is not, where that says more than what is expected.
QString because(TextFault fault, const QString& expected) {
    const bool plain = fault == TextFault::Empty || fault == TextFault::NotANumber;
    return plain ? expected : Words::tr("%1 %2", "two sentences").arg(say(fault), expected);
}

QString example(Unit unit) {
    return unit == Unit::Rib ? Words::tr("Type a whole number of ribs, for example 6.")
                             : Words::tr("Type the width in mm, for example %1, or with its unit: %2.")
                                   .arg(shownNumber(Width::micrometres(62'500)), QStringLiteral("3/4\""));
}

} // namespace

QString wrongExtent(const QString& typed, Unit unit, std::optional<Extent> most) {
    const auto read = readExtent(typed.toStdString(), unit);
    if (!read) return because(read.reason(), example(unit));
    if (read->isNone()) return Words::tr("This must be more than nothing. %1").arg(example(unit));
    if (most && *read > *most) return Words::tr("At most %1 can be meant here.").arg(shown(*most));
    return {};
}

QString wrongRest(const QString& typed, Unit unit, Extent most) {
    const auto read = readExtent(typed.toStdString(), unit);
    if (read && read->isNone()) return {};
    return wrongExtent(typed, unit, most);
}

QString wrongAmount(const QString& typed, const Currency& currency, Money most) {
    const auto read = readMoney(typed.toStdString(), currency);
    const QString expected =
        Words::tr("Type an amount, for example %1.").arg(shown(Money::minor(3850), currency));
    if (!read) return because(read.reason(), expected);
    if (*read < Money::minor(0)) return because(TextFault::Negative, expected);
    if (*read > most) return Words::tr("At most %1 can be meant here.").arg(shown(most, currency));
    return {};
}

QString wrongDay(const QString& typed, Date today, std::optional<Date> last) {
    const auto day = readDate(typed.toStdString());
    if (!day) return Words::tr("Type a day, for example %1.").arg(text(printDate(today)));
    if (last && *day > *last) return Words::tr("This day is still to come: today is %1.").arg(shown(today));
    return {};
}

QString wrongPlace(const std::string& said) {
    constexpr qsizetype shown = 20;
    QString name = text(said).simplified();
    if (name.size() > shown) name = name.left(shown) + QStringLiteral("…");
    return Words::tr(
               "“%1” can't be the name of a place: that has at most 60 characters in one line and is no code "
               "of a piece, a ticket or an order.")
        .arg(name);
}

QString wrongWhole(const QString& typed, std::int64_t least, std::int64_t most) {
    bool whole = false;
    const qlonglong number = typed.toLongLong(&whole);
    if (whole && number >= least && number <= most) return {};
    return Words::tr("Type a whole number from %1 to %2.").arg(least).arg(most);
}

} // namespace riband::ui
