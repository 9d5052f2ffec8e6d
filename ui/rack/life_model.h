#pragma once

#include "core/store/ledger.h"

#include <QAbstractTableModel>

#include <vector>

namespace riband::ui {

/// The life of a piece: what came and went, oldest first, and what was there after it.
class LifeModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { DayColumn, ActColumn, ChangeColumn, AfterColumn, WhereColumn, ColumnCount };
    explicit LifeModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    void setLife(store::PieceId piece, Unit unit, const std::vector<store::RecordedMovement>& life);
    void clear();

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        Date day;
        store::Act act;
        std::int64_t change, after;
        QString where; ///< "sold 90 mm, trim 2.5 mm"
        QString note;
    };
    std::vector<Row> rows_;
    Unit unit_ = Unit::Micrometre;
};

} // namespace riband::ui
