#pragma once

#include "core/measure/money.h"
#include "core/shop/buying/what_if.h"

#include <QString>

#include <vector>

namespace riband::ui {

/// A figure of a replayed year as screen, command line and files name it.
struct ReplayLine {
    const char* name; ///< in files: "yield_percent"
    const char* head; ///< to be translated: what it is
    shop::Estimate shop::ReplayFigures::*figure;
    double times; ///< from the figure's unit to that of the screen; money is in minor units
    int places;
    int good; ///< 1: more is better, -1: less is
    bool isMoney = false;
};
const std::vector<ReplayLine>& replayLines();
/// From a figure's unit to what is shown.
double timesOf(const ReplayLine& line, const Currency& currency);

/// What a difference to how it is now means: "better", "worse", "the same", or "untold" where it is no more
/// than chance; a fixed word for files.
const char* verdictWord(const ReplayLine& line, const shop::Estimate& difference);
/// The same for people, with how sure it is: "better, 98 % sure".
QString sayVerdict(const ReplayLine& line, const shop::Estimate& difference);
/// The alternative as a whole, in money: "Better: 130.20 ± 20.10 EUR a year less is spent or missed (99 %
/// sure)."
QString verdictOf(const shop::Alternative& alternative, const Currency& currency);

} // namespace riband::ui
