#include "ui/desk/list_file.h"

#include "core/measure/csv.h"

#include <QAbstractItemModel>
#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSaveFile>

#include <algorithm>
#include <optional>

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

/// "−12.5 mm" as "-12.5" and "mm".
struct Figure {
    QString number, unit;
};

std::optional<Figure> figureOf(const QString& cell) {
    static const QRegularExpression shape{
        QStringLiteral("^([+\\-\u2212]?)(\\d+(?:[.,]\\d+)?)(?:[ \u00a0](\\D+))?$")};
    const auto read = shape.match(cell);
    if (!read.hasMatch()) return std::nullopt;
    const QString sign = read.captured(1).isEmpty() || read.captured(1) == QLatin1String("+")
                             ? QString{}
                             : QStringLiteral("-");
    return Figure{sign + read.captured(2).replace(QLatin1Char(','), QLatin1Char('.')), read.captured(3)};
}

/// One column, or one for each unit in it, if all that stands in it are figures. What is 0 needs no unit.
class FigureColumn {
public:
    void add(const QString& cell) {
        if (cell.isEmpty()) return;
        const auto figure = figureOf(cell);
        if (!figure) {
            figures_ = false;
            return;
        }
        if (figure->unit.isEmpty())
            bare_ = bare_ || figure->number != QLatin1String("0");
        else
            unitOf(figure->unit);
    }
    /// Words, or figures without a unit, of which only the decimal sign is changed.
    bool isPlain() const { return !figures_ || units_.isEmpty() || bare_; }
    const QStringList& units() const { return units_; }
    QStringList fieldsOf(const QString& cell) const {
        const auto figure = figures_ ? figureOf(cell) : std::nullopt;
        if (isPlain()) return {figure && !units_.isEmpty() ? cell : figure ? figure->number : cell};
        QStringList fields(units_.size());
        if (figure) fields[std::max<qsizetype>(0, at(figure->unit))] = figure->number;
        return fields;
    }

private:
    /// "1 rib" and "6 ribs" are one unit: that which the other begins.
    static bool same(const QString& a, const QString& b) { return a.startsWith(b) || b.startsWith(a); }
    qsizetype at(const QString& unit) const {
        for (qsizetype i = 0; i < units_.size(); ++i)
            if (!unit.isEmpty() && same(units_[i], unit)) return i;
        return -1;
    }
    void unitOf(const QString& unit) {
        const qsizetype known = at(unit);
        if (known < 0)
            units_ << unit;
        else if (unit.size() > units_[known].size())
            units_[known] = unit;
    }
    bool figures_ = true, bare_ = false;
    QStringList units_;
};

/// The same with plain numbers, their units in the heads: a spreadsheet can add them up.
ListRows withPlainFigures(const ListRows& list) {
    std::vector<FigureColumn> columns(static_cast<std::size_t>(list.heads.size()));
    for (const QStringList& row : list.rows)
        for (std::size_t i = 0; i < columns.size(); ++i)
            columns[i].add(row.value(static_cast<qsizetype>(i)));
    ListRows plain{list.name, {}, {}};
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const QString& head = list.heads[static_cast<qsizetype>(i)];
        if (columns[i].isPlain()) {
            plain.heads << head;
            continue;
        }
        for (const QString& unit : columns[i].units())
            plain.heads << QStringLiteral("%1 (%2)").arg(head, unit);
    }
    for (const QStringList& row : list.rows) {
        QStringList fields;
        for (std::size_t i = 0; i < columns.size(); ++i)
            fields << columns[i].fieldsOf(row.value(static_cast<qsizetype>(i)));
        plain.rows.push_back(fields);
    }
    return plain;
}

/// A list of the same day that was saved before stays: "rack-2026-03-02-2.csv".
QString freePath(const QDir& folder, const QString& name) {
    QString path = folder.filePath(name + QStringLiteral(".csv"));
    for (int number = 2; QFileInfo::exists(path); ++number)
        path = folder.filePath(QStringLiteral("%1-%2.csv").arg(name).arg(number));
    return path;
}

template <class Field>
QStringList fieldsOf(const QAbstractItemModel& list, Field field) {
    QStringList fields;
    for (int column = 0; column < list.columnCount(); ++column)
        fields << field(column).toString();
    return fields;
}

} // namespace

QString saveList(Session& session, const ListRows& shown) {
    const ListRows list = withPlainFigures(shown);
    std::string csv = lineOf(list.heads);
    for (const QStringList& row : list.rows)
        csv += lineOf(row);
    QDir{}.mkpath(session.papersFolder());
    const QString path =
        freePath(QDir{session.papersFolder()},
                 QStringLiteral("%1-%2").arg(list.name, QString::fromStdString(printDate(session.today()))));
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
