#pragma once

#include "ui/rack/ageing_rows.h"

#include <QAbstractTableModel>

#include <vector>

namespace riband::ui {

/// What ages out and what costs more than it is good for, one list: the aged first, by their day.
class AgeingModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        CodeColumn,
        BeltColumn,
        WidthColumn,
        PlaceColumn,
        DayColumn,
        CostColumn,
        WorthColumn,
        SellsColumn,
        AdviceColumn,
        ColumnCount
    };
    explicit AgeingModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    /// Costs in this currency; without one they are not for who looks.
    void setCurrency(std::optional<Currency> currency) { currency_ = std::move(currency); }
    void show(const AgeingRows& rows, Date today);
    const store::StockPiece& piece(int row) const { return rows_[static_cast<std::size_t>(row)].piece; }
    /// What it should become, if it is in the list since it is not worth its place.
    const std::optional<shop::Burden>& burden(int row) const {
        return rows_[static_cast<std::size_t>(row)].burden;
    }
    /// It is in the list since it ages out, and may be inspected.
    bool ages(int row) const { return rows_[static_cast<std::size_t>(row)].ages; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        store::StockPiece piece;
        bool ages;
        QStringList words; ///< one a column
        std::optional<shop::Burden> burden{};
    };
    Row rowOf(const shop::AgeingPiece& aged, const QString& worth, Date today) const;
    Row rowOf(const shop::Burden& burden, const QString& worth) const;
    QString costOf(const store::StockPiece& piece) const;
    std::optional<Currency> currency_;
    std::vector<Row> rows_;
};

} // namespace riband::ui
