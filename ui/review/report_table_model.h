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
    bool isFigure(int column) const; ///< no name, word or day
    /// What the row is of: its group, belt, order, in words.
    QString nameOf(int row) const;
    /// A figure in its file form ("-30.5") as people here write it.
    static QString localFigure(const std::string& field);
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    std::string kindOf(int row) const;
    static bool namesGroup(const std::string& column, const std::string& kind);
    shop::ReportTable table_;
};

} // namespace riband::ui
