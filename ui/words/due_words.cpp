#include "ui/words/due_words.h"

#include "ui/words/words.h"

#include <QDateTime>

namespace riband::ui {

QTime endOfDay() { return {17, 0}; } // common practice, no source

QString shownDue(Moment due, Date today) {
    const auto local = QDateTime::fromMSecsSinceEpoch(due.time_since_epoch().count());
    if (local.date() == QDate{1970, 1, 1}.addDays(today.time_since_epoch().count()))
        return local.toString(QStringLiteral("H:mm"));
    return local.time() == endOfDay() ? local.toString(QStringLiteral("yyyy-MM-dd")) : shown(due);
}

} // namespace riband::ui
