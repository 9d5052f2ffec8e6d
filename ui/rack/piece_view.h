#pragma once

#include "ui/rack/rack_model.h"

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
    /// `parent`: code of the piece that it was cut from; "" for none.
    void show(const shop::RackRow& row, const std::string& parent, const RackModel::Worth& worth,
              const std::vector<store::RecordedMovement>& life, const PieceUpkeep& upkeep, Date today);
    void showWorth(const RackModel::Worth& worth, const store::StockPiece& piece);
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
