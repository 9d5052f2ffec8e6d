#pragma once

#include "core/shop/batch.h"

#include <QAbstractTableModel>

#include <vector>

namespace riband::ui {

/// What could be cut together, and what that saves.
class TogetherModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        ShaftColumn,
        BeltColumn,
        OrdersColumn,
        NowColumn,
        ThenColumn,
        SavesColumn,
        WidthColumn,
        ShelfColumn,
        Columns
    };
    struct Row {
        shop::Batch batch;
        shop::Joint joint;
    };
    explicit TogetherModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    /// `many`: the shop has several cutters.
    void setRows(std::vector<Row> rows, bool many, const std::optional<Currency>& costs);
    const Row& row(int row) const { return rows_[static_cast<std::size_t>(row)]; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString shaftOf(const Row& row) const;
    std::vector<Row> rows_;
    bool many_ = false;
    std::vector<QString> saved_; ///< of each row
};

} // namespace riband::ui
