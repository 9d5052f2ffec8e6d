#include "ui/look/card_tabs.h"

#include "ui/look/key_button.h"
#include "ui/look/look.h"

#include <QPainter>
#include <QPainterPath>

namespace riband::ui {
namespace {

constexpr int slant = 10; ///< how far the sides lean in, in pixels
constexpr int side = 20;
constexpr int gap = 6;
constexpr int barHeight = 42;

QFont nameFont(bool front) { return Look::font(TextSize::Text, front ? QFont::DemiBold : QFont::Medium); }
QFont smallFont() { return Look::font(TextSize::Small, QFont::Medium); }

QPainterPath cardShape(const QRectF& r) {
    QPainterPath path;
    path.moveTo(r.left(), r.bottom());
    path.lineTo(r.left() + slant - 2, r.top() + 5);
    path.quadTo(r.left() + slant, r.top(), r.left() + slant + 5, r.top());
    path.lineTo(r.right() - slant - 5, r.top());
    path.quadTo(r.right() - slant, r.top(), r.right() - slant + 2, r.top() + 5);
    path.lineTo(r.right(), r.bottom());
    path.closeSubpath();
    return path;
}

int badgeWidth(int waiting) {
    return waiting == 0
               ? 0
               : std::max(18, QFontMetrics{smallFont()}.horizontalAdvance(QString::number(waiting)) + 10);
}

} // namespace

CardTabBar::CardTabBar(QWidget* parent) : QTabBar{parent} {
    setDrawBase(false);
    setExpanding(false);
    setUsesScrollButtons(true);
    setElideMode(Qt::ElideNone);
    setFocusPolicy(Qt::TabFocus);
    setMouseTracking(true);
}

int CardTabBar::addCard(const QString& name, const QKeySequence& key) {
    const int index = addTab(name);
    setCard(index, {key, 0});
    return index;
}

void CardTabBar::setCardVisible(int index, bool visible) {
    if (isTabVisible(index) == visible) return; // Qt would forget that the cards have to be laid out
    setTabVisible(index, visible);
    updateGeometry();
}

CardTabBar::Card CardTabBar::card(int index) const {
    const QVariantList kept = tabData(index).toList();
    if (kept.size() != 2) return {};
    return {kept[0].value<QKeySequence>(), kept[1].toInt()};
}

void CardTabBar::setCard(int index, const Card& card) {
    setTabData(index, QVariantList{QVariant::fromValue(card.key), card.waiting});
    nameForAll(index);
    setIconSize(iconSize()); // lays the tabs out again: a badge takes room
    update();
}

void CardTabBar::setWaiting(int index, int count) {
    Card changed = card(index);
    if (changed.waiting == count) return;
    changed.waiting = count;
    setCard(index, changed);
}

int CardTabBar::waiting(int index) const { return card(index).waiting; }

void CardTabBar::nameForAll(int index) {
    const Card shown = card(index);
    QString name = tabText(index);
    if (shown.waiting > 0) name = tr("%1, %2 waiting").arg(name).arg(shown.waiting);
    setAccessibleTabName(index, name);
    setTabToolTip(index, keyName(shown.key));
}

QSize CardTabBar::tabSizeHint(int index) const {
    const Card shown = card(index);
    const int words = QFontMetrics{nameFont(true)}.horizontalAdvance(tabText(index));
    const int key = QFontMetrics{smallFont()}.horizontalAdvance(keyName(shown.key));
    const int badge = shown.waiting > 0 ? badgeWidth(shown.waiting) + 8 : 0;
    return {words + badge + 14 + key + 2 * side + gap, barHeight};
}

QSize CardTabBar::minimumTabSizeHint(int index) const { return tabSizeHint(index); }

void CardTabBar::paintCard(QPainter& painter, int index) const {
    const Look& look = Look::current();
    const bool front = index == currentIndex();
    const bool over = !front && tabRect(index).contains(mapFromGlobal(QCursor::pos())) && underMouse();
    const QRectF r = QRectF{tabRect(index)}.adjusted(0, 1, -gap, 0);
    painter.setPen(Qt::NoPen);
    painter.setBrush(front ? look.card : over ? look.sunk : look.tab);
    painter.drawPath(cardShape(r));
    if (front)
        painter.fillRect(QRectF{r.left() + slant + 4, r.top() + 1, r.width() - 2 * slant - 8, 3},
                         look.warmFill);
    if (front && hasFocus()) {
        painter.setPen(QPen{look.cool, 2});
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(r.adjusted(slant + 2, 6, -slant - 2, -4), 4, 4);
    }
    const QRectF inside = r.adjusted(side, 3, -side, 0);
    painter.setPen(front ? look.ink : look.ink2);
    painter.setFont(nameFont(front));
    painter.drawText(inside, Qt::AlignLeft | Qt::AlignVCenter, tabText(index));
    const Card shown = card(index);
    painter.setFont(smallFont());
    painter.setPen(look.ink2);
    painter.drawText(inside, Qt::AlignRight | Qt::AlignVCenter, keyName(shown.key));
    if (shown.waiting == 0) return;
    const double x = inside.left() + QFontMetrics{nameFont(front)}.horizontalAdvance(tabText(index)) + 8;
    const QRectF badge(x, inside.center().y() - 9, badgeWidth(shown.waiting), 18);
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.cool);
    painter.drawRoundedRect(badge, 9, 9);
    painter.setPen(look.onCool);
    painter.drawText(badge, Qt::AlignCenter, QString::number(shown.waiting));
}

void CardTabBar::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    for (int i = 0; i < count(); ++i)
        if (i != currentIndex() && isTabVisible(i)) paintCard(painter, i);
    if (currentIndex() >= 0) paintCard(painter, currentIndex());
}

} // namespace riband::ui
