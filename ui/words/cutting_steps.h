#pragma once

#include "core/shop/queries.h"
#include "core/store/settings.h"

#include <QString>

#include <vector>

namespace riband::ui {

/// How to set the cutter up for a mounting, one step each, with its figures.
std::vector<QString> setUpSteps(const shop::BenchMounting& mounting);

/// What the set-up or the belt warns of; `stop`: it must not be cut here.
struct Warning {
    QString words;
    bool stop;
};
std::vector<Warning> warningsOf(const shop::BenchMounting& mounting);

/// What holds for every cut.
std::vector<QString> cautions();

/// "30 mm +0.8 -0.8; 50 mm, 85 mm +1.2 -1.6 (ISO 13050)", the customer's belts first; "" for ribs, and where
/// no standard says any.
QString tolerancesOf(const shop::BenchMounting& mounting);

} // namespace riband::ui
