#pragma once

#include "core/shop/buying/what_if.h"
#include "core/shop/reports/table.h"

#include <QAbstractTableModel>

#include <optional>

namespace riband::ui {

/// What came of a replay: a row a figure, as it is beside what would be, the difference with its doubt, and
/// what that means.
class ReplayModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { FigureColumn, NowColumn, OtherColumn, DifferenceColumn, VerdictColumn, ColumnCount };
    using QAbstractTableModel::QAbstractTableModel;
    void show(const shop::ReplayResult& result, const Currency& currency);
    void clear();

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    shop::ReportTable table() const; ///< in the form of files

private:
    struct Row {
        QString words[ColumnCount];
        std::vector<std::string> fields;
        int verdict; ///< 1 better beyond doubt, -1 worse, 0 can't be told
    };
    std::vector<Row> rows_;
};

} // namespace riband::ui
