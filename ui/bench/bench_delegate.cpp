#include "ui/bench/bench_delegate.h"

#include "ui/bench/bench_model.h"
#include "ui/look/look.h"

#include <QPainter>

namespace riband::ui {

namespace {

constexpr int CardHeight = 76;
constexpr int ShaftHeight = 28;

void words(QPainter& painter, const QRect& area, const QString& text, const QFont& font, const QColor& ink,
           int align = Qt::AlignLeft) {
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(area, align | Qt::AlignVCenter,
                     QFontMetrics{font}.elidedText(text, Qt::ElideRight, area.width()));
}

void paintCard(QPainter& painter, const QRect& card, const QModelIndex& index, const Look& look) {
    const auto said = [&](int role) { return index.data(role).toString(); };
    const QRect inside = card.adjusted(14, 8, -14, -8);
    const QRect upper{inside.left(), inside.top(), inside.width(), 22};
    const QFont strong = Look::font(15, QFont::DemiBold);
    const int place = QFontMetrics{strong}.horizontalAdvance(said(BenchModel::PieceRole)) + 12;
    words(painter, upper.adjusted(0, 0, -place, 0), said(BenchModel::BeltRole), strong, look.ink);
    words(painter, upper, said(BenchModel::PieceRole), Look::font(14, QFont::Medium), look.ink2,
          Qt::AlignRight);
    words(painter, upper.translated(0, 20), said(BenchModel::CutsRole), Look::font(14), look.ink);
    const QString due = said(BenchModel::DueRole);
    const QFont when = Look::font(12, QFont::DemiBold);
    const QRect lower = upper.translated(0, 39);
    const int kept = due.isEmpty() ? 0 : QFontMetrics{when}.horizontalAdvance(due) + 12;
    words(painter, lower.adjusted(0, 0, -kept, 0), said(BenchModel::OrderRole), Look::font(12), look.ink2);
    words(painter, lower, due, when, look.ink, Qt::AlignRight);
}

} // namespace

void BenchDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    const Look& look = Look::current();
    QRect card = option.rect;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const QString shaft = index.data(BenchModel::ShaftRole).toString();
    if (!shaft.isEmpty()) {
        const QRect head{card.left() + 2, card.top(), card.width(), ShaftHeight};
        words(*painter, head, shaft, Look::font(13, QFont::DemiBold), look.ink2);
        card.setTop(card.top() + ShaftHeight);
    }
    const bool chosen = option.state & QStyle::State_Selected;
    painter->setPen(QPen{chosen ? look.cool : look.line, chosen ? 2.0 : 1.0});
    painter->setBrush(chosen ? look.sunk : look.card);
    painter->drawRoundedRect(QRectF{card}.adjusted(1, 2, -1, -2), 4, 4);
    paintCard(*painter, card, index, look);
    painter->restore();
}

/// As wide as the list, whatever its scroll bar takes.
QSize BenchDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    const bool head = !index.data(BenchModel::ShaftRole).toString().isEmpty();
    return {0, CardHeight + (head ? ShaftHeight : 0)};
}

} // namespace riband::ui
