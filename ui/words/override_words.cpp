#include "ui/words/override_words.h"

#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QStringList>

#include <cmath>

namespace riband::ui {

QString costOf(const shop::BothWaysRow& row, const Currency& currency, shop::Sees sees) {
    const auto millimetres = [](double value) {
        return shownSum(Unit::Micrometre, std::llround(std::abs(value) * 1000));
    };
    const QString width = Words::tr("%1 ± %2").arg(millimetres(row.width), millimetres(row.widthDoubt));
    if (sees == shop::Sees::WidthOnly) return width;
    return Words::tr("%1, %2 ± %3 %4")
        .arg(width, shownSum(Money::minor(std::llround(std::abs(row.money))), currency),
             shownSum(Money::minor(std::llround(row.moneyDoubt)), currency),
             text(std::string{currency.code()}));
}

QString followedWords(const shop::OverrideReport& report) {
    const shop::OverrideRow& all = report.all;
    if (all.suggested == 0) return Words::tr("No order of this period kept what was suggested for it.");
    if (all.departures == 0) return Words::tr("Every suggestion was followed.");
    QStringList ways;
    if (all.overridden > 0) ways << Words::tr("other pieces: %1").arg(all.overridden);
    if (all.shelfRefused > 0)
        ways
            << Words::tr("belts for the shelf refused: %1 of %2").arg(all.shelfRefused).arg(all.shelfOffered);
    return Words::tr("%1 of %2 suggestions were not followed (%3).")
        .arg(all.departures)
        .arg(all.suggested)
        .arg(ways.join(QStringLiteral("; ")));
}

QString verdictOf(const shop::OverrideReport& report, const shop::BothWays& played, const Currency& currency,
                  shop::Sees sees) {
    if (report.all.departures == 0) return followedWords(report);
    if (played.all.departures == 0)
        return Words::tr("Of what was done otherwise the book keeps too little to replay it.");
    constexpr double shownWidth = 0.0005; // less is shown as nothing
    if (std::abs(played.all.width) < shownWidth && !played.all.told())
        return Words::tr("Replayed both ways, doing otherwise came to the same.");
    const QString cost = costOf(played.all, currency, sees);
    const bool saved = played.all.width < 0;
    if (!played.all.told())
        return saved
                   ? Words::tr("Replayed both ways, doing otherwise saved %1: no more than chance.").arg(cost)
                   : Words::tr("Replayed both ways, doing otherwise cost %1: no more than chance.").arg(cost);
    return saved ? Words::tr("Replayed both ways, doing otherwise saved %1: the suggestions lost.").arg(cost)
                 : Words::tr("Replayed both ways, doing otherwise cost %1: the suggestions were better.")
                       .arg(cost);
}

} // namespace riband::ui
