#include "ui/look/key_button.h"

#include "ui/look/look.h"
#include "ui/look/press_style.h"

#include <QKeyEvent>
#include <QPainter>

namespace riband::ui {
namespace {

constexpr int likelyHeight = 52;
constexpr int side = 14;
constexpr int boxSize = 16;

QFont keyFont() { return Look::font(TextSize::Small, QFont::Medium); }

} // namespace

QString keyName(const QKeySequence& key) {
    return key.toString(QKeySequence::NativeText).replace(QLatin1String("Return"), QLatin1String("Enter"));
}

KeyButton::KeyButton(const QString& text, const QKeySequence& key, Rank rank, QWidget* parent)
    : QAbstractButton{parent}, rank_{rank}, key_{key} {
    setText(text);
    setShortcut(key);
    prepare();
}

KeyButton::KeyButton(QAction* action, Rank rank, QWidget* parent)
    : QAbstractButton{parent}, rank_{rank}, action_{action} {
    followAction();
    prepare();
    connect(action, &QAction::changed, this, &KeyButton::followAction);
    connect(this, &QAbstractButton::clicked, this, [this] {
        if (action_) action_->trigger();
    });
}

void KeyButton::prepare() {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    setAttribute(Qt::WA_Hover);
    if (accessibleName().isEmpty()) setAccessibleName(QString{text()}.remove('&'));
    setAccessibleDescription(keyName(key_));
}

void KeyButton::followAction() {
    setText(action_->text());
    setToolTip(action_->toolTip() == action_->text() ? QString{} : action_->toolTip());
    setAccessibleName(QString{text()}.remove('&'));
    setEnabled(action_->isEnabled());
    setCheckable(action_->isCheckable());
    setChecked(action_->isChecked());
    setShownKey(action_->shortcut());
}

bool KeyButton::event(QEvent* event) {
    if (event->type() != QEvent::Shortcut || static_cast<QShortcutEvent*>(event)->isAmbiguous())
        return QAbstractButton::event(event);
    click();
    return true;
}

void KeyButton::setRank(Rank rank) {
    rank_ = rank;
    updateGeometry();
    update();
}

void KeyButton::setShownKey(const QKeySequence& key) {
    key_ = key;
    setAccessibleDescription(keyName(key_));
    updateGeometry();
    update();
}

QFont KeyButton::wordFont() const {
    return rank_ == Rank::Likely ? Look::font(TextSize::Part, QFont::DemiBold)
                                 : Look::font(14, QFont::Medium);
}

QSize KeyButton::sizeHint() const {
    const int words = QFontMetrics{wordFont()}.size(Qt::TextShowMnemonic, text()).width();
    const int key = key_.isEmpty() ? 0 : QFontMetrics{keyFont()}.horizontalAdvance(keyName(key_)) + 12;
    const int box = isCheckable() ? boxSize + 10 : 0;
    return {words + key + box + 2 * side + 2, minimumSizeHint().height()};
}

QSize KeyButton::minimumSizeHint() const {
    return {pressHeight, rank_ == Rank::Likely ? likelyHeight : pressHeight};
}

QColor KeyButton::wordColour() const {
    const Look& look = Look::current();
    if (!isEnabled()) return look.ink2;
    if (rank_ == Rank::Likely) return look.onCool;
    return rank_ == Rank::Danger ? look.danger : look.ink;
}

void KeyButton::paintFace(QPainter& painter) const {
    const Look& look = Look::current();
    const bool filled = rank_ == Rank::Likely && isEnabled();
    QColor face = filled ? look.cool : isEnabled() ? look.card : look.sunk;
    if (underMouse() && isEnabled()) face = filled ? look.coolFill : look.sunk;
    if (isDown()) face = filled ? look.coolFill.darker(110) : look.line;
    if (filled && face != look.cool && look.onCool.lightness() < 128) face = look.cool.lighter(108);
    painter.setPen(filled ? QPen{Qt::NoPen} : QPen{look.line, 1});
    painter.setBrush(face);
    painter.drawRoundedRect(QRectF{rect()}.adjusted(.5, .5, -.5, -.5), 6, 6);
    if (!hasFocus()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{filled ? look.onCool : look.cool, 2});
    const double in = filled ? 4 : 1;
    painter.drawRoundedRect(QRectF{rect()}.adjusted(in, in, -in, -in), filled ? 3 : 6, filled ? 3 : 6);
}

void KeyButton::paintWords(QPainter& painter) const {
    QRect inside = rect().adjusted(side, 0, -side, 0);
    if (isCheckable()) {
        const QRectF box(inside.left(), (height() - boxSize) / 2.0, boxSize, boxSize);
        paintCheckBox(painter, box, isChecked(), isEnabled());
        inside.setLeft(inside.left() + boxSize + 10);
    }
    painter.setPen(wordColour());
    const QString key = keyName(key_);
    if (!key.isEmpty()) {
        painter.setFont(keyFont());
        if (isEnabled() && rank_ != Rank::Likely) painter.setPen(Look::current().ink2);
        painter.drawText(inside, Qt::AlignRight | Qt::AlignVCenter, key);
        inside.setRight(inside.right() - QFontMetrics{keyFont()}.horizontalAdvance(key) - 8);
    }
    painter.setPen(wordColour());
    painter.setFont(wordFont());
    const QString words =
        QFontMetrics{wordFont()}.elidedText(text(), Qt::ElideRight, inside.width(), Qt::TextShowMnemonic);
    painter.drawText(inside, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextShowMnemonic, words);
}

void KeyButton::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    paintFace(painter);
    paintWords(painter);
}

void KeyButton::enterEvent(QEnterEvent* event) {
    QAbstractButton::enterEvent(event);
    update();
}

void KeyButton::leaveEvent(QEvent* event) {
    QAbstractButton::leaveEvent(event);
    update();
}

void KeyButton::keyPressEvent(QKeyEvent* event) {
    // Enter presses what has the focus, as Space does.
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

} // namespace riband::ui
