#pragma once

#include "core/belt/tables.h"
#include "ui/look/look.h"

#include <QPainterPath>
#include <QWidget>

#include <optional>

class QPainter;

namespace riband::ui {

/// The outline of `pitches` teeth (or ribs) of a profile with the body behind them, in millimetres, true to
/// the tables; teeth point down, the land is y = 0, the back is y < 0. Double-sided belts have teeth on both
/// sides.
QPainterPath toothOutline(const belt::Profile& profile, int pitches);
/// Whether a figure of the outline is in no table (modified round teeth, ribs, a few small sizes): say so
/// beside the drawing.
bool toothIsApproximate(const belt::Profile& profile);
/// Paints it as large as `area` allows; returns the scale in pixels a millimetre.
double paintTeeth(QPainter& painter, const QRectF& area, const belt::Profile& profile, int pitches,
                  const Look& look);
/// How many pitches fill an area of this shape best: 4 to 9.
int pitchesFor(const belt::Profile& profile, const QSizeF& area);

class ToothWidget final : public QWidget {
    Q_OBJECT
public:
    explicit ToothWidget(QWidget* parent = nullptr);
    using QWidget::show;
    void show(const belt::Profile* profile); ///< copied; nullptr: nothing
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<belt::Profile> profile_;
};

} // namespace riband::ui
