#include "ui/which/card_outline.h"

#include "ui/look/look.h"
#include "ui/which/screen_scale.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace riband::ui {

namespace {
constexpr double inset = 12; ///< pixels left and above: the card is laid against these two lines
constexpr double coarse = 5, fine = .5;
} // namespace

CardOutline::CardOutline(QWidget* parent) : QWidget{parent} {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Outline of a bank card"));
    setProperty("takesKeys", true);
}

void CardOutline::setScale(double pixelsPerMillimetre) {
    scale_ = std::clamp(pixelsPerMillimetre, screenScale::least, screenScale::most);
    setAccessibleDescription(tr("%1 pixels a millimetre").arg(scale_, 0, 'f', 3));
    update();
}

void CardOutline::widen(double pixels) { setScale(scale_ + pixels / screenScale::cardWidth); }

QSize CardOutline::sizeHint() const { return {760, 420}; }

void CardOutline::paintEvent(QPaintEvent*) {
    const Look& look = Look::current();
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF card{inset, inset, screenScale::cardWidth * scale_, screenScale::cardHeight * scale_};
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.rest);
    const double corner = screenScale::cardCorner * scale_;
    painter.drawRoundedRect(card, corner, corner);
    painter.setPen(QPen{look.cool, 1});
    for (const double x : {card.left(), card.right()})
        painter.drawLine(QPointF{x, 0}, QPointF{x, card.bottom() + inset});
    painter.setPen(look.ink2);
    painter.setFont(Look::font(TextSize::Text));
    painter.drawText(card, Qt::AlignCenter, tr("Lay a bank card here"));
    if (!hasFocus()) return;
    painter.setPen(QPen{look.cool, 2});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

void CardOutline::keyPressEvent(QKeyEvent* event) {
    const double by = event->modifiers() & Qt::ShiftModifier     ? fine
                      : event->modifiers() & Qt::ControlModifier ? coarse
                                                                 : 1;
    if (event->key() == Qt::Key_Right)
        widen(by);
    else if (event->key() == Qt::Key_Left)
        widen(-by);
    else
        QWidget::keyPressEvent(event);
}

} // namespace riband::ui
