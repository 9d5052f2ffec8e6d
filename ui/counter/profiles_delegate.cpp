#include "ui/counter/profiles_delegate.h"

#include "ui/counter/profiles_model.h"
#include "ui/drawing/tooth.h"
#include "ui/look/look.h"

#include <QPainter>

namespace riband::ui {

namespace {
constexpr QSize Tile{112, 72};
constexpr int PitchesShown = 3;
} // namespace

void ProfilesDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    const Look& look = Look::current();
    const bool chosen = option.state & QStyle::State_Selected;
    const auto* model = static_cast<const ProfilesModel*>(index.model());
    const QRectF tile = QRectF{option.rect}.adjusted(3, 3, -3, -3);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen{chosen ? look.cool : look.line, chosen ? 2.0 : 1.0});
    painter->setBrush(chosen ? look.sunk : look.card);
    painter->drawRoundedRect(tile, 4, 4);
    paintTeeth(*painter, tile.adjusted(10, 7, -10, -28), model->profile(index.row()), PitchesShown, look);
    const bool kept = index.data(ProfilesModel::KeptRole).toBool();
    painter->setFont(Look::font(14, kept ? QFont::DemiBold : QFont::Normal));
    painter->setPen(kept ? look.ink : look.ink2);
    painter->drawText(tile.adjusted(10, 0, -10, -6), Qt::AlignBottom | Qt::AlignLeft,
                      index.data(Qt::DisplayRole).toString());
    painter->restore();
}

QSize ProfilesDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const { return Tile; }

} // namespace riband::ui
