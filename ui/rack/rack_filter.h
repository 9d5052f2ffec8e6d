#pragma once

#include <QSortFilterProxyModel>
#include <QStringList>

namespace riband::ui {

class RackModel;

/// The pieces in which every typed word occurs, sorted by what a column means.
class RackFilter final : public QSortFilterProxyModel {
    Q_OBJECT
public:
    explicit RackFilter(RackModel* model, QObject* parent = nullptr);
    void setWords(const QString& typed);

protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

private:
    RackModel* model_;
    QStringList words_;
};

} // namespace riband::ui
