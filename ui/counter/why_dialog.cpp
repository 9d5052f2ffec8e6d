#include "ui/counter/why_dialog.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr store::OverrideKey allKeys[] = {
    store::OverrideKey::OlderFirst, store::OverrideKey::NearerToHand,    store::OverrideKey::CustomerSawIt,
    store::OverrideKey::Damaged,    store::OverrideKey::KeptForSomebody, store::OverrideKey::Other};
constexpr int MostWords = 200;

} // namespace

WhyDialog::WhyDialog(QWidget* parent) : QDialog{parent}, keys_{new QListWidget}, words_{new QLineEdit} {
    setWindowTitle(tr("Why another way?"));
    setWhatsThis(tr("Why the piece is cut that was not suggested: a digit is enough. It is kept with the "
                    "order, and tells the owner what the suggestions don't know yet."));
    setMinimumWidth(460);
    int digit = 0;
    for (const store::OverrideKey key : allKeys) {
        keys_->addItem(tr("%1  %2", "digit and reason").arg(++digit).arg(say(key)));
    }
    keys_->setCurrentRow(0);
    keys_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    keys_->setFixedHeight(keys_->count() * keys_->sizeHintForRow(0) + 2 * keys_->frameWidth() + step);
    keys_->installEventFilter(this);
    connect(keys_, &QListWidget::currentRowChanged, this, [this] { chosen_ = true; });
    connect(words_, &QLineEdit::textEdited, this, &WhyDialog::ownWords);
    keys_->setAccessibleName(tr("Reason"));
    connect(keys_, &QListWidget::itemActivated, this, &QDialog::accept);
    words_->setMaxLength(MostWords);
    words_->setAccessibleName(tr("In your own words"));
    words_->setPlaceholderText(tr("in your own words, if you like"));
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(2 * step);
    column->addWidget(label(tr("A digit is enough. It is kept with the order, for the owner."), "remark"));
    column->addWidget(keys_);
    column->addWidget(words_);
    column->addWidget(buttons);
    keys_->setFocus();
}

/// A digit on the list is the answer; the list itself would only look for it.
bool WhyDialog::eventFilter(QObject* watched, QEvent* event) {
    if (watched != keys_ || event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
    const int row = static_cast<QKeyEvent*>(event)->key() - Qt::Key_1;
    if (row < 0 || row >= keys_->count()) return QDialog::eventFilter(watched, event);
    pick(row);
    return true;
}

/// Whoever writes words and has chosen no reason means none of the listed ones.
void WhyDialog::ownWords() {
    if (chosen_) return;
    const QSignalBlocker quiet{keys_};
    keys_->setCurrentRow(keys_->count() - 1);
}

void WhyDialog::pick(int row) {
    keys_->setCurrentRow(row);
    accept();
}

store::OverrideKey WhyDialog::key() const {
    return allKeys[static_cast<std::size_t>(std::max(0, keys_->currentRow()))];
}

QString WhyDialog::words() const { return words_->text().trimmed(); }

} // namespace riband::ui
