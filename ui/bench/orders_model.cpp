#include "ui/bench/orders_model.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

void OrdersModel::setOrders(std::vector<Row> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

int OrdersModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int OrdersModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant OrdersModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || role != Qt::DisplayRole) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
    case CodeColumn:
        return text(row.order.code);
    case StateColumn:
        return row.missing ? tr("%1, belts missing").arg(say(row.order.state)) : say(row.order.state);
    case CustomerColumn:
        return row.order.customerName.empty() ? tr("walk-in") : text(row.order.customerName);
    case BeltsColumn:
        return row.belts;
    default:
        return row.order.due ? shown(*row.order.due) : QString{};
    }
}

QVariant OrdersModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case CodeColumn:
        return tr("Order");
    case StateColumn:
        return tr("State");
    case CustomerColumn:
        return tr("Customer");
    case BeltsColumn:
        return tr("Belts");
    default:
        return tr("Wanted by");
    }
}

} // namespace riband::ui
