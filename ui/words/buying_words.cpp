#include "ui/words/buying_words.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QLocale>

#include <cmath>

namespace riband::ui {

namespace {

using foresight::Keeping;

Money rounded(double minor) { return Money::minor(static_cast<std::int64_t>(std::llround(minor))); }

/// An expected width, to whole millimetres or ribs.
QString about(double width, Unit unit) {
    const double whole = unit == Unit::Rib ? std::round(width) : std::round(width / 1000) * 1000;
    return shown(Extent::of(unit, static_cast<std::int64_t>(whole)));
}

QString sleeves(int count) {
    return count == 1 ? Words::tr("1 whole sleeve") : Words::tr("%1 whole sleeves").arg(count);
}

class Why {
public:
    Why(const shop::PurchaseLine& line, const shop::BuyingOutlook& outlook)
        : line_{line}, outlook_{outlook}, belt_{outlook.belts[line.belt]}, advice_{line.advice} {}

    QStringList sentences() {
        if (advice_.keeping != Keeping::Keep) {
            sayKeeping();
            return said_;
        }
        sayStock();
        if (outlook_.days < foresight::leastDaysToJudge)
            said_ << Words::tr("Sales of less than %1 days are known: little to judge by.")
                         .arg(foresight::leastDaysToJudge);
        sayBudget();
        sayWidth();
        sayCost();
        sayShelf();
        return said_;
    }

private:
    QString money(double minor) const { return shown(rounded(minor), outlook_.settings.prices.currency); }

    void sayKeeping() {
        switch (advice_.keeping) {
        case Keeping::NotAskedFor:
            said_ << Words::tr("Nobody has asked for it in %1 days.").arg(outlook_.days);
            break;
        case Keeping::TooSlow:
            said_ << Words::tr(
                         "About %1 a year are asked for: a sleeve of %2 would be too old before half of it "
                         "was sold.")
                         .arg(about(advice_.widthPerYear, belt_.belt.unit), shown(line_.width));
            break;
        default:
            said_ << Words::tr("At its price it brings %1 a year less than it costs.")
                         .arg(money(-advice_.earnsPerYear));
        }
    }

    void sayStock() {
        const QString here = belt_.expected > 0
                                 ? Words::tr("%1 here and expected, %2 of them on their way", "sleeves")
                                       .arg(sleeves(belt_.buying.sleeves))
                                       .arg(belt_.expected)
                                 : Words::tr("%1 here", "sleeves").arg(sleeves(belt_.buying.sleeves));
        const QString risk = shownShare(advice_.risk), wanted = shownShare(1 - outlook_.terms.service);
        if (line_.wanted == 0) {
            said_ << Words::tr("%1: in %2 days somebody would be sent away with a chance of %3, and %4 is "
                               "allowed.")
                         .arg(here)
                         .arg(advice_.horizonDays)
                         .arg(risk, wanted);
            return;
        }
        said_ << Words::tr("%1: until a sleeve of the next look could be here (%2 days), the chance that "
                           "somebody is sent away is %3; %4 is allowed.")
                     .arg(here)
                     .arg(advice_.horizonDays)
                     .arg(risk, wanted);
        if (line_.wanted > 1)
            said_ << Words::tr("%1 at once cost least: %2 a year are used up.")
                         .arg(sleeves(line_.wanted))
                         .arg(QLocale().toString(advice_.widths.front().sleevesPerYear, 'f', 1));
    }

    void sayBudget() {
        if (line_.sleeves == line_.wanted) return;
        if (!line_.costKnown())
            said_ << Words::tr("Its cost is not known, so it can't be set against the budget.");
        else
            said_ << Words::tr("The budget buys %1 of the %2; the others keep more sales.")
                         .arg(line_.sleeves)
                         .arg(line_.wanted);
    }

    void sayWidth() {
        const auto& best = advice_.widths.front();
        const auto& present = advice_.widthOf(belt_.buying.choices.front().width);
        if (best.sleeve.width == present.sleeve.width) return;
        said_ << Words::tr("As %1 instead of %2 it costs %3 a year less: %4 instead of %5 is wasted.")
                     .arg(shown(line_.width), shown(Extent::of(belt_.belt.unit, present.sleeve.width)),
                          money(present.year.total() - best.year.total()),
                          shownShare(best.consumption.wasteShare(), 1),
                          shownShare(present.consumption.wasteShare(), 1));
    }

