#pragma once

#include "core/shop/piece_worth.h"
#include "core/shop/queries.h"

#include <QAbstractTableModel>

#include <map>
#include <optional>
#include <vector>

namespace riband::ui {

/// Pieces as rows. Keeps the rows it was given; asks nobody for more and opens no dialog.
class RackModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        CodeColumn,
        BeltColumn,
        WidthColumn,
        WorthColumn,
        KeptColumn,
        ReservedColumn,
        KindColumn,
        PlaceColumn,
        AgeColumn,
        ColumnCount
    };
    enum Role { SortRole = Qt::UserRole };
    explicit RackModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    /// Whether a piece's worth was looked for, and what came of it.
    struct Worth {
        bool known = false;
        std::optional<shop::PieceWorth> worth{}; ///< none without a worth table
    };
    /// What is known of the worth of a piece stays as long as its width does.
    void setPieces(std::vector<shop::RackRow> pieces, Date today);
    /// A piece that is gone from the rack stands below all others: it was asked for by its code. Nothing:
    /// none does.
    void setGone(std::optional<shop::RackRow> piece, Date today);
    bool hasGone() const { return gone_; }
    void setWorths(const std::vector<std::pair<store::PieceId, std::optional<shop::PieceWorth>>>& worths);
    const Worth& worth(int number) const { return rows_[static_cast<std::size_t>(number)].worth; }
    const shop::RackRow& row(int number) const { return rows_[static_cast<std::size_t>(number)].shown; }
    int rowOf(store::PieceId piece) const; ///< -1 if it is gone

    /// By SortRole, without the detour over variants.
    bool less(int a, int b, int column) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        shop::RackRow shown;
        int beltRank; ///< where its belt stands among all, by profile and length
        int days;
        Worth worth;
    };
    QString words(const Row& row, int column) const;
    QVariant sortKey(const Row& row, int column) const;
    std::vector<Row> rows_;
    std::map<store::PieceId, int> byPiece_;
    bool gone_ = false; ///< the last row is
};

} // namespace riband::ui
