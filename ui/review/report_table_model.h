#pragma once

#include "core/shop/reports/table.h"

#include <QAbstractTableModel>

namespace riband::ui {

/// A report's table on the screen: its columns in words, figures right.
class ReportTableModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    using QAbstractTableModel::QAbstractTableModel;
    void setTable(shop::ReportTable table);
    const shop::ReportTable& table() const { return table_; }
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    bool isFigure(int column) const;
    std::string kindOf(int row) const;
    shop::ReportTable table_;
};

} // namespace riband::ui
