#include "ui/desk/key_button.h"

#include "ui/look/look.h"

#include <QAction>
#include <QKeyEvent>
#include <QPainter>

namespace riband::ui {

namespace {
constexpr int Padding = 12;
constexpr int Between = 14;
} // namespace

KeyButton::KeyButton(QAction* action, Weight weight, QWidget* parent)
    : QAbstractButton{parent}, weight_{weight} {
    setFocusPolicy(Qt::StrongFocus);
    follow(action);
    connect(action, &QAction::changed, this, [this, action] { follow(action); });
    connect(this, &QAbstractButton::clicked, action, [action] { action->trigger(); });
}

KeyButton::KeyButton(const QString& text, const QString& key, QWidget* parent)
    : QAbstractButton{parent}, key_{key} {
    setFocusPolicy(Qt::StrongFocus);
    setText(text);
    setAccessibleName(text);
}

void KeyButton::follow(QAction* action) {
    setText(action->text());
    setAccessibleName(action->text());
    setToolTip(action->toolTip());
    key_ = action->shortcut().toString(QKeySequence::NativeText);
    setEnabled(action->isEnabled());
    setVisible(action->isVisible());
    updateGeometry();
    update();
}

QFont KeyButton::textFont() const {
    return weight_ == Weight::Main ? Look::font(19, QFont::DemiBold) : Look::font(14, QFont::Medium);
}

QFont KeyButton::keyFont() const { return Look::font(weight_ == Weight::Main ? 14 : 12); }

QSize KeyButton::sizeHint() const {
    const int words = QFontMetrics{textFont()}.horizontalAdvance(text());
    const int key = key_.isEmpty() ? 0 : QFontMetrics{keyFont()}.horizontalAdvance(key_) + Between;
    return {words + key + 2 * Padding + 2, weight_ == Weight::Main ? 52 : 38};
}

void KeyButton::paintEvent(QPaintEvent*) {
    const Look& look = Look::current();
    const bool main = weight_ == Weight::Main && isEnabled();
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF{rect()}.adjusted(1, 1, -1, -1);
    QColor fill = main ? look.cool : look.card;
    if (underMouse() && isEnabled()) fill = main ? look.coolFill : look.sunk;
    if (isDown()) fill = main ? look.coolFill : look.tab;
    painter.setPen(
        QPen{hasFocus() ? (main ? look.ink : look.cool) : (main ? fill : look.line), hasFocus() ? 2.0 : 1.0});
    painter.setBrush(fill);
    painter.drawRoundedRect(box, 4, 4);
    const QColor dark = Look::currentShade() == Shade::Dark ? look.ground : look.onFill;
    const QColor ink = main ? (fill == look.cool ? dark : look.onFill) : look.ink;
    painter.setPen(isEnabled() ? ink : look.ink2);
    painter.setFont(textFont());
    const QRectF inside = box.adjusted(Padding, 0, -Padding, 0);
    painter.drawText(inside, Qt::AlignVCenter | Qt::AlignLeft, text());
    painter.setPen(main ? ink : look.ink2);
    painter.setFont(keyFont());
    painter.drawText(inside, Qt::AlignVCenter | Qt::AlignRight, key_);
}

void KeyButton::enterEvent(QEnterEvent* event) {
    update();
    QAbstractButton::enterEvent(event);
}

void KeyButton::leaveEvent(QEvent* event) {
    update();
    QAbstractButton::leaveEvent(event);
}

void KeyButton::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

} // namespace riband::ui
