#include "ui/counter/ways_delegate.h"

#include "ui/counter/ways_model.h"
#include "ui/look/look.h"

#include <QPainter>

namespace riband::ui {

namespace {

constexpr int RowHeight = 46;
constexpr int Inset = 8;
constexpr int ExtraWidth = 176; // "+ 106.2 mm · 15.31 EUR"

struct Columns {
    QRect name, piece, band, leaves, extra;
};

/// The band takes what the words leave; on a narrow window the words of the piece give way first.
Columns columnsOf(const QRect& row) {
    const QRect inside = row.adjusted(Inset, 0, -Inset, 0);
    const int name = 92, piece = std::clamp(inside.width() / 5, 120, 200);
    const int leaves = std::clamp(inside.width() * 3 / 10, 150, 420);
    int x = inside.left();
    Columns columns;
    const auto take = [&](int width) {
        const QRect column{x, inside.top(), width, inside.height()};
        x += width;
        return column;
    };
    columns.name = take(name);
    columns.piece = take(piece);
    columns.band = take(inside.width() - name - piece - leaves - ExtraWidth).adjusted(8, 13, -20, -13);
    columns.leaves = take(leaves);
    columns.extra = take(ExtraWidth);
    return columns;
}

void words(QPainter& painter, const QRect& area, const QString& text, const QFont& font, const QColor& ink,
           int align = Qt::AlignLeft) {
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(area, align | Qt::AlignVCenter,
                     QFontMetrics{font}.elidedText(text, Qt::ElideRight, area.width()));
}

void paintRow(QPainter& painter, const QRect& row, const QModelIndex& index, const Look& look) {
    const Columns at = columnsOf(row);
    const auto said = [&](int role) { return index.data(role).toString(); };
    words(painter, at.name, said(WaysModel::NameRole), Look::font(15, QFont::DemiBold), look.ink);
    words(painter, at.piece, said(WaysModel::PieceRole), Look::font(13), look.ink2);
    words(painter, at.leaves, said(WaysModel::LeavesRole), Look::font(13), look.ink);
    words(painter, at.extra, said(WaysModel::ExtraRole), Look::font(14, QFont::DemiBold),
          index.data(WaysModel::CostsRole).toBool() ? look.warm : look.ink2, Qt::AlignRight);
    const auto* model = static_cast<const WaysModel*>(index.model());
    if (!model->picture(index.row()).piece.isNone())
        paintBand(painter, QRectF{at.band}, model->picture(index.row()), look, BandSize::Small);
}

} // namespace

void WaysDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    const Look& look = Look::current();
    const bool chosen = option.state & QStyle::State_Selected;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen{look.line, 1});
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (chosen) {
        painter->setPen(QPen{look.cool, 2});
        painter->setBrush(look.sunk);
        painter->drawRoundedRect(QRectF{option.rect}.adjusted(1, 1, -1, -2), 4, 4);
    }
    paintRow(*painter, option.rect, index, look);
    painter->restore();
}

QSize WaysDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {option.rect.width(), RowHeight};
}

} // namespace riband::ui
