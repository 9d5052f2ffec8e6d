#include "ui/papers/leaves.h"

#include "ui/papers/paper_words.h"

#include <QPagedPaintDevice>

#include <algorithm>

namespace riband::ui {
namespace {

constexpr double perMm = 96 / 25.4;
constexpr double margin = 14 * perMm;
constexpr double footHeight = 22;
constexpr double gutter = 26; ///< between two beside each other

QSizeF paperSize(const QPagedPaintDevice& device) {
    return device.pageLayout().fullRect(QPageLayout::Point).size() * (96.0 / 72);
}

QRectF bodyOf(const QSizeF& paper) {
    return QRectF{QPointF{}, paper}.adjusted(margin, margin, -margin, -margin - footHeight);
}

void paintFoot(QPainter& painter, const QSizeF& paper, const QString& foot, std::size_t page,
               std::size_t pages) {
    const QRectF body = bodyOf(paper);
    const QRectF line(body.left(), body.bottom() + 6, body.width(), footHeight - 6);
    painter.setPen(QPen{Look::paper().line, .7});
    painter.drawLine(line.topLeft(), line.topRight());
    painter.setPen(Look::paper().ink2);
    painter.setFont(paperFont(11));
    const QString number = PaperWords::tr("page %1 of %2").arg(page).arg(pages);
    paintElided(painter, line, Qt::AlignRight | Qt::AlignBottom, number);
    paintElided(painter, line.adjusted(0, 0, -textWidth(painter.font(), number) - 20, 0),
                Qt::AlignLeft | Qt::AlignBottom, foot);
}

} // namespace

Block stacked(std::vector<Block> rows) {
    double height = 0;
    for (const Block& row : rows)
        height += row.height;
    return {height, [all = std::move(rows)](QPainter& painter, const QRectF& area) {
                double y = area.top();
                for (const Block& row : all) {
                    painter.save();
                    row.paint(painter, {area.left(), y, area.width(), row.height});
                    painter.restore();
                    y += row.height;
                }
            }};
}

Block beside(Block left, Block right, double share) {
    const double height = std::max(left.height, right.height);
    return {height,
            [l = std::move(left), r = std::move(right), share](QPainter& painter, const QRectF& area) {
                const double room = area.width() - gutter, first = room * share;
                painter.save();
                l.paint(painter, {area.left(), area.top(), first, l.height});
                painter.restore();
                painter.save();
                r.paint(painter, {area.left() + first + gutter, area.top(), room - first, r.height});
                painter.restore();
            }};
}

std::vector<std::vector<std::size_t>> paginate(const std::vector<Block>& blocks, double pageHeight) {
    std::vector<std::vector<std::size_t>> pages(1);
    double used = 0;
    for (std::size_t i = 0; i < blocks.size();) {
        std::size_t end = i;
        double height = blocks[i].height;
        while (blocks[end].keepWithNext && end + 1 < blocks.size())
            height += blocks[++end].height;
        if (used > 0 && used + height > pageHeight) {
            pages.emplace_back();
            used = 0;
        }
        for (; i <= end; ++i)
            pages.back().push_back(i);
        used += height;
    }
    return pages;
}

PaperPainter::PaperPainter(QPagedPaintDevice& device)
    : device_{device}, size_{paperSize(device)}, painter_{std::make_unique<QPainter>(&device)} {
    place();
}

void PaperPainter::place() {
    const double scale = device_.logicalDpiX() / 96.0;
    painter_->resetTransform();
    if (device_.pageLayout().mode() == QPageLayout::StandardMode) {
        const QRect full = device_.pageLayout().fullRectPixels(device_.logicalDpiX());
        const QRect inner = device_.pageLayout().paintRectPixels(device_.logicalDpiX());
        painter_->translate(full.topLeft() - inner.topLeft());
    }
    painter_->scale(scale, scale);
    painter_->setRenderHint(QPainter::Antialiasing);
    painter_->setPen(Look::paper().ink);
}

void PaperPainter::nextPage() {
    device_.newPage();
    place();
}

double leafWidth(const QPagedPaintDevice& device) { return bodyOf(paperSize(device)).width(); }

int paintLeaves(QPagedPaintDevice& device, const std::vector<Block>& blocks, const QString& foot) {
    PaperPainter paper{device};
    const QRectF body = bodyOf(paper.size());
    const auto pages = paginate(blocks, body.height());
    for (std::size_t page = 0; page < pages.size(); ++page) {
        if (page > 0) paper.nextPage();
        double y = body.top();
        for (std::size_t i : pages[page]) {
            paper.painter().save();
            blocks[i].paint(paper.painter(), {body.left(), y, body.width(), blocks[i].height});
            paper.painter().restore();
            y += blocks[i].height;
        }
        paintFoot(paper.painter(), paper.size(), foot, page + 1, pages.size());
    }
    return static_cast<int>(pages.size());
}

} // namespace riband::ui
