#include "ui/drawing/band_layout.h"

#include "ui/words/words.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <array>
#include <cmath>

namespace riband::ui {
namespace {

using Part = BandPicture::Part;
using Words = BandLayout::Words;

struct BandWords {
    Q_DECLARE_TR_FUNCTIONS(BandWords)
};

constexpr double captionHeight = 18;
constexpr double ruleHeight = 28;
constexpr double leastBand = 24; ///< a large band lower than this has no caption and no rule
constexpr double labelSide = 4;  ///< room kept at each side of a text in its strip
constexpr double betweenTicks = 52;

/// Puts words there unless they would run into others or out of the area; says whether.
bool place(BandLayout& layout, const QRectF& area, Words words) {
    if (words.text.isEmpty() || !area.adjusted(-.5, -.5, .5, .5).contains(words.box)) return false;
    const QRectF room = words.box.adjusted(-3, 0, 3, 0);
    for (const Words& other : layout.words)
        if (room.intersects(other.box)) return false;
    layout.words.push_back(std::move(words));
    return true;
}

QRectF centred(const QPointF& centre, const QString& text, const QFont& font) {
    const QFontMetricsF metrics{font};
    const QSizeF size{metrics.horizontalAdvance(text), metrics.height()};
    return {centre - QPointF{size.width() / 2, size.height() / 2}, size};
}

bool fits(const QString& text, const QFont& font, double width) {
    return QFontMetricsF{font}.horizontalAdvance(text) + 2 * labelSide <= width;
}

void placeStrips(BandLayout& layout, const BandPicture& picture) {
    const double scale =
        picture.piece.isNone() ? 0 : layout.band.width() / static_cast<double>(picture.piece.count());
    std::int64_t done = 0;
    const std::int64_t all = picture.piece.count();
    const auto at = [&](std::int64_t count) {
        return layout.band.right() - static_cast<double>(count) * scale;
    };
    for (const auto& strip : picture.strips) {
        const std::int64_t next = std::min(all, done + strip.extent.count());
        layout.strips.push_back(
            {strip.part, {at(next), layout.band.top(), at(done) - at(next), layout.band.height()}});
        done = next;
    }
    if (done < all)
        layout.strips.push_back(
            {Part::Kept, {at(all), layout.band.top(), at(done) - at(all), layout.band.height()}});
}

/// The label of one strip with its remark under it; in a low band only the label.
bool labelStrip(BandLayout& layout, const BandPicture::Strip& strip, const QRectF& box, bool plate = false) {
    plate = plate || strip.part == Part::ShelfBelt || strip.part == Part::Lost;
    const QFont large = Look::font(TextSize::Part, QFont::DemiBold);
    const QFont small = Look::font(TextSize::Remark, QFont::DemiBold);
    const QFont remark = Look::font(TextSize::Small);
    const bool tall = box.height() >= 44;
    const QFont& font = tall && fits(strip.label, large, box.width()) ? large : small;
    if (strip.label.isEmpty() || !fits(strip.label, font, box.width())) return false;
    const bool both = tall && !strip.remark.isEmpty() && fits(strip.remark, remark, box.width());
    const QPointF shift{0, both ? 10.0 : 0.0};
    place(layout, box,
          {centred(box.center() - shift, strip.label, font), strip.label, font, Words::Tone::OnStrip,
           strip.part, plate});
    if (both)
        place(layout, box,
              {centred(box.center() + QPointF{0, 12}, strip.remark, remark), strip.remark, remark,
               Words::Tone::OnStrip, strip.part, plate});
    return true;
}

bool alike(const BandPicture::Strip& a, const BandPicture::Strip& b) {
    return a.part == b.part && a.extent == b.extent && a.label == b.label;
}

/// Belts too narrow for their own label share one: "12 × 5".
void labelRun(BandLayout& layout, const BandPicture& picture, std::size_t first, std::size_t count) {
    const QRectF box = layout.strips[first].box.united(layout.strips[first + count - 1].box);
    BandPicture::Strip run = picture.strips[first];
    run.remark.clear();
    if (count > 1) run.label = QString{"%1 × %2"}.arg(count).arg(run.label);
    labelStrip(layout, run, box, count > 1);
}

void labelStrips(BandLayout& layout, const BandPicture& picture) {
    const auto& strips = picture.strips;
    for (std::size_t i = 0; i < strips.size();) {
        std::size_t n = 1;
        while (i + n < strips.size() && alike(strips[i], strips[i + n]))
            ++n;
        if (strips[i].part == Part::Trim) {
            i += n; // the caption at the blade says it
            continue;
        }
        if (!labelStrip(layout, strips[i], layout.strips[i].box))
            labelRun(layout, picture, i, n);
        else
            for (std::size_t k = 1; k < n; ++k)
                labelStrip(layout, strips[i + k], layout.strips[i + k].box);
        i += n;
    }
}

void placeCaptions(BandLayout& layout, const BandPicture& picture, const QRectF& area) {
    const QFont font = Look::font(TextSize::Small, QFont::Medium);
    const QFontMetricsF metrics{font};
    const bool trims = !picture.strips.empty() && picture.strips.front().part == Part::Trim;
    const QString blade =
        trims ? BandWords::tr("blade · trim %1").arg(shownNumber(picture.strips.front().extent))
              : BandWords::tr("blade");
    const double high = metrics.height();
    const auto right = [&](const QString& text) {
        const double wide = metrics.horizontalAdvance(text);
        return QRectF{std::max(area.left(), layout.band.right() - wide), area.top(), wide, high};
    };
    place(layout, area, {right(blade), blade, font, trims ? Words::Tone::Warm : Words::Tone::Quiet});
    const QString far = BandWords::tr("far edge");
    place(layout, area,
          {{layout.band.left(), area.top(), metrics.horizontalAdvance(far), high},
           far,
           font,
           Words::Tone::Quiet});
}

/// 1, 2 or 5 times a power of ten of the unit that leaves room for its number.
std::int64_t tickStep(double pixelsPerUnit) {
    std::int64_t decade = 1;
    for (int i = 0; i < 7; ++i, decade *= 10)
        for (std::int64_t times : {1, 2, 5})
            if (static_cast<double>(times * decade) * pixelsPerUnit >= betweenTicks) return times * decade;
    return decade;
}

std::int64_t zeroOf(const BandPicture& picture) {
    std::int64_t zero = 0;
    for (const auto& strip : picture.strips) {
        if (strip.part != Part::Trim) break;
        zero += strip.extent.count();
    }
    return zero;
}

int partsOf(std::int64_t each) {
    while (each % 10 == 0)
        each /= 10;
    return each == 2 ? 2 : each == 1 ? 1 : 5;
}

void placeRule(BandLayout& layout, const BandPicture& picture, const QRectF& area) {
    const std::int64_t unit = picture.piece.unit() == Unit::Rib ? 1 : 1000;
    const double perUnit =
        layout.band.width() / static_cast<double>(picture.piece.count()) * static_cast<double>(unit);
    const std::int64_t each = tickStep(perUnit);
    const double zero =
        layout.band.right() - static_cast<double>(zeroOf(picture)) / static_cast<double>(unit) * perUnit;
    const QFont font = Look::font(TextSize::Least);
    const double y = layout.band.bottom() + 18;
    const int parts = partsOf(each) == 1 && each > 1 ? 5 : each == 1 ? 1 : partsOf(each);
    for (std::int64_t k = 0;; ++k) {
        const double x = zero - static_cast<double>(k * each) / parts * perUnit;
        if (x < layout.band.left() - .01) break;
        const bool whole = k % parts == 0;
        layout.ticks.push_back({x, whole ? 7.0 : 4.0});
        if (!whole) continue;
        const QString number = QString::number(k / parts * each);
        QRectF box = centred({x, y}, number, font);
        if (box.right() > area.right()) box.moveRight(area.right()); // the zero of an untrimmed piece
        place(layout, area, {box, number, font, Words::Tone::Quiet});
    }
    const QString name = unit == 1 ? BandWords::tr("ribs") : BandWords::tr("mm");
    const double wide = QFontMetricsF{font}.horizontalAdvance(name);
    const double high = QFontMetricsF{font}.height();
    if (!place(layout, area,
               {{layout.band.left(), y - high / 2, wide, high}, name, font, Words::Tone::Quiet}))
        place(layout, area, {{zero - 14 - wide, y - high / 2, wide, high}, name, font, Words::Tone::Quiet});
}

QRectF bandBox(const BandPicture& picture, const QRectF& area, bool dressed) {
    QRectF box = dressed ? area.adjusted(0, captionHeight, 0, -ruleHeight) : area;
    const std::int64_t full = std::max(picture.fullScale, picture.piece.count());
    if (full > 0)
        box.setWidth(area.width() * static_cast<double>(picture.piece.count()) / static_cast<double>(full));
    return box;
}

} // namespace

BandLayout layOut(const BandPicture& picture, const QRectF& area, BandSize size) {
    BandLayout layout;
    const bool dressed = size == BandSize::Large && area.height() >= captionHeight + leastBand + ruleHeight;
    layout.band = bandBox(picture, area, dressed);
    placeStrips(layout, picture);
    if (size == BandSize::Small || picture.piece.isNone()) return layout;
    labelStrips(layout, picture);
    if (!dressed) return layout;
    placeCaptions(layout, picture, area);
    placeRule(layout, picture, area);
    return layout;
}

} // namespace riband::ui
