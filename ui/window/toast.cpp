#include "ui/window/toast.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>

namespace riband::ui {

Toast::Toast(QWidget* parent) : QFrame{parent}, words_{label({}, "gain")} {
    setProperty("surface", "tile");
    words_->setWordWrap(true);
    words_->setFont(Look::font(TextSize::Remark, QFont::Medium));
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(3 * step, 2, 3 * step, 2);
    row->addWidget(words_);
    setMaximumHeight(pressHeight + step);
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
    show();
    gone_.start(forMs);
    QAccessibleEvent alert{this, QAccessible::Alert};
    QAccessible::updateAccessibility(&alert);
}

void Toast::mousePressEvent(QMouseEvent*) { hide(); }

} // namespace riband::ui
