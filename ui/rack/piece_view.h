#pragma once

#include "core/shop/piece_worth.h"
#include "core/shop/queries.h"

#include <QFrame>

class QLabel;
class QTableView;

namespace riband::ui {

class BandWidget;
struct PieceUpkeep;
class LifeModel;

/// One piece: to scale, where it is from, and its life.
class PieceView final : public QFrame {
    Q_OBJECT
public:
    explicit PieceView(QWidget* parent = nullptr);
    /// `parent`: code of the piece that it was cut from; "" for none. `worth`: nothing without a worth table.
    void show(const shop::RackRow& row, const std::string& parent,
              const std::optional<shop::PieceWorth>& worth, const std::vector<store::RecordedMovement>& life,
              const PieceUpkeep& upkeep, Date today);
    /// The row of its life that is chosen, else the last; -1 if it has none.
    int chosenRow() const;
    const LifeModel& life() const { return *life_; }
    void clear();

private:
    void buildView();
    QLabel *title_, *belt_, *facts_, *worth_;
    BandWidget* band_;
    LifeModel* life_;
    QTableView* lifeView_;
};

} // namespace riband::ui