    void sayCost() {
        if (!line_.costKnown() && line_.sleeves == line_.wanted)
            said_ << Words::tr("What a sleeve costs is not known.");
    }

    void sayShelf() {
        QStringList widths;
        for (const auto& each : advice_.preCut)
            widths << QStringLiteral("%1 × %2")
                          .arg(each.belts)
                          .arg(shown(Extent::of(belt_.belt.unit, each.width)));
        if (!widths.isEmpty()) said_ << Words::tr("Keep cut on the shelf: %1.").arg(widths.join(", "));
    }

    const shop::PurchaseLine& line_;
    const shop::BuyingOutlook& outlook_;
    const shop::BuyingBelt& belt_;
    const foresight::BuyingAdvice& advice_;
    QStringList said_;
};

} // namespace

QString shownShare(double share, int places) {
    return Words::tr("%1 %").arg(QLocale().toString(100 * share, 'f', places));
}

QString say(foresight::Method method) {
    using foresight::Method;
    switch (method) {
    case Method::Mean:
        return Words::tr("mean of all weeks");
    case Method::Smoothing:
        return Words::tr("exponential smoothing");
    case Method::Croston:
        return QStringLiteral("Croston");
    case Method::SyntetosBoylan:
        return QStringLiteral("Syntetos-Boylan");
    case Method::TeunterSyntetosBabai:
        return QStringLiteral("Teunter-Syntetos-Babai");
    case Method::Bootstrap:
        break;
    }
    return Words::tr("bootstrap of weeks");
}

QString say(foresight::Pattern pattern) {
    using foresight::Pattern;
    switch (pattern) {
    case Pattern::None:
        return Words::tr("no demand");
    case Pattern::Smooth:
        return Words::tr("smooth");
    case Pattern::Erratic:
        return Words::tr("erratic");
    case Pattern::Intermittent:
        return Words::tr("intermittent");
    case Pattern::Lumpy:
        break;
    }
    return Words::tr("lumpy");
}

QString verdictOf(const shop::PurchaseLine& line) {
    if (line.advice.keeping != Keeping::Keep) return Words::tr("don't keep");
    if (line.wanted == 0) return Words::tr("enough here");
    return line.sleeves > 0 ? Words::tr("buy") : Words::tr("wait");
}

QStringList whyOf(const shop::PurchaseLine& line, const shop::BuyingOutlook& outlook) {
    return Why{line, outlook}.sentences();
}

QString forecastOf(const shop::PurchaseLine& line, const shop::BuyingOutlook& outlook) {
    const foresight::Forecast& forecast = line.advice.forecast;
    const Unit unit = outlook.belts[line.belt].belt.unit;
    if (line.advice.pattern.pattern == foresight::Pattern::None) return Words::tr("no demand");
    const QString so = Words::tr("%1 a year, %2, by %3")
                           .arg(about(line.advice.widthPerYear, unit), say(line.advice.pattern.pattern),
                                say(forecast.method));
    if (forecast.trials.empty()) return Words::tr("%1 (too few sales to test by)").arg(so);
    return Words::tr("%1 (least error of %2 methods in %3 tests)")
        .arg(so)
        .arg(forecast.trials.size())
        .arg(forecast.origins);
}

std::vector<std::vector<std::string>> purchaseTable(const shop::PurchaseList& list,
                                                    const shop::BuyingOutlook& outlook) {
    const Currency& currency = outlook.settings.prices.currency;
    std::vector<std::vector<std::string>> table{
        {"belt", "sleeve_mm", "sleeve_ribs", "sleeves", "each", "cost", "delivery_days", "why"}};
    for (const shop::PurchaseLine& line : list.lines) {
        if (line.sleeves == 0) continue;
        const bool ribbed = line.width.unit() == Unit::Rib;
        const std::string width = printCount(line.width);
        table.push_back(
            {outlook.belts[line.belt].belt.designation, ribbed ? "" : width, ribbed ? width : "",
             std::to_string(line.sleeves), line.costKnown() ? printMoney(line.each, currency) : "",
             line.costKnown() ? printMoney(line.cost(), currency) : "", std::to_string(line.leadDays),
             whyOf(line, outlook).join(QLatin1Char(' ')).toStdString()});
    }
    return table;
}

} // namespace riband::ui
