#include "ui/drawing/band.h"

#include "ui/drawing/band_layout.h"
#include "ui/drawing/hatch.h"
#include "ui/words/words.h"

#include <QCoreApplication>
#include <QPainter>
#include <QStringList>

namespace riband::ui {
namespace {

using Part = BandPicture::Part;
using Words = BandLayout::Words;

struct BandWords {
    Q_DECLARE_TR_FUNCTIONS(BandWords)
};

void paintStrips(QPainter& painter, const BandLayout& layout, const Look& look) {
    for (const auto& strip : layout.strips)
        paintHatch(painter, strip.box, strip.part, look);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen{look.edge, 1});
    for (const auto& strip : layout.strips)
        if (strip.box.left() > layout.band.left() + 1)
            painter.drawLine(strip.box.topLeft(), strip.box.bottomLeft());
    painter.setPen(QPen{look.ink2, 1});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(layout.band.adjusted(0, 0, -1, -1));
    painter.setRenderHint(QPainter::Antialiasing, true);
}

QColor toneOf(const Words& words, const Look& look) {
    switch (words.tone) {
    case Words::Tone::OnStrip:
        return hatchInk(words.on, look);
    case Words::Tone::Warm:
        return look.warm;
    case Words::Tone::Quiet:
        break;
    }
    return look.ink2;
}

void paintWords(QPainter& painter, const Words& words, const Look& look) {
    // A plate under the words keeps them readable over dots and crosses.
    if (words.plate) painter.fillRect(words.box.adjusted(-3, 1, 3, -1), hatchGround(words.on, look));
    painter.setFont(words.font);
    painter.setPen(toneOf(words, look));
    painter.drawText(words.box.adjusted(-1, -1, 1, 1), Qt::AlignCenter, words.text);
}

void paintRule(QPainter& painter, const BandLayout& layout, const Look& look) {
    if (layout.ticks.empty()) return;
    painter.setPen(QPen{look.ink2, 1});
    const double y = layout.band.bottom() + 3;
    for (const auto& tick : layout.ticks)
        painter.drawLine(QPointF{tick.x, y}, QPointF{tick.x, y + tick.height});
}

QString describeRun(const BandPicture::Strip& strip, int count) {
    const QString width = shown(strip.extent);
    switch (strip.part) {
    case Part::Trim:
        return BandWords::tr("trim %1").arg(width);
    case Part::Belt:
        return BandWords::tr("%1 × %2").arg(count).arg(width);
    case Part::ShelfBelt:
        return BandWords::tr("%1 × %2 for the shelf").arg(count).arg(width);
    case Part::Kept:
        return BandWords::tr("%1 stays").arg(width);
    case Part::Lost:
        return BandWords::tr("%1 is lost").arg(width);
    }
    return {};
}

} // namespace

void paintBand(QPainter& painter, const QRectF& area, const BandPicture& picture, const Look& look,
               BandSize size) {
    const BandLayout layout = layOut(picture, area, size);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintStrips(painter, layout, look);
    paintRule(painter, layout, look);
    for (const auto& words : layout.words)
        paintWords(painter, words, look);
    painter.restore();
}

QString describe(const BandPicture& picture) {
    QStringList parts;
    for (std::size_t i = 0; i < picture.strips.size();) {
        std::size_t n = 1;
        while (i + n < picture.strips.size() && picture.strips[i + n].part == picture.strips[i].part &&
               picture.strips[i + n].extent == picture.strips[i].extent)
            ++n;
        parts << describeRun(picture.strips[i], static_cast<int>(n));
        i += n;
    }
    return BandWords::tr("A piece of %1. From the blade: %2.").arg(shown(picture.piece), parts.join("; "));
}

BandWidget::BandWidget(BandSize size, QWidget* parent) : QWidget{parent}, size_{size} {
    setSizePolicy(QSizePolicy::Expanding,
                  size == BandSize::Large ? QSizePolicy::Preferred : QSizePolicy::Fixed);
    setAccessibleName(tr("Drawing of the piece"));
}

void BandWidget::show(BandPicture picture) {
    picture_ = std::move(picture);
    setAccessibleDescription(describe(*picture_));
    setToolTip(accessibleDescription());
    update();
}

void BandWidget::clear() {
    picture_.reset();
    setAccessibleDescription({});
    setToolTip({});
    update();
}

QSize BandWidget::sizeHint() const { return size_ == BandSize::Large ? QSize{640, 124} : QSize{230, 22}; }

QSize BandWidget::minimumSizeHint() const {
    return size_ == BandSize::Large ? QSize{200, 90} : QSize{80, 18};
}

void BandWidget::paintEvent(QPaintEvent*) {
    if (!picture_) return;
    QPainter painter{this};
    paintBand(painter, QRectF{rect()}, *picture_, Look::current(), size_);
}

} // namespace riband::ui
