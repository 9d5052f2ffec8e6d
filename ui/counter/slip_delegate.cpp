#include "ui/counter/slip_delegate.h"

#include "ui/counter/slip_model.h"
#include "ui/look/look.h"

#include <QPainter>

namespace riband::ui {

namespace {

constexpr int RowHeight = 58;
constexpr int Inset = 12;
constexpr int QuantityWidth = 34;

void words(QPainter& painter, const QRect& area, const QString& text, const QFont& font, const QColor& ink,
           int align) {
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(area, align, QFontMetrics{font}.elidedText(text, Qt::ElideRight, area.width()));
}

void paintFrame(QPainter& painter, const QStyleOptionViewItem& option, bool open, bool chosen,
                const Look& look) {
    if (!open && !chosen) return;
    painter.setPen(QPen{open ? look.cool : look.ink2, open ? 2.0 : 1.0});
    painter.setBrush(look.card);
    painter.drawRoundedRect(QRectF{option.rect}.adjusted(1, 2, -1, -2), 4, 4);
}

} // namespace

void SlipDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    const Look& look = Look::current();
    const auto said = [&](int role) { return index.data(role).toString(); };
    const bool open =
        index.data(SlipModel::StateRole).toInt() != static_cast<int>(SlipModel::LineState::Added);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    paintFrame(*painter, option, open, index.data(SlipModel::ChosenRole).toBool(), look);
    const QRect inside = option.rect.adjusted(Inset, 8, -Inset, -8);
    const QRect upper{inside.left(), inside.top(), inside.width(), 22};
    const QFont strong = Look::font(15, QFont::DemiBold);
    const int amount = QFontMetrics{strong}.horizontalAdvance(said(SlipModel::AmountRole)) + 8;
    words(*painter, upper, said(SlipModel::QuantityRole), strong, look.ink, Qt::AlignLeft | Qt::AlignVCenter);
    words(*painter, upper, said(SlipModel::AmountRole), strong, look.ink, Qt::AlignRight | Qt::AlignVCenter);
    words(*painter, upper.adjusted(QuantityWidth, 0, -amount, 0), said(SlipModel::TitleRole),
          Look::font(15, QFont::Medium), look.ink, Qt::AlignLeft | Qt::AlignVCenter);
    const QRect lower{inside.left() + QuantityWidth, upper.bottom() + 1, inside.width() - QuantityWidth, 20};
    words(*painter, lower, said(SlipModel::RemarkRole), Look::font(13), look.ink2,
          Qt::AlignLeft | Qt::AlignVCenter);
    painter->restore();
}

QSize SlipDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {option.rect.width(), RowHeight};
}

} // namespace riband::ui
