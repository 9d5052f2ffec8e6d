#include "ui/review/report_table_model.h"

#include "ui/words/report_words.h"
#include "ui/words/tr.h"

#include <QLocale>

#include <algorithm>
#include <iterator>
#include <string_view>

namespace riband::ui {

namespace {

constexpr std::string_view wordColumns[] = {
    "group",          "kind",       "told",        "unit",   "belt",     "name",   "pace",    "below_cost",
    "month",          "news",       "at",          "order",  "customer", "made",   "payment", "state",
    "piece",          "place",      "received",    "batch",  "person",   "reason", "words",   "what",
    "suggested_from", "taken_from", "shelf_belts", "from_to"};
/// Their fields are somebody's own, never one of our fixed words.
constexpr std::string_view ownColumns[] = {"words", "customer", "piece", "place",
                                           "batch", "from_to",  "order"};
/// By which of its fields a row is named.
constexpr std::string_view namingColumns[] = {"group",   "belt",  "name",  "order",
                                              "payment", "state", "month", "kind"};

template <std::size_t N>
bool isOneOf(const std::string_view (&names)[N], const std::string& name) {
    return std::find(std::begin(names), std::end(names), name) != std::end(names);
}

} // namespace

QString ReportTableModel::localFigure(const std::string& field) {
    QString text = QString::fromStdString(field);
    if (text.startsWith(QLatin1Char('-'))) text.replace(0, 1, QStringLiteral("−"));
    return text.replace(QLatin1Char('.'), QLocale{}.decimalPoint());
}

void ReportTableModel::setTable(shop::ReportTable table) {
    beginResetModel();
    table_ = std::move(table);
    endResetModel();
}

bool ReportTableModel::isFigure(int column) const {
    return !isOneOf(wordColumns, table_.columns[static_cast<std::size_t>(column)]);
}

QString ReportTableModel::nameOf(int row) const {
    for (const std::string_view name : namingColumns) {
        const auto at = std::find(table_.columns.begin(), table_.columns.end(), name);
        if (at == table_.columns.end()) continue;
        const QString word = data(index(row, static_cast<int>(at - table_.columns.begin()))).toString();
        if (!word.isEmpty()) return word;
    }
    return {};
}

/// Of what kind the group of a row is, where the table has groups of several.
std::string ReportTableModel::kindOf(int row) const {
    return table_.columns.front() == "kind" ? table_.rows[static_cast<std::size_t>(row)].front() : "";
}

/// A joined table has rows that have no such field.
bool ReportTableModel::namesGroup(const std::string& column, const std::string& kind) {
    return (column == "group" && kind != "order") || (column == "name" && kind == "customer");
}

int ReportTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(table_.rows.size());
}

int ReportTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(table_.columns.size());
}

QVariant ReportTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const bool figure = isFigure(index.column());
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment{figure ? Qt::AlignRight : Qt::AlignLeft} | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    const std::string& field =
        table_.rows[static_cast<std::size_t>(index.row())][static_cast<std::size_t>(index.column())];
    if (figure) return localFigure(field);
    const std::string& name = table_.columns[static_cast<std::size_t>(index.column())];
    if (field.empty() && namesGroup(name, kindOf(index.row()))) return namelessGroup(kindOf(index.row()));
    if (isOneOf(ownColumns, name)) return QString::fromStdString(field);
    const QString word = groupWord(field);
    return index.column() == 0 && word == QString::fromStdString(field) ? columnWord(field) : word;
}

QVariant ReportTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment{isFigure(section) ? Qt::AlignRight : Qt::AlignLeft} |
                                   Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    return columnWord(table_.columns[static_cast<std::size_t>(section)]);
}

} // namespace riband::ui
