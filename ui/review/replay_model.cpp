#include "ui/review/replay_model.h"

#include "ui/look/look.h"

#include <QColor>
#include <QLocale>

#include <cmath>

namespace riband::ui {

namespace {

struct Line {
    const char* name;
    shop::Estimate shop::ReplayFigures::*figure;
    double times;
    int places;
    int good; ///< 1: more is better, -1: less is
};
constexpr Line lines[] = {
    {QT_TRANSLATE_NOOP("riband::ui::ReplayModel", "Yield: sold of what was used up, %"),
     &shop::ReplayFigures::yield, 100, 2, 1},
    {QT_TRANSLATE_NOOP("riband::ui::ReplayModel", "Sleeves opened"), &shop::ReplayFigures::sleeves, 1, 1, -1},
    {QT_TRANSLATE_NOOP("riband::ui::ReplayModel", "Mountings"), &shop::ReplayFigures::mountings, 1, 0, -1},
    {QT_TRANSLATE_NOOP("riband::ui::ReplayModel", "Orders sent away"), &shop::ReplayFigures::lostOrders, 1, 1,
     -1},
    {QT_TRANSLATE_NOOP("riband::ui::ReplayModel", "Width sent away, mm"), &shop::ReplayFigures::lost, 1, 0,
     -1},
    {QT_TRANSLATE_NOOP("riband::ui::ReplayModel", "Cost of rubber"), &shop::ReplayFigures::rubber, 1, 2, -1},
    {QT_TRANSLATE_NOOP("riband::ui::ReplayModel", "Whole sleeves held"), &shop::ReplayFigures::stock, 1, 1,
     -1},
};

QString number(double value, int places) { return QLocale().toString(value, 'f', places); }

int verdictOf(const shop::Estimate& difference, int good) {
    if (std::abs(difference.mean) <= difference.doubt + 1e-9) return 0;
    return difference.mean * good > 0 ? 1 : -1;
}

} // namespace

void ReplayModel::show(const shop::ReplayResult& result, const Currency& currency) {
    beginResetModel();
    rows_.clear();
    const shop::Alternative& now = result.alternatives.front();
    const shop::Alternative& other = result.alternatives.back();
    for (const Line& line : lines) {
        const bool money = line.figure == &shop::ReplayFigures::rubber;
        const double times = money ? std::pow(10, -currency.decimals()) : line.times;
        const shop::Estimate& difference = other.difference.*line.figure;
        const QString sign = difference.mean > 0 ? QStringLiteral("+") : QString{};
        rows_.push_back({{tr(line.name), number((now.figures.*line.figure).mean * times, line.places),
                          number((other.figures.*line.figure).mean * times, line.places),
                          QStringLiteral("%1%2 ± %3")
                              .arg(sign, number(difference.mean * times, line.places),
                                   number(difference.doubt * times, line.places))},
                         verdictOf(difference, line.good)});
    }
    endResetModel();
}

void ReplayModel::clear() {
    beginResetModel();
    rows_.clear();
    endResetModel();
}

int ReplayModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int ReplayModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant ReplayModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) return row.words[index.column()];
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(
            Qt::Alignment{index.column() == FigureColumn ? Qt::AlignLeft : Qt::AlignRight} |
            Qt::AlignVCenter);
    if (role == Qt::ForegroundRole && index.column() == DifferenceColumn && row.verdict != 0)
        return row.verdict > 0 ? Look::current().cool : Look::current().warm;
    return {};
}

QVariant ReplayModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment{section == FigureColumn ? Qt::AlignLeft : Qt::AlignRight} |
                                   Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case FigureColumn:
        return tr("A year");
    case NowColumn:
        return tr("As it is");
    case OtherColumn:
        return tr("What if");
    default:
        return tr("Difference");
    }
}

std::vector<std::vector<std::string>> ReplayModel::table() const {
    std::vector<std::vector<std::string>> table;
    for (const Row& row : rows_) {
        auto& fields = table.emplace_back();
        for (const QString& words : row.words)
            fields.push_back(words.toStdString());
    }
    return table;
}

} // namespace riband::ui
