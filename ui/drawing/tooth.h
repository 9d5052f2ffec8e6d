#pragma once

#include "core/belt/tables.h"
#include "ui/look/look.h"

#include <QPainterPath>
#include <QWidget>

class QPainter;

namespace riband::ui {

/// The outline of `pitches` teeth (or ribs) of a profile with the body behind them, in millimetres, true to
/// the tables; teeth point down, the back is y < 0. Double-sided belts have teeth on both sides.
QPainterPath toothOutline(const belt::Profile& profile, int pitches);
/// Paints it as large as `area` allows; returns the scale in pixels a millimetre.
double paintTeeth(QPainter& painter, const QRectF& area, const belt::Profile& profile, int pitches,
                  const Look& look);

class ToothWidget final : public QWidget {
    Q_OBJECT
public:
    explicit ToothWidget(QWidget* parent = nullptr);
    void show(const belt::Profile* profile); ///< nullptr: nothing
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const belt::Profile* profile_ = nullptr;
};

} // namespace riband::ui
