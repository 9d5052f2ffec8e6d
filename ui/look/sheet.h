#pragma once

#include "ui/look/look.h"

namespace riband::ui {

/// The one style sheet of the program. Pages choose by property, never by sheets of their own:
///   QFrame[surface]  "card", "sunk", "ground", "advice" (sunk with the warm edge), "tile" (outlined card)
///   QLabel[role]     "typed", "total", "head", "part", "strong", "remark", "small", "warn", "gain",
///   "danger",
///                    "ok", "far" (to be read from two metres), "saidOk", "saidWarn"
///   QLineEdit[use]   "main": the one line of a page that takes everything
QString styleSheet(const Look& look);

/// Sets such a property and lets the widget take it on at once, also when it is shown already.
void setSheetProperty(QWidget& widget, const char* name, const QString& value);

} // namespace riband::ui
