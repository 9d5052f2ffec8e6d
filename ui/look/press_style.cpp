#include "ui/look/press_style.h"

#include "ui/look/look.h"

#include <QHeaderView>
#include <QPainter>
#include <QStyleOption>

namespace riband::ui {
namespace {

void paintRound(QPainter& painter, const QRectF& box, bool checked, bool enabled) {
    const Look& look = Look::current();
    const QColor edge = enabled ? look.ink2 : look.line;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{checked && enabled ? look.cool : edge, 2});
    painter.setBrush(look.card);
    painter.drawEllipse(box.adjusted(1, 1, -1, -1));
    if (!checked) return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(enabled ? look.cool : look.ink2);
    painter.drawEllipse(box.adjusted(4.5, 4.5, -4.5, -4.5));
}

void paintArrow(QPainter& painter, const QRectF& box, bool up) {
    const QPointF c = box.center();
    const double rise = up ? -2.0 : 2.0;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{Look::current().ink2, 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.drawPolyline(
        QPolygonF{{{c.x() - 4, c.y() - rise}, {c.x(), c.y() + rise}, {c.x() + 4, c.y() - rise}}});
}

} // namespace

PressStyle::PressStyle() : QProxyStyle{"Fusion"} {}

void PressStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
    const bool checked = option->state & State_On;
    const bool enabled = option->state & State_Enabled;
    const QRectF box{option->rect};
    painter->save();
    switch (element) {
    case PE_IndicatorCheckBox:
    case PE_IndicatorItemViewItemCheck:
        paintCheckBox(*painter, box, checked, enabled);
        break;
    case PE_IndicatorRadioButton:
        paintRound(*painter, box, checked, enabled);
        break;
    case PE_IndicatorArrowDown:
    case PE_IndicatorSpinDown:
        paintArrow(*painter, box, false);
        break;
    case PE_IndicatorArrowUp:
    case PE_IndicatorSpinUp:
        paintArrow(*painter, box, true);
        break;
    case PE_FrameFocusRect:
        break; // the sheet draws the focus, everywhere alike
    default:
        QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
    painter->restore();
}

void PressStyle::polish(QWidget* widget) {
    QProxyStyle::polish(widget);
    // Heads stand over their column's words; a model says otherwise for figures.
    if (auto* head = qobject_cast<QHeaderView*>(widget))
        head->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

int PressStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                          QStyleHintReturn* data) const {
    if (hint == SH_ComboBox_Popup || hint == SH_DialogButtonBox_ButtonsHaveIcons) return 0;
    return QProxyStyle::styleHint(hint, option, widget, data);
}

void paintCheckBox(QPainter& painter, const QRectF& box, bool checked, bool enabled) {
    const Look& look = Look::current();
    const QColor fill = enabled ? look.cool : look.ink2;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{checked ? fill : (enabled ? look.ink2 : look.line), 2});
    painter.setBrush(checked ? fill : look.card);
    painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), 3, 3);
    if (!checked) return;
    const double s = box.width() / 16;
    painter.setPen(QPen{look.onCool, 2 * s, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.translate(box.topLeft());
    painter.drawPolyline(QPolygonF{{{4 * s, 8.4 * s}, {7 * s, 11.2 * s}, {12 * s, 5 * s}}});
    painter.translate(-box.topLeft());
}

} // namespace riband::ui
