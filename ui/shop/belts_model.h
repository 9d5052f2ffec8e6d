#pragma once

#include "core/store/catalogue.h"

#include <QAbstractTableModel>

#include <vector>

namespace riband::ui {

/// The shop's belts with what they cost. Keeps the rows it was given.
class BeltsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { BeltColumn, PriceColumn, SleeveColumn, DeliveryColumn, ListedColumn, ColumnCount };
    explicit BeltsModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    void setBelts(std::vector<store::StockedBelt> belts, const Currency& currency);
    const store::StockedBelt& belt(int row) const { return rows_[static_cast<std::size_t>(row)]; }
    void change(int row, const store::StockedBelt& belt);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<store::StockedBelt> rows_;
    Currency currency_{"EUR", 2};
};

/// "10, 15, 20": widths that the shop usually sells, narrow first. Nothing if it is no such list.
std::optional<std::vector<Extent>> readListed(const std::string& typed, Unit unit);
QString shownListed(const std::vector<Extent>& listed);

} // namespace riband::ui
