#pragma once

#include "core/store/ledger.h"
#include "core/store/upkeep.h"

#include <QAbstractTableModel>

#include <map>
#include <optional>
#include <vector>

namespace riband::ui {

/// What happened to a piece besides its width, and who the persons are.
struct PieceUpkeep {
    std::vector<store::Relocation> relocations;
    std::vector<store::Inspection> inspections;
    std::map<store::PersonId, std::string> people;     ///< initials
    std::map<store::MovementId, std::int64_t> grams{}; ///< that were weighed at a scrap
    std::map<store::LineId, std::string> orders{};     ///< code of the order of a line
};

/// The life of a piece: what came and went, oldest first, what was there after it, where it was put and who
/// did it.
class LifeModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { DayColumn, ActColumn, ChangeColumn, AfterColumn, WhereColumn, ColumnCount };
    explicit LifeModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    void setLife(store::PieceId piece, Unit unit, const std::vector<store::RecordedMovement>& life,
                 const PieceUpkeep& upkeep = {});
    /// What an undo of this row would undo: a movement, the last move to another place, or the last
    /// inspection.
    struct Act {
        std::optional<store::MovementId> movement;
        bool move = false;
        bool inspection = false;
    };
    Act actAt(int row) const { return rows_[static_cast<std::size_t>(row)].undoes; }
    void clear();

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        Moment at;
        QString act;
        std::optional<std::int64_t> change; ///< none: no width moved
        std::int64_t after;
        QString where; ///< "sold 90 mm, trim 2.5 mm"
        QString note;
        Act undoes;
    };
    void addUpkeep(const PieceUpkeep& upkeep);
    void add(const store::RecordedMovement& recorded, store::PieceId piece, const PieceUpkeep& upkeep);
    std::vector<Row> rows_;
    Unit unit_ = Unit::Micrometre;
};

} // namespace riband::ui
