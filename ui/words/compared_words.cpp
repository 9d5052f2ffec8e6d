#include "ui/words/compared_words.h"

#include "ui/words/report_words.h"
#include "ui/words/tr.h"

#include <QStringList>

namespace riband::ui {

namespace {

using shop::Told;

QString lostOf(const shop::Balance<std::int64_t>& width) {
    const auto yield = width.yield();
    return yield ? shownPercent(1 - *yield) : Words::tr("nothing used");
}

QString lostOf(const std::optional<shop::ComparedRow::Then>& then) {
    return then ? lostOf(then->width) : untoldWords();
}

/// Nothing where all of the period is told.
QString gapWords(const shop::Period& then, Told told) {
    if (told == Told::Nothing)
        return Words::tr("The book begins after %1: there is nothing to compare with.").arg(shownDays(then));
    return told == Told::Part
               ? Words::tr("The book begins within %1: that is not the whole of it.").arg(shownDays(then))
               : QString{};
}

} // namespace

QString untoldWords() { return Words::tr("the book begins later"); }

QString lostThen(const shop::ComparedRow& row) {
    return Words::tr("before: %1   a year earlier: %2").arg(lostOf(row.before), lostOf(row.yearBefore));
}

QStringList comparedWords(const shop::Compared& compared, Date today) {
    QStringList words{Words::tr("%1 beside the period before, %2, and the same days a year earlier, %3.")
                          .arg(shownPeriod(compared.period, today), shownDays(compared.before),
                               shownDays(compared.yearBefore))};
    for (const QString& gap : {gapWords(compared.before, compared.beforeTold),
                               gapWords(compared.yearBefore, compared.yearBeforeTold)})
        if (!gap.isEmpty()) words << gap;
    return words;
}

} // namespace riband::ui
