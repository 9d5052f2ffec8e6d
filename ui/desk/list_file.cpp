#include "ui/desk/list_file.h"

#include "core/measure/csv.h"

#include <QAbstractItemModel>
#include <QDir>
#include <QSaveFile>

namespace riband::ui {

namespace {

std::string lineOf(const QStringList& fields) {
    std::string line;
    for (const QString& field : fields) {
        if (&field != &fields.front()) line += ',';
        line += csvField(field.toStdString());
    }
    line += "\r\n";
    return line;
}

template <class Field>
QStringList fieldsOf(const QAbstractItemModel& list, Field field) {
    QStringList fields;
    for (int column = 0; column < list.columnCount(); ++column)
        fields << field(column).toString();
    return fields;
}

} // namespace

QString saveList(Session& session, const ListRows& list) {
    std::string csv = lineOf(list.heads);
    for (const QStringList& row : list.rows)
        csv += lineOf(row);
    QDir{}.mkpath(session.papersFolder());
    const QString path = QDir{session.papersFolder()}.filePath(
        QStringLiteral("%1-%2.csv").arg(list.name, QString::fromStdString(printDate(session.today()))));
    QSaveFile file{path};
    if (!file.open(QIODevice::WriteOnly) || file.write(csv.data(), static_cast<qint64>(csv.size())) < 0 ||
        !file.commit())
        throw store::StoreError{store::StoreError::Kind::ReadOnly, path.toStdString(), "list not written"};
    return QDir::toNativeSeparators(path);
}

QString saveList(Session& session, const QAbstractItemModel& list, const QString& name) {
    ListRows shown{name, fieldsOf(list, [&](int column) { return list.headerData(column, Qt::Horizontal); })};
    for (int row = 0; row < list.rowCount(); ++row)
        shown.rows.push_back(fieldsOf(list, [&](int column) { return list.index(row, column).data(); }));
    return saveList(session, shown);
}

} // namespace riband::ui
