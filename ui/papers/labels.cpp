#include "ui/papers/leaves.h"
#include "ui/papers/paper_words.h"
#include "ui/papers/papers.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {
namespace {

constexpr double perMm = 96 / 25.4;
constexpr double border = 2; ///< mm that label printers leave white

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

/// A rectangle in millimetres from the upper left corner of the label.
QRectF mm(double left, double top, double width, double height) {
    return {left * perMm, top * perMm, width * perMm, height * perMm};
}

/// Type as high as `millimetres` from line to line.
QFont typeOf(double millimetres, QFont::Weight weight) {
    return paperFont(static_cast<int>(millimetres * perMm / 1.22), weight);
}

void write(QPainter& painter, const QRectF& area, Qt::Alignment side, const QString& words,
           QFont::Weight weight) {
    painter.setFont(typeOf(area.height() / perMm, weight));
    paintFitted(painter, area, side | Qt::AlignVCenter, words, 9);
}

/// Both sorts end alike: bars over the whole width, then one small line.
void paintLowerHalf(QPainter& painter, double width, const std::string& code, double top,
                    const QString& small) {
    paintCode128(painter, mm(0.5, top, width - 1, 36 - top), code);
    write(painter, mm(border, 36.4, width - 2 * border, 3), Qt::AlignLeft, small, QFont::Normal);
}

/// Empty boxes: each time the piece is cut its new width is written by hand.
void paintWidthBoxes(QPainter& painter, double width, double top, Unit unit) {
    const double each = (width - 2 * border) / 4;
    painter.setPen(QPen{Look::paper().ink, .8});
    painter.setBrush(Qt::NoBrush);
    painter.setFont(paperFont(8));
    for (int i = 0; i < 4; ++i) {
        const QRectF box = mm(border + i * each, top, each - .8, 6);
        painter.drawRect(box);
        paintElided(painter, box.adjusted(0, 0, -3, -1), Qt::AlignRight | Qt::AlignBottom,
                    unit == Unit::Rib ? PaperWords::tr("ribs") : PaperWords::tr("mm"));
    }
}

void paint(QPainter& painter, const RemnantLabel& label, const store::ShopSettings& shop, double width) {
    const double inner = width - 2 * border;
    write(painter, mm(border, 1.4, inner - 17, 5.6), Qt::AlignLeft, text(label.designation), QFont::DemiBold);
    write(painter, mm(width - border - 16, 1.4, 16, 5.6), Qt::AlignRight, text(label.place), QFont::Bold);
    write(painter, mm(border, 7, inner * .56, 8.6), Qt::AlignLeft, text(label.code), QFont::Bold);
    write(painter, mm(border + inner * .57, 7, inner * .43, 8.6), Qt::AlignRight, shown(label.extent),
          QFont::DemiBold);
    paintWidthBoxes(painter, width, 16.2, label.extent.unit());
    paintLowerHalf(painter, width, label.code, 24,
                   PaperWords::tr("ages from %1 · %2").arg(shown(label.born), text(shop.name)));
}

QString customerLine(const BeltLabel& label) {
    QStringList parts;
    if (!label.order.empty() && label.order != label.code) parts << text(label.order);
    if (!label.customer.empty()) parts << text(label.customer);
    return parts.join(" · ");
}

QString widthLine(const BeltLabel& label) {
    const QString width = shown(label.width);
    return label.tolerance.empty() ? width : QString{"%1  %2"}.arg(width, text(label.tolerance));
}

void paint(QPainter& painter, const BeltLabel& label, const store::ShopSettings& shop, double width) {
    const double inner = width - 2 * border;
    write(painter, mm(border, 1.4, inner, 8), Qt::AlignLeft, text(label.printedForm), QFont::Bold);
    write(painter, mm(border, 9.4, inner * .5, 5), Qt::AlignLeft, text(label.designation), QFont::DemiBold);
    write(painter, mm(border + inner * .5, 9.4, inner * .5, 5), Qt::AlignRight, widthLine(label),
          QFont::DemiBold);
    write(painter, mm(border, 14.4, inner, 4.2), Qt::AlignLeft, customerLine(label), QFont::Normal);
    write(painter, mm(border, 18.6, inner, 5.4), Qt::AlignLeft, text(label.code), QFont::Bold);
    paintLowerHalf(painter, width, label.code, 24.4, text(shop.name));
}

void paint(QPainter& painter, const PlaceLabel& label, const store::ShopSettings& shop, double width) {
    const double inner = width - 2 * border;
    write(painter, mm(border, 1.6, inner, 14.4), Qt::AlignHCenter, text(label.name), QFont::Bold);
    write(painter, mm(border, 16.4, inner, 4.4), Qt::AlignHCenter, text(label.note), QFont::DemiBold);
    paintLowerHalf(painter, width, label.name, 21.6, text(shop.name));
}

constexpr double drawnWidth = 58, drawnHeight = 40; ///< mm that the labels above are laid out for

double mmOf(Width width) { return static_cast<double>(width.inMicrometres()) / 1000; }

/// Where the label with this number stands on its page, in mm, and on which page.
struct Place {
    int page;
    double left, top;
};
Place placeOf(int number, const store::LabelStock& stock) {
    if (!stock.sheet) return {number, 0, 0};
    const int columns = std::max(1, stock.columns), onPage = columns * std::max(1, stock.rows);
    const int here = number % onPage;
    return {number / onPage, mmOf(stock.left) + here % columns * (mmOf(stock.width) + mmOf(stock.across)),
            mmOf(stock.top) + here / columns * (mmOf(stock.height) + mmOf(stock.down))};
}

/// A label of another size is the same one, larger or smaller; of another shape it has more room beside the
/// words.
void paintOne(QPainter& painter, const Label& label, const store::ShopSettings& shop, const Place& place) {
    const double scale =
        std::min(mmOf(shop.labels.width) / drawnWidth, mmOf(shop.labels.height) / drawnHeight);
    painter.save();
    painter.translate(place.left * perMm, place.top * perMm);
    painter.scale(scale, scale);
    std::visit([&](const auto& each) { paint(painter, each, shop, mmOf(shop.labels.width) / scale); }, label);
    painter.restore();
}

} // namespace

int paintLabels(QPagedPaintDevice& device, const std::vector<Label>& labels,
                const store::ShopSettings& shop) {
    if (labels.empty()) return 0;
    PaperPainter paper{device};
    int page = 0;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const Place place = placeOf(static_cast<int>(i), shop.labels);
        for (; page < place.page; ++page)
            paper.nextPage();
        paintOne(paper.painter(), labels[i], shop, place);
    }
    return page + 1;
}

int paintBeltLabel(QPagedPaintDevice& device, const BeltLabel& label, const store::ShopSettings& shop) {
    return paintLabels(device, {label}, shop);
}

int paintRemnantLabel(QPagedPaintDevice& device, const RemnantLabel& label, const store::ShopSettings& shop) {
    return paintLabels(device, {label}, shop);
}

} // namespace riband::ui
