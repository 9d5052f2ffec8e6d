#include "ui/words/report_words.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>
#include <iterator>

namespace riband::ui {

namespace {

struct Named {
    const char* name;
    const char* word;
};

constexpr Named columns[] = {
    {"group", QT_TRANSLATE_NOOP("Words", "What")},
    {"unit", QT_TRANSLATE_NOOP("Words", "Unit")},
    {"ordered", QT_TRANSLATE_NOOP("Words", "Ordered")},
    {"least_used", QT_TRANSLATE_NOOP("Words", "Least used")},
    {"used", QT_TRANSLATE_NOOP("Words", "Used")},
    {"hindsight_yield", QT_TRANSLATE_NOOP("Words", "Reachable, %")},
    {"beyond_hindsight", QT_TRANSLATE_NOOP("Words", "Lost beyond it")},
    {"opening", QT_TRANSLATE_NOOP("Words", "Rack at first")},
    {"bought", QT_TRANSLATE_NOOP("Words", "Bought")},
    {"found", QT_TRANSLATE_NOOP("Words", "Found")},
    {"sold", QT_TRANSLATE_NOOP("Words", "Sold")},
    {"ready", QT_TRANSLATE_NOOP("Words", "Onto the shelf")},
    {"trim", QT_TRANSLATE_NOOP("Words", "Trim")},
    {"kerf", QT_TRANSLATE_NOOP("Words", "Kerf")},
    {"end", QT_TRANSLATE_NOOP("Words", "Ends")},
    {"stub", QT_TRANSLATE_NOOP("Words", "Stubs")},
    {"miscut", QT_TRANSLATE_NOOP("Words", "Miscut")},
    {"damaged", QT_TRANSLATE_NOOP("Words", "Damaged")},
    {"aged", QT_TRANSLATE_NOOP("Words", "Aged")},
    {"difference", QT_TRANSLATE_NOOP("Words", "Difference")},
    {"closing", QT_TRANSLATE_NOOP("Words", "Rack at last")},
    {"yield_percent", QT_TRANSLATE_NOOP("Words", "Sold, %")},
    {"shelf", QT_TRANSLATE_NOOP("Words", "On the shelf")},
    {"used_m2", QT_TRANSLATE_NOOP("Words", "Used, m²")},
    {"lost_m2", QT_TRANSLATE_NOOP("Words", "Lost, m²")},
    {"lost_kg", QT_TRANSLATE_NOOP("Words", "Lost, kg")},
    {"lost_share_percent", QT_TRANSLATE_NOOP("Words", "Share of lost, %")},
    {"cost_lost", QT_TRANSLATE_NOOP("Words", "Cost of what was lost")},
    {"belt", QT_TRANSLATE_NOOP("Words", "Belt")},
    {"name", QT_TRANSLATE_NOOP("Words", "Name")},
    {"pieces", QT_TRANSLATE_NOOP("Words", "Pieces")},
    {"width", QT_TRANSLATE_NOOP("Words", "Width")},
    {"sold_in_year", QT_TRANSLATE_NOOP("Words", "Sold in a year")},
    {"cover_days", QT_TRANSLATE_NOOP("Words", "Lasts, days")},
    {"oldest_days", QT_TRANSLATE_NOOP("Words", "Oldest, days")},
    {"pace", QT_TRANSLATE_NOOP("Words", "Pace")},
    {"cost", QT_TRANSLATE_NOOP("Words", "Cost")},
    {"lines", QT_TRANSLATE_NOOP("Words", "Lines")},
    {"revenue", QT_TRANSLATE_NOOP("Words", "Sold for")},
    {"margin", QT_TRANSLATE_NOOP("Words", "Margin")},
    {"margin_percent", QT_TRANSLATE_NOOP("Words", "Margin, %")},
    {"price", QT_TRANSLATE_NOOP("Words", "Price")},
    {"worth", QT_TRANSLATE_NOOP("Words", "Worth")},
    {"full_cost", QT_TRANSLATE_NOOP("Words", "Cost with waste")},
    {"below_cost", QT_TRANSLATE_NOOP("Words", "Below cost")},
    {"proposed_price", QT_TRANSLATE_NOOP("Words", "Proposed")},
    {"revenue_without_cost", QT_TRANSLATE_NOOP("Words", "Of it without cost")},
    {"without_cost", QT_TRANSLATE_NOOP("Words", "Pieces without cost")},
    {"month", QT_TRANSLATE_NOOP("Words", "Month")},
    {"cuts", QT_TRANSLATE_NOOP("Words", "Movements")},
    {"lost", QT_TRANSLATE_NOOP("Words", "Lost")},
    {"lost_percent", QT_TRANSLATE_NOOP("Words", "Lost, %")},
    {"chance_low_percent", QT_TRANSLATE_NOOP("Words", "By chance from, %")},
    {"chance_high_percent", QT_TRANSLATE_NOOP("Words", "to, %")},
    {"news", QT_TRANSLATE_NOOP("Words", "News")},
    {"order", QT_TRANSLATE_NOOP("Words", "Order")},
    {"customer", QT_TRANSLATE_NOOP("Words", "Customer")},
    {"made", QT_TRANSLATE_NOOP("Words", "Made")},
    {"days", QT_TRANSLATE_NOOP("Words", "Days")},
    {"total", QT_TRANSLATE_NOOP("Words", "Total")},
    {"at", QT_TRANSLATE_NOOP("Words", "When")},
    {"person", QT_TRANSLATE_NOOP("Words", "Person")},
    {"what", QT_TRANSLATE_NOOP("Words", "What")},
    {"kind", QT_TRANSLATE_NOOP("Words", "By")},
    {"suggested", QT_TRANSLATE_NOOP("Words", "Suggested")},
    {"overridden", QT_TRANSLATE_NOOP("Words", "Other pieces")},
    {"shelf_offered", QT_TRANSLATE_NOOP("Words", "Shelf offered")},
    {"shelf_refused", QT_TRANSLATE_NOOP("Words", "Shelf refused")},
    {"expected_cost", QT_TRANSLATE_NOOP("Words", "Expected to cost")},
    {"expected_doubt", QT_TRANSLATE_NOOP("Words", "±")},
    {"replayed", QT_TRANSLATE_NOOP("Words", "Replayed")},
    {"replayed_mm", QT_TRANSLATE_NOOP("Words", "Cost, mm")},
    {"doubt_mm", QT_TRANSLATE_NOOP("Words", "± mm")},
    {"replayed_cost", QT_TRANSLATE_NOOP("Words", "Cost")},
    {"doubt_cost", QT_TRANSLATE_NOOP("Words", "±")},
    {"told", QT_TRANSLATE_NOOP("Words", "More than chance")},
    {"where", QT_TRANSLATE_NOOP("Words", "From or to")},
    {"settled", QT_TRANSLATE_NOOP("Words", "Settled")},
    {"less", QT_TRANSLATE_NOOP("Words", "Less than the book")},
    {"more", QT_TRANSLATE_NOOP("Words", "More than the book")},
    {"counted", QT_TRANSLATE_NOOP("Words", "Counted")},
    {"right", QT_TRANSLATE_NOOP("Words", "Right")},
    {"elsewhere", QT_TRANSLATE_NOOP("Words", "Lay elsewhere")},
    {"missing", QT_TRANSLATE_NOOP("Words", "Missing")},
    {"unlabelled", QT_TRANSLATE_NOOP("Words", "Without label")},
    {"right_percent", QT_TRANSLATE_NOOP("Words", "Right, %")},
    {"within_days", QT_TRANSLATE_NOOP("Words", "Within days")},
    {"proved", QT_TRANSLATE_NOOP("Words", "Proved")},
    {"piece", QT_TRANSLATE_NOOP("Words", "Piece")},
    {"place", QT_TRANSLATE_NOOP("Words", "Place")},
    {"received", QT_TRANSLATE_NOOP("Words", "Came")},
    {"batch", QT_TRANSLATE_NOOP("Words", "Batch")},
    {"reason", QT_TRANSLATE_NOOP("Words", "Reason")},
    {"words", QT_TRANSLATE_NOOP("Words", "In their own words")},
    {"suggested_from", QT_TRANSLATE_NOOP("Words", "Suggested from")},
    {"taken_from", QT_TRANSLATE_NOOP("Words", "Taken from")},
    {"shelf_belts", QT_TRANSLATE_NOOP("Words", "For the shelf")},
    {"as_suggested_mm", QT_TRANSLATE_NOOP("Words", "As suggested, mm")},
    {"as_done_mm", QT_TRANSLATE_NOOP("Words", "As done, mm")},
    {"from_to", QT_TRANSLATE_NOOP("Words", "From and to")},
    {"counts", QT_TRANSLATE_NOOP("Words", "Counts")},
    {"amount", QT_TRANSLATE_NOOP("Words", "Amount")},
    {"orders", QT_TRANSLATE_NOOP("Words", "Orders")},
    {"payment", QT_TRANSLATE_NOOP("Words", "Paid")},
    {"state", QT_TRANSLATE_NOOP("Words", "Now")},
    {"quantity", QT_TRANSLATE_NOOP("Words", "Belts")},
    {"belts", QT_TRANSLATE_NOOP("Words", "Belts")},
    {"from_days", QT_TRANSLATE_NOOP("Words", "From days")},
    {"below_days", QT_TRANSLATE_NOOP("Words", "Below days")},
    {"sleeve_cost", QT_TRANSLATE_NOOP("Words", "Cost of a sleeve")},
    {"sleeve_width", QT_TRANSLATE_NOOP("Words", "Width of a sleeve")},
    {"yield", QT_TRANSLATE_NOOP("Words", "Sold, %")},
    {"sold_before", QT_TRANSLATE_NOOP("Words", "Sold before")},
    {"lost_before", QT_TRANSLATE_NOOP("Words", "Lost before")},
    {"yield_before_percent", QT_TRANSLATE_NOOP("Words", "Sold before, %")},
    {"cost_lost_before", QT_TRANSLATE_NOOP("Words", "Cost of what was lost before")},
    {"sold_year_before", QT_TRANSLATE_NOOP("Words", "Sold a year earlier")},
    {"lost_year_before", QT_TRANSLATE_NOOP("Words", "Lost a year earlier")},
    {"yield_year_before_percent", QT_TRANSLATE_NOOP("Words", "Sold a year earlier, %")},
    {"cost_lost_year_before", QT_TRANSLATE_NOOP("Words", "Cost of what was lost a year earlier")},
    {"proved_percent", QT_TRANSLATE_NOOP("Words", "Proved, %")}};

constexpr Named fields[] = {
    {"inch trapezoidal", QT_TRANSLATE_NOOP("Words", "inch trapezoidal")},
    {"metric trapezoidal", QT_TRANSLATE_NOOP("Words", "metric trapezoidal")},
    {"curvilinear H", QT_TRANSLATE_NOOP("Words", "curvilinear H")},
    {"curvilinear R", QT_TRANSLATE_NOOP("Words", "curvilinear R")},
    {"curvilinear S", QT_TRANSLATE_NOOP("Words", "curvilinear S")},
    {"curvilinear G", QT_TRANSLATE_NOOP("Words", "curvilinear G")},
    {"module trapezoidal", QT_TRANSLATE_NOOP("Words", "module trapezoidal")},
    {"V-ribbed", QT_TRANSLATE_NOOP("Words", "V-ribbed")},
    {"moving", QT_TRANSLATE_NOOP("Words", "moving")},
    {"slow", QT_TRANSLATE_NOOP("Words", "slow")},
    {"dead", QT_TRANSLATE_NOOP("Words", "dead")},
    {"new", QT_TRANSLATE_NOOP("Words", "new")},
    {"all", QT_TRANSLATE_NOOP("Words", "all")},
    {"person", QT_TRANSLATE_NOOP("Words", "person")},
    {"reason", QT_TRANSLATE_NOOP("Words", "reason")},
    {"family", QT_TRANSLATE_NOOP("Words", "family")},
    {"profile", QT_TRANSLATE_NOOP("Words", "profile")},
    {"cutter", QT_TRANSLATE_NOOP("Words", "cutter")},
    {"older first", QT_TRANSLATE_NOOP("Words", "older first")},
    {"nearer to hand", QT_TRANSLATE_NOOP("Words", "nearer to hand")},
    {"customer saw it", QT_TRANSLATE_NOOP("Words", "customer saw it")},
    {"damaged or unsafe", QT_TRANSLATE_NOOP("Words", "damaged or unsafe")},
    {"kept for somebody", QT_TRANSLATE_NOOP("Words", "kept for somebody")},
    {"other", QT_TRANSLATE_NOOP("Words", "other")},
    {"shelf not wanted", QT_TRANSLATE_NOOP("Words", "belts for the shelf not wanted")},
    {"belt", QT_TRANSLATE_NOOP("Words", "belt")},
    {"place", QT_TRANSLATE_NOOP("Words", "place")},
    {"cause", QT_TRANSLATE_NOOP("Words", "cause")},
    {"counter", QT_TRANSLATE_NOOP("Words", "who counted")},
    {"measuring", QT_TRANSLATE_NOOP("Words", "measuring")},
    {"unrecorded cut", QT_TRANSLATE_NOOP("Words", "unrecorded cut")},
    {"wrong piece taken", QT_TRANSLATE_NOOP("Words", "wrong piece taken")},
    {"label lost", QT_TRANSLATE_NOOP("Words", "label lost")},
    {"digits in the wrong order", QT_TRANSLATE_NOOP("Words", "digits in the wrong order")},
    {"edge waste", QT_TRANSLATE_NOOP("Words", "edge waste")},
    {"booked late", QT_TRANSLATE_NOOP("Words", "booked late")},
    {"found", QT_TRANSLATE_NOOP("Words", "found")},
    {"unexplained", QT_TRANSLATE_NOOP("Words", "unexplained")},
    {"trim", QT_TRANSLATE_NOOP("Words", "trim")},
    {"kerf", QT_TRANSLATE_NOOP("Words", "kerf")},
    {"end", QT_TRANSLATE_NOOP("Words", "end")},
    {"stub", QT_TRANSLATE_NOOP("Words", "stub")},
    {"miscut", QT_TRANSLATE_NOOP("Words", "miscut")},
    {"damaged", QT_TRANSLATE_NOOP("Words", "damaged")},
    {"aged", QT_TRANSLATE_NOOP("Words", "aged")},
    {"difference", QT_TRANSLATE_NOOP("Words", "difference")},
    {"age", QT_TRANSLATE_NOOP("Words", "age")},
    {"cover", QT_TRANSLATE_NOOP("Words", "how long it lasts")},
    {"payment", QT_TRANSLATE_NOOP("Words", "kind of payment")},
    {"made", QT_TRANSLATE_NOOP("Words", "made that day")},
    {"uncollected", QT_TRANSLATE_NOOP("Words", "not collected")},
    {"customer", QT_TRANSLATE_NOOP("Words", "customer")},
    {"below cost", QT_TRANSLATE_NOOP("Words", "below cost")},
    {"order", QT_TRANSLATE_NOOP("Words", "order")},
    {"cash", QT_TRANSLATE_NOOP("Words", "cash")},
    {"card", QT_TRANSLATE_NOOP("Words", "card")},
    {"transfer", QT_TRANSLATE_NOOP("Words", "bank transfer")},
    {"invoice", QT_TRANSLATE_NOOP("Words", "on invoice")},
    {"parked", QT_TRANSLATE_NOOP("Words", "parked")},
    {"quoted", QT_TRANSLATE_NOOP("Words", "quoted")},
    {"open", QT_TRANSLATE_NOOP("Words", "to be cut")},
    {"ready", QT_TRANSLATE_NOOP("Words", "ready")},
    {"handed over", QT_TRANSLATE_NOOP("Words", "handed over")},
    {"cancelled", QT_TRANSLATE_NOOP("Words", "cancelled")},
    {"sleeve", QT_TRANSLATE_NOOP("Words", "sleeve")},
    {"remnant", QT_TRANSLATE_NOOP("Words", "remnant")},
    {"ready belt", QT_TRANSLATE_NOOP("Words", "ready belt")},
    {"yes", QT_TRANSLATE_NOOP("Words", "yes")},
    {"ribs", QT_TRANSLATE_NOOP("Words", "ribs")}};

template <std::size_t N>
QString wordOf(const Named (&words)[N], const std::string& name) {
    const auto at =
        std::find_if(std::begin(words), std::end(words), [&](const Named& n) { return n.name == name; });
    return at == std::end(words) ? QString::fromStdString(name) : Words::tr(at->word);
}

/// The digits before the decimal point of a text that begins with them, in threes.
QString grouped(QString number, bool isNegative) {
    constexpr QChar smallSpace{0x202F}, minus{0x2212};
    qsizetype digits = 0;
    while (digits < number.size() && number[digits].isDigit())
        ++digits;
    if (digits > 4)
        for (qsizetype at = digits - 3; at > 0; at -= 3)
            number.insert(at, smallSpace);
    return isNegative ? minus + number : number;
}

} // namespace

QString columnWord(const std::string& name) {
    if (name.starts_with("cost_") && !name.starts_with("cost_lost"))
        return Words::tr("%1, cost").arg(wordOf(columns, name.substr(5)));
    return wordOf(columns, name);
}

QString groupWord(const std::string& field) { return wordOf(fields, field); }

QString namelessGroup(const std::string& kind) {
    if (kind == "all") return {};
    if (kind == "cutter") return Words::tr("by hand");
    if (kind == "customer") return Words::tr("walk-ins");
    if (kind == "family") return Words::tr("no family");
    if (kind == "reason") return Words::tr("no reason given");
    return Words::tr("no place");
}

QString say(store::Payment kind) {
    switch (kind) {
    case store::Payment::Cash:
        return Words::tr("cash");
    case store::Payment::Card:
        return Words::tr("card");
    case store::Payment::Transfer:
        return Words::tr("bank transfer");
    case store::Payment::Invoice:
        return Words::tr("on invoice");
    }
    return {};
}

QString shownSum(Unit unit, std::int64_t count) {
    return grouped(shown(Extent::of(unit, std::abs(count))), count < 0);
}

QString shownSum(Money money, const Currency& currency) {
    const std::int64_t minor = money.inMinor();
    return grouped(shown(Money::minor(std::abs(minor)), currency), minor < 0);
}

QString shownDays(const shop::Period& period) {
    const Date first = dayOf(period.from), last = dayOf(period.until - std::chrono::milliseconds{1});
    return first == last ? shown(first) : Words::tr("%1 to %2").arg(shown(first), shown(last));
}

QString shownPeriod(const shop::Period& period, Date today) {
    const QString days = shownDays(period);
    return shop::isRunning(period, today) ? Words::tr("%1, so far").arg(days) : days;
}

QString shownPercent(double share) { return Words::tr("%1 %").arg(QLocale{}.toString(100 * share, 'f', 1)); }

QString shownTenths(double value) { return QLocale{}.toString(value, 'f', 1); }

QString shownNumber(double value, int places) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    const QString number = locale.toString(std::abs(value), 'f', places);
    const bool isNothing =
        std::none_of(number.begin(), number.end(), [](QChar c) { return c.isDigit() && c.digitValue() > 0; });
    return grouped(number, value < 0 && !isNothing);
}

} // namespace riband::ui
