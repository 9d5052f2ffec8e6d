#pragma once

#include "core/shop/whose.h"

#include <QAbstractTableModel>

#include <vector>

namespace riband::ui {

/// Where the blade stands for each belt: the display zeroed at every belt, and not.
class StopsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { NumberColumn, EachColumn, CumulativeColumn, ForColumn, ColumnCount };
    explicit StopsModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    void setMounting(const shop::BenchMounting& mounting, const shop::MountingFor& whose);
    void clear();

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        Extent each, cumulative;
        QString whom;
    };
    std::vector<Row> rows_;
};

} // namespace riband::ui
