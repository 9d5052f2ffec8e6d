#include "ui/review/replay_model.h"

#include "ui/look/look.h"
#include "ui/words/replay_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"

#include <QColor>

#include <string_view>

namespace riband::ui {

namespace {

/// In the text form of files.
std::string field(double value, int places) { return QString::number(value, 'f', places).toStdString(); }

bool isWords(int column) {
    return column == ReplayModel::FigureColumn || column == ReplayModel::VerdictColumn;
}

} // namespace

void ReplayModel::show(const shop::ReplayResult& result, const Currency& currency) {
    beginResetModel();
    rows_.clear();
    const shop::Alternative& now = result.alternatives.front();
    const shop::Alternative& other = result.alternatives.back();
    for (const ReplayLine& line : replayLines()) {
        const double times = timesOf(line, currency);
        const shop::Estimate& difference = other.difference.*line.figure;
        const double before = (now.figures.*line.figure).mean * times;
        const double after = (other.figures.*line.figure).mean * times;
        const QString words = tr("%1%2 ± %3", "plus sign, difference, doubt")
                                  .arg(difference.mean > 0 ? QStringLiteral("+") : QString{},
                                       shownNumber(difference.mean * times, line.places),
                                       shownNumber(difference.doubt * times, line.places));
        rows_.push_back({{Words::tr(line.head), shownNumber(before, line.places),
                          shownNumber(after, line.places), words, sayVerdict(line, difference)},
                         {line.name, field(before, line.places), field(after, line.places),
                          field(difference.mean * times, line.places),
                          field(difference.doubt * times, line.places), verdictWord(line, difference)},
                         std::string_view{verdictWord(line, difference)} == "better"  ? 1
                         : std::string_view{verdictWord(line, difference)} == "worse" ? -1
                                                                                      : 0});
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
        return QVariant::fromValue(Qt::Alignment{isWords(index.column()) ? Qt::AlignLeft : Qt::AlignRight} |
                                   Qt::AlignVCenter);
    if (role == Qt::ForegroundRole && index.column() >= DifferenceColumn && row.verdict != 0)
        return row.verdict > 0 ? Look::current().cool : Look::current().warm;
    return {};
}

QVariant ReplayModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment{isWords(section) ? Qt::AlignLeft : Qt::AlignRight} |
                                   Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case FigureColumn:
        return tr("A year");
    case NowColumn:
        return tr("As it is");
    case OtherColumn:
        return tr("What if");
    case DifferenceColumn:
        return tr("Difference");
    default:
        return tr("Verdict");
    }
}

shop::ReportTable ReplayModel::table() const {
    shop::ReportTable table{{"figure", "as_it_is", "what_if", "difference", "doubt", "verdict"}, {}};
    for (const Row& row : rows_)
        table.rows.push_back(row.fields);
    return table;
}

} // namespace riband::ui
