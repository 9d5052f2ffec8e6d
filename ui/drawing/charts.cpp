#include "ui/drawing/charts.h"

#include <QPaintEvent>
#include <QPainter>

namespace riband::ui {

ChartWidget::ChartWidget(const QString& name, QWidget* parent) : QWidget{parent} {
    setAccessibleName(name);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void ChartWidget::show(Paint paint, const QString& words, int leastHeight) {
    paint_ = std::move(paint);
    setAccessibleDescription(words);
    setMinimumHeight(leastHeight);
    update();
}

void ChartWidget::paintEvent(QPaintEvent* event) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRegion(event->region());
    if (paint_) paint_(painter, rect(), Look::current());
}

} // namespace riband::ui
