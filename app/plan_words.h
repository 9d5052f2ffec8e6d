#pragma once

#include "app/plan_json.h"
#include "core/shop/suggest.h"

#include <QStringList>

namespace riband::app {

/// A plan for a person at a terminal: a line for each ready belt, mounting and what can't be served.
QStringList wordsOf(const BeltPlan& made);

/// What is to be cut for the shelf as well, and what then is left of each piece; "" if nothing.
QString shelfWords(const shop::Outlook& outlook, const shop::Way& way);

} // namespace riband::app
