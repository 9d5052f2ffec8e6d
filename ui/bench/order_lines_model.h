#pragma once

#include "core/store/orders.h"
#include "core/store/settings.h"

#include <QAbstractTableModel>

#include <vector>

namespace riband::ui {

/// The lines of a booked order. Keeps the rows it was given.
class OrderLinesModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { BeltColumn, WidthColumn, OrderedColumn, CutColumn, AmountColumn, ColumnCount };
    explicit OrderLinesModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    /// `designations`: one a line.
    void setOrder(const store::Order& order, std::vector<std::string> designations, const Currency& currency);
    const store::OrderLine& line(int row) const { return lines_[static_cast<std::size_t>(row)]; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<store::OrderLine> lines_;
    std::vector<std::string> designations_;
    Currency currency_{"EUR", 2};
};

} // namespace riband::ui
