#pragma once

#include "core/store/orders.h"

#include <QAbstractTableModel>

#include <vector>

namespace riband::ui {

/// Orders that are not finished with: waiting, or ready to be handed over. Keeps the rows it was given.
class OrdersModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { CodeColumn, StateColumn, CustomerColumn, BeltsColumn, DueColumn, ColumnCount };
    struct Row {
        store::Order order;
        QString belts; ///< "3 × H8M 1200, 30 mm"
        bool missing;  ///< wants belts that are on no ticket
    };
    explicit OrdersModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    void setOrders(std::vector<Row> rows);
    const store::Order& order(int row) const { return rows_[static_cast<std::size_t>(row)].order; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<Row> rows_;
};

} // namespace riband::ui
