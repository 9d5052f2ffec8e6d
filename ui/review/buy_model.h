#pragma once

#include "core/shop/buying/purchase.h"

#include <QAbstractTableModel>

#include <memory>

namespace riband::ui {

/// A purchase list with what it was reckoned from.
struct Purchase {
    shop::BuyingOutlook outlook;
    shop::PurchaseList list;
};

/// The lines of a purchase list that say something: what is bought first, then what the budget leaves out,
/// then what should not be kept.
class BuyModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        BeltColumn,
        VerdictColumn,
        SleevesColumn,
        WidthColumn,
        CostColumn,
        HereColumn,
        RiskColumn,
        ColumnCount
    };
    using QAbstractTableModel::QAbstractTableModel;
    void show(std::shared_ptr<const Purchase> purchase, bool everyBelt);
    const shop::PurchaseLine& line(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString words(const shop::PurchaseLine& line, int column) const;
    std::shared_ptr<const Purchase> purchase_;
    std::vector<std::size_t> rows_; ///< into the list
};

} // namespace riband::ui
