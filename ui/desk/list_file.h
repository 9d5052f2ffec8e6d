#pragma once

#include "ui/desk/session.h"

#include <QStringList>

class QAbstractItemModel;

namespace riband::ui {

/// A list as it is shown.
struct ListRows {
    QString name; ///< of its file: "rack"
    QStringList heads;
    std::vector<QStringList> rows{};
};

/// Writes what a list shows, in its order, as CSV (RFC 4180, UTF-8) into the papers folder:
/// "rack-2026-03-02.csv", the second of that day "rack-2026-03-02-2.csv". Figures are plain numbers with a
/// point, their unit stands in the head; a column in mm and ribs becomes two. Gives the file as one would
/// name it to a person. Throws StoreError (ReadOnly) if it can't be written.
QString saveList(Session& session, const ListRows& list);
/// The same of what a model shows.
QString saveList(Session& session, const QAbstractItemModel& list, const QString& name);

} // namespace riband::ui
