#include "ui/counter/measured_belt.h"

#include "ui/words/tr.h"

namespace riband::ui {

QString beltWords(const MeasuredBelt& measured) {
    if (measured.belt) return text(belt::designation(*measured.belt));
    const QString profile = text(measured.profile);
    // The reader says what open-ended means.
    return measured.byTheMetre ? profile + QStringLiteral(" open-ended") : profile;
}

} // namespace riband::ui
