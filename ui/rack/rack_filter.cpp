#include "ui/rack/rack_filter.h"

#include "ui/rack/rack_model.h"

namespace riband::ui {

RackFilter::RackFilter(RackModel* model, QObject* parent) : QSortFilterProxyModel{parent}, model_{model} {
    setSourceModel(model);
    setSortRole(RackModel::SortRole);
    // Worths come in slices: rows that went to their place with each would cost more than all the rest.
    setDynamicSortFilter(false);
}

void RackFilter::setFound(const std::optional<std::vector<store::PieceId>>& pieces) {
    if (!pieces && !found_) return;
    found_.reset();
    if (pieces) {
        found_.emplace();
        found_->reserve(pieces->size());
        for (const store::PieceId piece : *pieces)
            found_->insert(piece.value());
    }
    // One layout change: row by row, 20 000 pieces would take a second to come and go.
    invalidate();
}

void RackFilter::sortWorths() {
    if (sortColumn() == RackModel::WorthColumn || sortColumn() == RackModel::KeptColumn) invalidate();
}

bool RackFilter::filterAcceptsRow(int row, const QModelIndex&) const {
    return !found_ || found_->contains(model_->row(row).piece.id.value());
}

bool RackFilter::lessThan(const QModelIndex& left, const QModelIndex& right) const {
    if (left.column() == RackModel::WorthColumn) { // what has no worth stands last, whichever way round
        const bool known = model_->worth(left.row()).worth.has_value();
        if (known != model_->worth(right.row()).worth.has_value())
            return sortOrder() == Qt::AscendingOrder ? known : !known;
    }
    return model_->less(left.row(), right.row(), left.column());
}

} // namespace riband::ui
