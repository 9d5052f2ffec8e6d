#include "ui/window/toast.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"

#include <QAccessible>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>

namespace riband::ui {

namespace {
constexpr int MostWidth = 860;
constexpr int FromBelow = 52;
} // namespace

Toast::Toast(QWidget* over) : QFrame{over}, words_{label({}, "gain")} {
    setProperty("surface", "tile");
    words_->setWordWrap(true);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(4 * step, 3 * step, 4 * step, 3 * step);
    row->addWidget(words_);
    gone_.setSingleShot(true);
    connect(&gone_, &QTimer::timeout, this, &QWidget::hide);
    over->installEventFilter(this);
    hide();
}

QString Toast::words() const { return isHidden() ? QString{} : words_->text(); }

void Toast::say(const QString& words, const char* role, int forMs) {
    words_->setText(words);
    setSheetProperty(*words_, "role", QString::fromLatin1(role));
    setAccessibleName(words);
    place();
    show();
    raise();
    gone_.start(forMs);
    QAccessibleEvent alert{this, QAccessible::Alert};
    QAccessible::updateAccessibility(&alert);
}

void Toast::place() {
    const QWidget* over = parentWidget();
    const int room = std::min(MostWidth, over->width() - 80);
    const int wide = std::min(room, words_->fontMetrics().horizontalAdvance(words_->text()) + 10 * step);
    setFixedWidth(wide);
    const int high = layout()->hasHeightForWidth() ? layout()->heightForWidth(wide) : sizeHint().height();
    setFixedHeight(high);
    move((over->width() - wide) / 2, over->height() - high - FromBelow);
}

bool Toast::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && isVisible()) place();
    return QFrame::eventFilter(watched, event);
}

void Toast::mousePressEvent(QMouseEvent*) { hide(); }

} // namespace riband::ui
