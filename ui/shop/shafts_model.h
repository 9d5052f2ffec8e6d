#pragma once

#include "core/cutting/setup.h"

#include <QAbstractTableModel>

#include <vector>

namespace riband::ui {

/// The shafts of the cutter, to be edited in place. A figure that is none is not taken.
class ShaftsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        NameColumn,
        DrivenColumn,
        TensionColumn,
        UsableColumn,
        ClosestColumn,
        FarthestColumn,
        ColumnCount
    };
    explicit ShaftsModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    void setShafts(std::vector<cutting::Shaft> shafts);
    const std::vector<cutting::Shaft>& shafts() const { return shafts_; }
    void add();
    void remove(int row);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

signals:
    void edited();

private:
    std::vector<cutting::Shaft> shafts_;
};

} // namespace riband::ui
