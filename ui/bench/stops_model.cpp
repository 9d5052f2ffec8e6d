#include "ui/bench/stops_model.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

/// Figures stand right, under their heading.
QVariant alignmentOf(int column) {
    const bool words = column == StopsModel::ForColumn;
    return QVariant::fromValue(Qt::Alignment{words ? Qt::AlignLeft : Qt::AlignRight} | Qt::AlignVCenter);
}

/// The order; where there are several whose it is besides, since the belts part at the cutter.
QString whoFor(const shop::CutFor& cut, bool joint) {
    if (cut.order.empty()) return StopsModel::tr("the shelf");
    return joint && !cut.customer.empty()
               ? StopsModel::tr("%1 · %2", "order, customer").arg(text(cut.order), text(cut.customer))
               : text(cut.order);
}

} // namespace

void StopsModel::setMounting(const shop::BenchMounting& mounting, const shop::MountingFor& whose) {
    const bool joint = whose.isJoint();
    beginResetModel();
    rows_.clear();
    const auto& cuts = mounting.mounting.cuts;
    for (std::size_t cut = 0; cut < cuts.size(); ++cut)
        for (std::int64_t i = 0; i < cuts[cut].count && rows_.size() < mounting.stops.size(); ++i)
            rows_.push_back({mounting.stops[rows_.size()], mounting.cumulative[rows_.size()],
                             whoFor(whose.cuts[cut], joint)});
    endResetModel();
}

void StopsModel::clear() {
    beginResetModel();
    rows_.clear();
    endResetModel();
}

int StopsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int StopsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant StopsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    if (role == Qt::TextAlignmentRole) return alignmentOf(index.column());
    if (role != Qt::DisplayRole && (role != Qt::ToolTipRole || index.column() != ForColumn)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
    case NumberColumn:
        return index.row() + 1;
    case EachColumn:
        return shownNumber(row.each);
    case CumulativeColumn:
        return shownNumber(row.cumulative);
    default:
        return row.whom;
    }
}

QVariant StopsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return alignmentOf(section);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case NumberColumn:
        return tr("Belt");
    case EachColumn:
        return tr("Zeroed each time");
    case CumulativeColumn:
        return tr("Zeroed once");
    default:
        return tr("For");
    }
}

} // namespace riband::ui
