#include "ui/counter/choice_list.h"

#include "ui/desk/labels.h"
#include "ui/desk/scan_gap.h"
#include "ui/drawing/tooth.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>

#include <algorithm>
#include <memory>

namespace riband::ui {

namespace {

constexpr int MostColumns = 3;

QString wordsOf(const Choice& choice) {
    return choice.remark.isEmpty()
               ? choice.text
               : ChoiceList::tr("%1 · %2", "a choice and its remark").arg(choice.text, choice.remark);
}

KeyButton* buttonOf(const Choice& choice, std::size_t number) {
    auto* button = new KeyButton{wordsOf(choice), QKeySequence{}};
    button->setShownKey(QKeySequence{static_cast<int>(Qt::Key_1) + static_cast<int>(number)});
    return button;
}

} // namespace

/// As many side by side as can be read in full.
int ChoiceList::columnsFor(const Choices& choices) const {
    int widest = 1;
    for (const Choice& choice : choices.choices) {
        const std::unique_ptr<KeyButton> button{buttonOf(choice, 0)};
        widest = std::max(widest, button->sizeHint().width() + 2 * step);
    }
    const int room = parentWidget() ? parentWidget()->width() : width();
    return std::clamp(room / widest, 1, MostColumns);
}

ChoiceList::ChoiceList(QWidget* parent)
    : QWidget{parent}, heading_{label({}, "strong")}, keys_{label({}, "remark")}, buttons_{new QGridLayout} {
    setAccessibleName(tr("Choices"));
    setFocusPolicy(Qt::StrongFocus);
    setProperty("takesKeys", true); // digits pick; the window leaves them here
    heading_->setWordWrap(true);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(2 * step, 0, 0, 0); // room for the mark of the focus
    column->setSpacing(2 * step);
    auto* head = new QHBoxLayout;
    head->addWidget(heading_, 1);
    head->addWidget(keys_);
    column->addLayout(head);
    column->addLayout(buttons_);
    buttons_->setSpacing(2 * step);
    hide();
}

void ChoiceList::show(const Choices& choices) {
    choices_ = choices;
    current_ = -1;
    while (QLayoutItem* item = buttons_->takeAt(0)) {
        if (QWidget* button = item->widget()) {
            button->hide(); // it may be this one that was pressed, so it goes later
            button->deleteLater();
        }
        delete item;
    }
    heading_->setText(choices.heading);
    setSheetProperty(*heading_, "role", choices.wrong ? "warn" : "strong");
    columns_ = columnsFor(choices);
    for (std::size_t i = 0; i < choices.choices.size(); ++i)
        addButton(i);
    keys_->setText(choices.onlyByAlt ? tr("Alt and a digit")
                                     : tr("Enter, then a digit or an arrow; or Alt and the digit"));
    keys_->setVisible(!choices.choices.empty());
    setVisible(!choices.heading.isEmpty());
}

void ChoiceList::addButton(std::size_t number) {
    const Choice& choice = choices_.choices[number];
    auto* button = buttonOf(choice, number);
    button->setFocusPolicy(Qt::NoFocus); // the list has it: digits pick
    connect(button, &QAbstractButton::clicked, this, [this, number] { pick(number); });
    auto* cell = new QWidget;
    auto* column = new QVBoxLayout{cell};
    column->setContentsMargins(0, 0, 0, 0);
    if (choice.drawn) {
        auto* tooth = new ToothWidget;
        tooth->show(choice.drawn);
        column->addWidget(tooth, 0, Qt::AlignLeft);
    }
    column->addWidget(button);
    const int index = static_cast<int>(number);
    buttons_->addWidget(cell, index / columns_, index % columns_);
}

bool ChoiceList::pick(std::size_t number) {
    if (number >= choices_.choices.size()) return false;
    const Choice choice = choices_.choices[number]; // the list may change while it is told
    emit picked(choice);
    return true;
}

QString ChoiceList::takeDigitBefore(const QKeyEvent& key) {
    const bool together = struck_ > 0 && key.timestamp() > 0 && key.timestamp() - struck_ <= longestScanGapMs;
    struck_ = 0;
    return together ? digit_ : QString{};
}

void ChoiceList::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    const bool writes = !event->text().isEmpty() && event->text().front().isPrint() &&
                        !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    const QString digit = takeDigitBefore(*event);
    if (writes && !digit.isEmpty()) {
        emit typed(digit + event->text());
    } else if (key >= Qt::Key_1 && key <= Qt::Key_9) {
        digit_ = event->text();
        struck_ = event->timestamp();
        pick(static_cast<std::size_t>(key - Qt::Key_1));
    } else if (writes && key != Qt::Key_Space)
        emit typed(event->text());
    else if (moveBy(key))
        update();
    else if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        if (current_ >= 0 || choices_.choices.size() == 1)
            pick(static_cast<std::size_t>(std::max(0, current_)));
    } else if (key == Qt::Key_Escape || key == Qt::Key_Backspace)
        emit left();
    else
        QWidget::keyPressEvent(event);
}

void ChoiceList::focusInEvent(QFocusEvent* event) {
    setAccessibleDescription(heading_->text());
    current_ = -1;
    update();
    QWidget::focusInEvent(event);
}

void ChoiceList::focusOutEvent(QFocusEvent* event) {
    update();
    QWidget::focusOutEvent(event);
}

bool ChoiceList::moveBy(int key) {
    const int by = key == Qt::Key_Right || key == Qt::Key_Down ? 1
                   : key == Qt::Key_Left || key == Qt::Key_Up  ? -1
                                                               : 0;
    if (by == 0 || choices_.choices.empty()) return false;
    current_ = std::clamp(current_ + by, 0, static_cast<int>(choices_.choices.size()) - 1);
    setAccessibleDescription(wordsOf(choices_.choices[static_cast<std::size_t>(current_)]));
    return true;
}

/// Who has the keys must be seen: a bar beside the whole list, or a frame round what an arrow has chosen.
void ChoiceList::paintEvent(QPaintEvent* event) {
    QWidget::paintEvent(event);
    if (!hasFocus()) return;
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const auto* cell = current_ < 0 ? nullptr : buttons_->itemAt(current_);
    if (!cell) return painter.fillRect(0, 0, 3, height(), Look::current().cool);
    painter.setPen(QPen{Look::current().cool, 2});
    painter.drawRoundedRect(QRectF{cell->geometry()}.adjusted(-3, -3, 3, 3), 6, 6);
}

} // namespace riband::ui
