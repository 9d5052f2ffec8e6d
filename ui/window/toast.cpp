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

/// Over the room, in its window; if that is too narrow for the words also over what stands right of it, and
/// as high as they need.
void Toast::place() {
    QWidget* window = room_->window();
    if (parentWidget() != window) setParent(window);
    ensurePolished();
    const QPoint corner = room_->mapTo(window, QPoint{});
    const int low = room_->height() - step;
    const bool narrow = heightForWidth(room_->width()) > low;
    const int width =
        narrow ? std::max(room_->width(), window->width() - corner.x() - 5 * step) : room_->width();
    setGeometry({corner, QSize{width, std::max(low, heightForWidth(width))}});
    raise();
}

bool Toast::eventFilter(QObject* watched, QEvent* event) {
    if (watched == room_ && event->type() == QEvent::Resize && isVisible()) place();
    return QFrame::eventFilter(watched, event);
}

void Toast::mousePressEvent(QMouseEvent*) { hide(); }

} // namespace riband::ui
