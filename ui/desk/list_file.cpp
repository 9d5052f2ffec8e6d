#include "ui/desk/list_file.h"

#include "core/measure/csv.h"

#include <QAbstractItemModel>
#include <QDir>
#include <QSaveFile>

namespace riband::ui {

namespace {

template <class Field>
std::string rowOf(const QAbstractItemModel& list, Field field) {
    std::string row;
    for (int column = 0; column < list.columnCount(); ++column) {
        if (column > 0) row += ',';
        row += csvField(field(column).toString().toStdString());
    }
    row += "\r\n";
    return row;
}

} // namespace

QString saveList(Session& session, const QAbstractItemModel& list, const QString& name) {
    std::string csv = rowOf(list, [&](int column) { return list.headerData(column, Qt::Horizontal); });
    for (int row = 0; row < list.rowCount(); ++row)
        csv += rowOf(list, [&](int column) { return list.index(row, column).data(); });
    QDir{}.mkpath(session.papersFolder());
    const QString path = QDir{session.papersFolder()}.filePath(
        QStringLiteral("%1-%2.csv").arg(name, QString::fromStdString(printDate(session.today()))));
    QSaveFile file{path};
    if (!file.open(QIODevice::WriteOnly) || file.write(csv.data(), static_cast<qint64>(csv.size())) < 0 ||
        !file.commit())
        throw store::StoreError{store::StoreError::Kind::ReadOnly, path.toStdString(), "list not written"};
    return QDir::toNativeSeparators(path);
}

} // namespace riband::ui
