#include "ui/rack/rack_filter.h"

#include "ui/rack/rack_model.h"

#include <algorithm>

namespace riband::ui {

RackFilter::RackFilter(RackModel* model, QObject* parent) : QSortFilterProxyModel{parent}, model_{model} {
    setSourceModel(model);
    setSortRole(RackModel::SortRole);
    setDynamicSortFilter(true);
}

void RackFilter::setWords(const QString& typed) {
    QStringList words = typed.toLower().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    if (words == words_) return;
    words_ = std::move(words);
    // One layout change: row by row, 20 000 pieces would take a second to come and go.
    invalidate();
}

bool RackFilter::filterAcceptsRow(int row, const QModelIndex&) const {
    const QString& text = model_->searchText(row);
    return std::all_of(words_.begin(), words_.end(),
                       [&](const QString& word) { return text.contains(word); });
}

bool RackFilter::lessThan(const QModelIndex& left, const QModelIndex& right) const {
    return model_->less(left.row(), right.row(), left.column());
}

} // namespace riband::ui
