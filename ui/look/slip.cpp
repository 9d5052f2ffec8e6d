#include "ui/look/slip.h"

#include "ui/look/look.h"

#include <QPainter>

namespace riband::ui {
namespace {

constexpr double tooth = 12; ///< width of one tear, pixels
constexpr double depth = 6;

QPolygonF tornSheet(const QRectF& r) {
    QPolygonF sheet{{r.bottomLeft(), QPointF{r.left(), r.top() + depth}}};
    const int tears = std::max(1, qRound(r.width() / tooth));
    const double wide = r.width() / tears;
    for (int i = 0; i < tears; ++i) {
        sheet << QPointF{r.left() + (i + .5) * wide, r.top()};
        sheet << QPointF{r.left() + (i + 1) * wide, r.top() + depth};
    }
    sheet << r.bottomRight();
    return sheet;
}

} // namespace

Slip::Slip(QWidget* parent) : QFrame{parent} { setContentsMargins(20, 24, 20, 20); }

void Slip::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(Look::current().sunk);
    painter.drawPolygon(tornSheet(QRectF{rect()}));
}

} // namespace riband::ui
