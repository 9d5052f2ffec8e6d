#pragma once

#include "core/belt/drive/route_choices.h"
#include "ui/look/look.h"

#include <QWidget>

#include <optional>

class QPainter;

namespace riband::ui {

/// A drive from the side, to scale. Where no belt lies so, the pulleys alone are drawn, those at fault
/// marked.
struct RoutePicture {
    belt::drive::Layout layout;
    std::optional<belt::drive::Mover> mover{};
};
/// Returns the scale in pixels a millimetre; 0 if there is nothing to draw.
double paintRoute(QPainter& painter, const QRectF& area, const RoutePicture& picture, const Look& look);
/// What the picture shows, in words, for those who can't see it.
QString describe(const RoutePicture& picture);

class RouteWidget final : public QWidget {
    Q_OBJECT
public:
    explicit RouteWidget(QWidget* parent = nullptr);
    using QWidget::show;
    void show(RoutePicture picture);
    void clear();
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<RoutePicture> picture_;
};

} // namespace riband::ui
