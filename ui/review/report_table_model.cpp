#include "ui/review/report_table_model.h"

#include "ui/words/report_words.h"
#include "ui/words/tr.h"

#include <QLocale>

#include <algorithm>
#include <array>
#include <string_view>

namespace riband::ui {

namespace {

constexpr std::array<std::string_view, 15> wordColumns{"group", "kind",  "told",       "unit",  "belt",
                                                       "name",  "pace",  "below_cost", "month", "news",
                                                       "at",    "order", "customer",   "made",  "payment"};

/// A figure in its file form ("-30.5") as people here write it.
QString localFigure(const std::string& field) {
    QString text = QString::fromStdString(field);
    if (text.startsWith(QLatin1Char('-'))) text.replace(0, 1, QStringLiteral("−"));
    return text.replace(QLatin1Char('.'), QLocale{}.decimalPoint());
}

} // namespace

void ReportTableModel::setTable(shop::ReportTable table) {
    beginResetModel();
    table_ = std::move(table);
    endResetModel();
}

bool ReportTableModel::isFigure(int column) const {
    const std::string& name = table_.columns[static_cast<std::size_t>(column)];
    return std::find(wordColumns.begin(), wordColumns.end(), name) == wordColumns.end();
}

/// Of what kind the group of a row is, where the table has groups of several.
std::string ReportTableModel::kindOf(int row) const {
    return table_.columns.front() == "kind" ? table_.rows[static_cast<std::size_t>(row)].front() : "";
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
    if (table_.columns[static_cast<std::size_t>(index.column())] == "group" && field.empty())
        return namelessGroup(kindOf(index.row()));
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
