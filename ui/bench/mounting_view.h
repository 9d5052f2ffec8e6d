#pragma once

#include "core/shop/whose.h"
#include "core/store/settings.h"
#include "ui/drawing/band.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QTableView;
class QVBoxLayout;

namespace riband::ui {

class StopsModel;

/// All that the person at the cutter needs for one mounting: the piece to scale, set-up, stops, warnings.
class MountingView final : public QWidget {
    Q_OBJECT
public:
    explicit MountingView(QWidget* parent = nullptr);
    void show(const shop::BenchMounting& mounting, const shop::MountingFor& whose, Date today);
    void clear();

private:
    void buildView();
    QWidget* buildSteps();
    QWidget* buildStops();
    QWidget* buildCautions();
    static QString whoseWords(const shop::BenchMounting& mounting, const shop::MountingFor& whose,
                              Date today);
    void showWarnings(const shop::BenchMounting& mounting);
    QWidget* whole_;
    QLabel *headline_, *piece_, *whose_, *cuts_, *tolerance_, *nothing_;
    BandWidget* band_;
    QVBoxLayout* warnings_;
    QGridLayout* steps_;
    StopsModel* stops_;
    QTableView* stopsView_;
};

} // namespace riband::ui
