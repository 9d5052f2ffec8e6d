#pragma once

#include <QProxyStyle>

namespace riband::ui {

/// Fusion with our own check boxes, round buttons and arrows, drawn in the colours of the present look: a
/// style sheet alone could only show pictures there.
class PressStyle final : public QProxyStyle {
    Q_OBJECT
public:
    PressStyle();
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void polish(QWidget* widget) override;
    using QProxyStyle::polish;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* data) const override;
};

/// The box of a check box of the look, as KeyButton shows it too.
void paintCheckBox(QPainter& painter, const QRectF& box, bool checked, bool enabled);

} // namespace riband::ui
