#pragma once

#include <QString>

class QWidget;

namespace riband::ui {

/// The one question before a form with something typed in it closes without keeping it. `what`: a sentence
/// that says what would be lost. True: it may be thrown away; Enter and Escape go on in the form.
bool mayThrowAway(QWidget& form, const QString& what);

} // namespace riband::ui
