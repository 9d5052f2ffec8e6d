#include "ui/words/replay_words.h"

#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <cmath>
#include <cstring>

namespace riband::ui {

namespace {

using shop::Estimate;
using shop::ReplayFigures;

constexpr double nothing = 1e-9;

QString sure(const Estimate& difference) {
    const double percent = 100 * difference.confidence();
    return percent > 99.9 ? Words::tr("over 99.9 % sure")
                          : Words::tr("%1 % sure").arg(shownNumber(percent, percent > 99 ? 1 : 0));
}

} // namespace

const std::vector<ReplayLine>& replayLines() {
    static const std::vector<ReplayLine> lines{
        {"yield_percent", QT_TRANSLATE_NOOP("Words", "Sold of what was used, %"), &ReplayFigures::yield, 100,
         2, 1},
        {"sleeves", QT_TRANSLATE_NOOP("Words", "Sleeves opened"), &ReplayFigures::sleeves, 1, 1, -1},
        {"mountings", QT_TRANSLATE_NOOP("Words", "Mountings"), &ReplayFigures::mountings, 1, 1, -1},
        {"lost_orders", QT_TRANSLATE_NOOP("Words", "Orders sent away"), &ReplayFigures::lostOrders, 1, 1, -1},
        {"lost_mm", QT_TRANSLATE_NOOP("Words", "Width sent away, mm"), &ReplayFigures::lost, 1, 0, -1},
        {"rubber_cost", QT_TRANSLATE_NOOP("Words", "Cost of rubber"), &ReplayFigures::rubber, 1, 2, -1, true},
        {"sleeves_held", QT_TRANSLATE_NOOP("Words", "Whole sleeves held"), &ReplayFigures::stock, 1, 1, -1},
        {"expense", QT_TRANSLATE_NOOP("Words", "All of it in money"), &ReplayFigures::expense, 1, 2, -1,
         true}};
    return lines;
}

double timesOf(const ReplayLine& line, const Currency& currency) {
    return line.isMoney ? std::pow(10, -currency.decimals()) : line.times;
}

const char* verdictWord(const ReplayLine& line, const Estimate& difference) {
    if (std::abs(difference.mean) < nothing && difference.doubt < nothing) return "the same";
    if (!difference.told()) return "untold";
    return difference.mean * line.good > 0 ? "better" : "worse";
}

QString sayVerdict(const ReplayLine& line, const Estimate& difference) {
    const char* word = verdictWord(line, difference);
    if (std::strcmp(word, "the same") == 0) return Words::tr("the same");
    if (std::strcmp(word, "untold") == 0) return Words::tr("not to be told apart");
    return (std::strcmp(word, "better") == 0 ? Words::tr("better, %1") : Words::tr("worse, %1"))
        .arg(sure(difference));
}

QString verdictOf(const shop::Alternative& alternative, const Currency& currency) {
    const Estimate& difference = alternative.difference.expense;
    const ReplayLine& line = replayLines().back();
    const auto money = [&](double minor) { return shownSum(Money::minor(std::llround(minor)), currency); };
    const QString amount = Words::tr("%1 ± %2 %3")
                               .arg(money(std::abs(difference.mean)), money(difference.doubt),
                                    text(std::string{currency.code()}));
    const char* word = verdictWord(line, difference);
    if (std::strcmp(word, "the same") == 0) return Words::tr("In money it is the same.");
    if (std::strcmp(word, "better") == 0)
        return Words::tr("Better: all in all it saves %1 a year (%2).").arg(amount, sure(difference));
    if (std::strcmp(word, "worse") == 0)
        return Words::tr("Worse: all in all it costs %1 a year more (%2).").arg(amount, sure(difference));
    return difference.mean < 0
               ? Words::tr("Better or worse is not to be told: it saves %1 a year, no more than chance.")
                     .arg(amount)
               : Words::tr("Better or worse is not to be told: it costs %1 a year more, no more than chance.")
                     .arg(amount);
}

} // namespace riband::ui
