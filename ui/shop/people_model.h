#pragma once

#include "core/store/people.h"

#include <QAbstractTableModel>

#include <vector>

namespace riband::ui {

/// The people of the shop, who left last.
class PeopleModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { InitialsColumn, NameColumn, RoleColumn, StateColumn, ColumnCount };
    using QAbstractTableModel::QAbstractTableModel;
    void setPeople(std::vector<store::Person> people);
    const store::Person& person(int row) const { return rows_[static_cast<std::size_t>(row)]; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<store::Person> rows_;
};

} // namespace riband::ui
