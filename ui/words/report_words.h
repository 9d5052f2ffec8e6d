#pragma once

#include "core/store/takings.h"

#include <QString>

#include <string>

namespace riband::ui {

/// The head of a report's column on the screen, for its name in files.
QString columnWord(const std::string& name);
/// A fixed word of a report's field on the screen ("V-ribbed", "dead", "cash"); others stay as they are.
QString groupWord(const std::string& field);
QString say(store::Payment kind);
/// "4.3 %" of 0.043
QString shownPercent(double share);
/// "93.1"
QString shownTenths(double value);

} // namespace riband::ui
