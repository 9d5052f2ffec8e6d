#include "ui/which/candidates_delegate.h"

#include "ui/drawing/tooth.h"
#include "ui/look/look.h"
#include "ui/which/candidates_model.h"

#include <QPainter>

namespace riband::ui {

namespace {

constexpr int rowHeight = 56;
constexpr int drawingWidth = 92;
constexpr int chanceWidth = 112;
constexpr int stockWidth = 150;
constexpr double pixelsPerMillimetre = 3.2; ///< one scale for all rows, so that sizes can be compared
constexpr double mostDrawn = 34;

void words(QPainter& painter, const QRect& area, const QString& text, const QFont& font, const QColor& ink,
           Qt::Alignment align) {
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(area, static_cast<int>(align),
                     QFontMetrics{font}.elidedText(text, Qt::ElideRight, area.width()));
}

/// Whole pitches at the common scale; a coarse tooth that is too high for the row is drawn smaller.
void paintTooth(QPainter& painter, const QRectF& area, const belt::Profile& profile, const Look& look) {
    const double pitch = profile.pitch.inMillimetres() * pixelsPerMillimetre;
    const int pitches = std::clamp(static_cast<int>(area.width() / pitch), 1, 12);
    const double height = toothOutline(profile, 1).boundingRect().height() * pixelsPerMillimetre;
    const double high = std::min({height, mostDrawn, area.height()});
    const QRectF box{area.left(), area.center().y() - high / 2, std::min(area.width(), pitches * pitch),
                     high};
    paintTeeth(painter, box, profile, pitches, look);
}

void paintChance(QPainter& painter, const QRect& area, const QModelIndex& index, const Look& look) {
    words(painter, area.adjusted(0, 6, 0, -22), index.data(CandidatesModel::ChanceRole).toString(),
          Look::font(15, QFont::DemiBold), look.ink, Qt::AlignRight | Qt::AlignVCenter);
    const QRectF bar{double(area.left()), double(area.bottom() - 18), double(area.width()), 6};
    const double share = std::clamp(index.data(CandidatesModel::ProbabilityRole).toDouble(), 0.0, 1.0);
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.rest);
    painter.drawRoundedRect(bar, 3, 3);
    painter.setBrush(look.coolFill);
    painter.drawRoundedRect(QRectF{bar.topLeft(), QSizeF{std::max(4.0, share * bar.width()), bar.height()}},
                            3, 3);
}

} // namespace

void CandidatesDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                               const QModelIndex& index) const {
    const Look& look = Look::current();
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen{look.line, 1});
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (option.state & QStyle::State_Selected) {
        painter->setPen(QPen{look.cool, 2});
        painter->setBrush(look.sunk);
        painter->drawRoundedRect(QRectF{option.rect}.adjusted(1, 1, -1, -2), 4, 4);
    }
    const QRect inside = option.rect.adjusted(10, 0, -10, 0);
    const auto* model = static_cast<const CandidatesModel*>(index.model());
    const QRect drawing{inside.left(), inside.top(), drawingWidth, inside.height()};
    paintTooth(*painter, QRectF{drawing}.adjusted(0, 8, -10, -8), *model->candidate(index.row()).profile,
               look);
    const QRect chance{inside.right() - chanceWidth, inside.top(), chanceWidth, inside.height()};
    paintChance(*painter, chance, index, look);
    const QRect middle{drawing.right(), inside.top() + 6, chance.left() - drawing.right() - 14,
                       inside.height() - 12};
    const QString stock = index.data(CandidatesModel::StockRole).toString();
    const bool here = index.data(CandidatesModel::HereRole).toBool();
    words(*painter, middle.adjusted(0, 0, -stockWidth, -middle.height() / 2),
          index.data(CandidatesModel::NameRole).toString(), Look::font(16, QFont::DemiBold), look.ink,
          Qt::AlignLeft | Qt::AlignVCenter);
    words(*painter, middle.adjusted(middle.width() - stockWidth, 0, 0, -middle.height() / 2), stock,
          Look::font(13, here ? QFont::DemiBold : QFont::Normal), here ? look.cool : look.ink2,
          Qt::AlignRight | Qt::AlignVCenter);
    words(*painter, middle.adjusted(0, middle.height() / 2, 0, 0),
          index.data(CandidatesModel::SizesRole).toString(), Look::font(13), look.ink2,
          Qt::AlignLeft | Qt::AlignVCenter);
    painter->restore();
}

QSize CandidatesDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {option.rect.width(), rowHeight};
}

} // namespace riband::ui
