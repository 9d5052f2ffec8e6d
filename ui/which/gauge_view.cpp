#include "ui/which/gauge_view.h"

#include "ui/papers/gauge_card.h"

#include <QPaintEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace riband::ui {

namespace {
constexpr double margin = 12; ///< pixels
constexpr double between = 2; ///< mm
} // namespace

GaugeView::GaugeView(QWidget* parent) : QWidget{parent} {
    setAccessibleName(tr("True teeth with pitch rules"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void GaugeView::show(const std::vector<const belt::Profile*>& profiles, double pixelsPerMillimetre) {
    profiles_ = profiles;
    scale_ = pixelsPerMillimetre;
    layOut();
}

/// As many pitches as the widget is wide for.
void GaugeView::layOut() {
    rows_.clear();
    double y = margin;
    const double room = (width() - 2 * margin) / scale_;
    for (const belt::Profile* profile : profiles_) {
        rows_.push_back({profile, gaugePitches(*profile, room), y});
        y += (gaugeRowHeight(*profile) + between) * scale_;
    }
    height_ = y + margin;
    setMinimumHeight(static_cast<int>(std::ceil(height_)));
    updateGeometry();
    update();
}

double GaugeView::topOf(const std::string& profile) const {
    const auto at = std::find_if(rows_.begin(), rows_.end(),
                                 [&](const Row& row) { return row.profile->name == profile; });
    return at == rows_.end() ? -1 : at->top;
}

QSize GaugeView::sizeHint() const { return {600, static_cast<int>(std::ceil(height_))}; }

void GaugeView::paintEvent(QPaintEvent* event) {
    QPainter painter{this};
    painter.fillRect(event->rect(), Qt::white);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const Row& row : rows_) {
        const double bottom = row.top + gaugeRowHeight(*row.profile) * scale_;
        if (bottom < event->rect().top() || row.top > event->rect().bottom()) continue;
        paintGaugeRow(painter, {margin, row.top}, *row.profile, row.pitches, scale_);
    }
}

void GaugeView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) layOut();
}

} // namespace riband::ui
