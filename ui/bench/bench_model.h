#pragma once

#include "core/shop/whose.h"
#include "ui/drawing/band.h"

#include <QAbstractListModel>

#include <vector>

namespace riband::ui {

/// The mountings that wait at the cutter, in the order that changes shafts least. Keeps the rows it was
/// given.
class BenchModel final : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role {
        BeltRole = Qt::UserRole, ///< "H8M 1200"
        CutsRole,                ///< "3 × 30 mm"
        PieceRole,               ///< "7K2-M · B3-2"
        OrderRole,               ///< "T4K-9 · N7P-2 · Mill Lane Bakery"
        DueRole,                 ///< "by 16:00"; "" where nobody said
        ShaftRole,               ///< the shaft's name where it (or the cutter) changes from the row before
    };
    explicit BenchModel(QObject* parent = nullptr) : QAbstractListModel{parent} {}
    /// `whose`: one a mounting; `many`: the shop has several cutters, so that a shaft is named with its own.
    void setMountings(std::vector<shop::BenchMounting> mountings, std::vector<shop::MountingFor> whose,
                      bool many, Date today);
    const shop::BenchMounting& mounting(int row) const { return rows_[static_cast<std::size_t>(row)]; }
    const shop::MountingFor& whose(int row) const { return whose_[static_cast<std::size_t>(row)]; }
    int rowOf(store::MountingId mounting) const; ///< -1 if it waits no more
    /// What took the place of a mounting that waits no more: of the same piece and customers' lines, else of
    /// these lines, this order, this piece; else -1.
    int rowAfter(const shop::BenchMounting& gone) const;
    /// The first mounting of a ticket, an order or a piece with this code, but the one at `now` if it is of
    /// it as well; -1.
    int rowOfCode(const std::string& code, int now) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    QString shaftOf(std::size_t row) const;
    QString inOneLine(const QModelIndex& index) const;
    bool isOf(std::size_t row, const std::string& code) const;
    std::vector<shop::BenchMounting> rows_;
    std::vector<shop::MountingFor> whose_;
    bool many_ = false;
    Date today_{};
};

/// "3 × 30 mm, 1 × 25 mm to the shelf"
QString shownCuts(const shop::BenchMounting& mounting);

} // namespace riband::ui
