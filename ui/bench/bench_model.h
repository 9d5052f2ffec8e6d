#pragma once

#include "core/shop/queries.h"
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
        ShaftRole,               ///< the shaft's name where it (or the cutter) changes from the row before
    };
    explicit BenchModel(QObject* parent = nullptr) : QAbstractListModel{parent} {}
    /// `many`: the shop has several cutters, so that a shaft is named with its own.
    void setMountings(std::vector<shop::BenchMounting> mountings, bool many);
    const shop::BenchMounting& mounting(int row) const { return rows_[static_cast<std::size_t>(row)]; }
    int rowOf(store::MountingId mounting) const; ///< -1 if it waits no more
    /// What took the place of a mounting that waits no more: of the same piece and customers' lines, else of
    /// these lines, this order, this piece; else -1.
    int rowAfter(const shop::BenchMounting& gone) const;
    int rowOfTicket(const std::string& code) const; ///< its first mounting; -1

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    QString shaftOf(std::size_t row) const;
    std::vector<shop::BenchMounting> rows_;
    bool many_ = false;
};

/// "3 × 30 mm, 1 × 25 mm to the shelf"
QString shownCuts(const shop::BenchMounting& mounting);

} // namespace riband::ui
