#pragma once

#include "ui/drive/answer.h"

#include <QAbstractTableModel>

namespace riband::ui {

/// The pulleys of a layout as they are typed. An empty one always waits at the end; nothing is read here.
class PulleysModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { XColumn, YColumn, SizeColumn, BackColumn, SetColumn, ColumnCount };
    explicit PulleysModel(QObject* parent = nullptr) : QAbstractTableModel{parent}, rows_(1) {}
    const std::vector<ManyQuestion::Row>& rows() const { return rows_; }
    std::optional<std::size_t> mover() const { return mover_; }
    void setRows(std::vector<ManyQuestion::Row> rows);
    void removeRow(int row);
    /// One place towards the front (-1) or the end (+1) of the order; false at its ends.
    bool moveRow(int row, int by);
    /// Its cells are shown as wrong; -1: none.
    void mark(int row);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

signals:
    void edited();

private:
    bool isLast(int row) const { return row + 1 == static_cast<int>(rows_.size()); }
    void check(const QModelIndex& index, bool on);
    std::vector<ManyQuestion::Row> rows_;
    std::optional<std::size_t> mover_;
    int marked_ = -1;
};

} // namespace riband::ui
