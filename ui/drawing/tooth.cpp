#include "ui/drawing/tooth.h"

#include "ui/drawing/half_tooth.h"

#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace riband::ui {
namespace {

/// How far the body reaches behind the land. Of a double-sided belt: from one land to the other.
double bodyThickness(const belt::Profile& profile, double toothHeight) {
    if (!profile.form.total) return .2 * profile.pitch.inMillimetres();
    return *profile.form.total - (profile.doubleSided ? 2 : 1) * toothHeight;
}

/// Teeth side by side, from (0, 0) to (pitches x pitch, 0).
QPainterPath rowOfTeeth(const QPainterPath& half, double pitch, int pitches) {
    const QPainterPath other = QTransform::fromScale(-1, 1).map(half.toReversed());
    QPainterPath row;
    for (int i = 0; i < pitches; ++i) {
        const double middle = (i + .5) * pitch;
        if (i == 0)
            row = half.translated(middle, 0);
        else
            row.connectPath(half.translated(middle, 0));
        row.connectPath(other.translated(middle, 0));
    }
    return row;
}

QPen cordPen(const Look& look, double scale) {
    QPen pen{look.warmFill, std::clamp(.16 * scale, .5, 2.0)};
    pen.setDashPattern({3, 2});
    return pen;
}

/// Where the cords lie: on the pitch line.
double cordLine(const belt::Profile& profile, double body) {
    if (profile.doubleSided) return -body / 2;
    return -std::clamp(profile.form.pitchLine.value_or(body / 3), 0.0, body);
}

} // namespace

QPainterPath toothOutline(const belt::Profile& profile, int pitches) {
    const HalfTooth half = halfTooth(profile);
    const double pitch = profile.pitch.inMillimetres();
    const double body = bodyThickness(profile, half.height);
    QPainterPath outline = rowOfTeeth(half.path, pitch, pitches);
    if (profile.doubleSided)
        outline.connectPath(QTransform{1, 0, 0, -1, 0, -body}.map(outline.toReversed()));
    else {
        outline.lineTo(pitches * pitch, -body);
        outline.lineTo(0, -body);
    }
    outline.closeSubpath();
    return outline;
}

bool toothIsApproximate(const belt::Profile& profile) {
    // Modified round teeth have no published points; they are drawn after the half-round ones.
    return profile.shape == belt::ToothShape::FullRound || halfTooth(profile).approximate ||
           !profile.form.total;
}

int pitchesFor(const belt::Profile& profile, const QSizeF& area) {
    const QRectF one = toothOutline(profile, 1).boundingRect();
    const double atHeight = area.width() / area.height() * one.height() / one.width();
    return std::clamp(static_cast<int>(std::floor(atHeight)), 4, 9);
}

double paintTeeth(QPainter& painter, const QRectF& area, const belt::Profile& profile, int pitches,
                  const Look& look) {
    const QPainterPath outline = toothOutline(profile, pitches);
    const QRectF box = outline.boundingRect();
    const double scale = std::min(area.width() / box.width(), area.height() / box.height());
    const double cords = cordLine(profile, bodyThickness(profile, halfTooth(profile).height));
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(area.topLeft());
    const QTransform toPixels{scale, 0, 0, scale, 0, -box.top() * scale};
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.ink);
    painter.drawPath(toPixels.map(outline));
    painter.setPen(cordPen(look, scale));
    painter.drawLine(toPixels.map(QPointF{0, cords}), toPixels.map(QPointF{box.width(), cords}));
    painter.restore();
    return scale;
}

ToothWidget::ToothWidget(QWidget* parent) : QWidget{parent} {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setAccessibleName(tr("Drawing of the tooth"));
}

void ToothWidget::show(const belt::Profile* profile) {
    profile_ = profile ? std::optional{*profile} : std::nullopt;
    setAccessibleDescription(profile ? QString::fromStdString(profile->name) : QString{});
    update();
}

QSize ToothWidget::sizeHint() const { return {168, 56}; }

QSize ToothWidget::minimumSizeHint() const { return sizeHint(); }

void ToothWidget::paintEvent(QPaintEvent*) {
    if (!profile_) return;
    QPainter painter{this};
    const Look& look = Look::current();
    const QRectF drawing = QRectF{rect()}.adjusted(0, 2, 0, -18);
    paintTeeth(painter, drawing, *profile_, pitchesFor(*profile_, drawing.size()), look);
    const QString pitch = QLocale{}.toString(profile_->pitch.inMillimetres(), 'g', 6);
    const QString text =
        (toothIsApproximate(*profile_) ? tr("%1 mm pitch, form about so") : tr("%1 mm pitch")).arg(pitch);
    painter.setFont(Look::font(TextSize::Least));
    painter.setPen(look.ink2);
    painter.drawText(rect(), Qt::AlignLeft | Qt::AlignBottom,
                     painter.fontMetrics().elidedText(text, Qt::ElideRight, width()));
}

} // namespace riband::ui
