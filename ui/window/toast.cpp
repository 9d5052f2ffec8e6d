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
    row->setContentsMargins(3 * step, 2, 3 * step, 2);
    row->addWidget(words_);
    room_->installEventFilter(this);
    gone_.setSingleShot(true);
    connect(&gone_, &QTimer::timeout, this, &QWidget::hide);
    hide();
}

QString Toast::words() const { return isHidden() ? QString{} : words_->text(); }

void Toast::say(const QString& words, const char* role, int forMs) {
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

/// Over the room, in its window; as high as the words need.
void Toast::place() {
    if (parentWidget() != room_->window()) setParent(room_->window());
    ensurePolished();
    const int height = std::max(room_->height() - step, heightForWidth(room_->width()));
    setGeometry({room_->mapTo(room_->window(), QPoint{}), QSize{room_->width(), height}});
    raise();
}

bool Toast::eventFilter(QObject* watched, QEvent* event) {
    if (watched == room_ && event->type() == QEvent::Resize && isVisible()) place();
    return QFrame::eventFilter(watched, event);
}

void Toast::mousePressEvent(QMouseEvent*) { hide(); }

} // namespace riband::ui
