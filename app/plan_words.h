#pragma once

#include "app/plan_json.h"

#include <QStringList>

namespace riband::app {

/// A plan for a person at a terminal: a line for each ready belt, mounting and what can't be served.
QStringList wordsOf(const BeltPlan& made);

} // namespace riband::app
