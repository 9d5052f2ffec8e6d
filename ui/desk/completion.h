#pragma once

class QCompleter;
class QLineEdit;

namespace riband::ui {

/// Offers words below the field while one types. Enter while none of them is chosen goes on in the form, as
/// it does without the list (Qt would only close the list).
void offerBelow(QLineEdit& field, QCompleter* completer);

} // namespace riband::ui
