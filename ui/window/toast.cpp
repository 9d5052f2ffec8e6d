#include "ui/window/toast.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"

#include <QAccessible>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>

namespace riband::ui {

Toast::Toast(QWidget* room) : room_{room}, words_{label({}, "gain")} {
    setProperty("surface", "tile");
    words_->setWordWrap(true);
    words_->setFont(Look::font(TextSize::Remark, QFont::Medium));
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(3 * step, step, 3 * step, step);
    row->addWidget(words_);
    room_->installEventFilter(this);
    gone_.setSingleShot(true);
    connect(&gone_, &QTimer::timeout, this, &QWidget::hide);
    hide();
}

QString Toast::words() const { return isHidden() ? QString{} : words_->text(); }

void Toast::say(const QString& words, const char* role, int forMs) {
    if (words.isEmpty()) return hide(); // what was said holds no more
    words_->setText(words);
    words_->setToolTip(words);
    setSheetProperty(*words_, "role", QString::fromLatin1(role));
    setAccessibleName(words);
    place();
    show();
    gone_.start(forMs);
    QAccessibleEvent alert{this, QAccessible::Alert};
    QAccessible::updateAccessibility(&alert);
}

/// Over the room, in its window; if that is too narrow for the words also over what stands right of it, then
/// over what is above it, and last left of it. Only what is too long even for that hangs down over the page.
void Toast::place() {
    QWidget* window = room_->window();
    if (parentWidget() != window) setParent(window);
    ensurePolished();
    const QPoint corner = room_->mapTo(window, QPoint{});
    const int low = room_->height() - step;
    const int right =
        heightForWidth(room_->width()) > low ? window->width() - 5 * step : corner.x() + room_->width();
    const int most = corner.y() + low;
    int left = corner.x();
    while (left > 5 * step && heightForWidth(right - left) > most)
        left = std::max(5 * step, left - 10 * step);
    const int height = std::max(low, heightForWidth(right - left));
    setGeometry(left, std::max(0, most - height), right - left, height);
    raise();
}

bool Toast::eventFilter(QObject* watched, QEvent* event) {
    if (watched == room_ && event->type() == QEvent::Resize && isVisible()) place();
    return QFrame::eventFilter(watched, event);
}

void Toast::mousePressEvent(QMouseEvent*) { hide(); }

} // namespace riband::ui
