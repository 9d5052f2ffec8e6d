#pragma once

#include "core/shop/receive.h"

#include <QAbstractTableModel>

#include <vector>

namespace riband::ui {

/// The lines of a delivery that is being entered, with what each sleeve will cost once freight is spread.
class GoodsLinesModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { BeltColumn, CountColumn, WidthColumn, LabelColumn, CostColumn, PlaceColumn, ColumnCount };
    explicit GoodsLinesModel(Currency currency, QObject* parent = nullptr)
        : QAbstractTableModel{parent}, currency_{currency} {}
    void add(shop::Delivery line);
    void change(int row, shop::Delivery line);
    void remove(int row);
    void clear();
    void setFreight(Money freight);
    const std::vector<shop::Delivery>& lines() const { return lines_; }
    Money goods() const;     ///< what all sleeves cost without freight
    int withoutCost() const; ///< sleeves of which no cost is known

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void costsChanged();
    QString words(std::size_t row, int column) const;
    Currency currency_;
    Money freight_ = Money::minor(0);
    std::vector<shop::Delivery> lines_;
    std::vector<std::vector<Money>> shares_;
};

} // namespace riband::ui
