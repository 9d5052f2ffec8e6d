#include "ui/shop/book_part.h"

#include "core/store/backup.h"
#include "ui/desk/book_check.h"
#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"
#include "ui/words/words.h"

#include <QAction>
#include <QFileDialog>
#include <QFuture>
#include <QHBoxLayout>
#include <QListWidget>
#include <QProgressBar>
#include <QVBoxLayout>
#include <QtConcurrentRun>

namespace riband::ui {

BookPart::BookPart(Session& session, QWidget* parent)
    : QWidget{parent}, session_{session}, book_{new BookCheck{session, this}}, progress_{new QProgressBar},
      result_{label({}, "strong")}, found_{new QListWidget} {
    buildActions();
    buildView();
    connect(book_, &BookCheck::progress, progress_, &QProgressBar::setValue);
    connect(book_, &BookCheck::done, this, &BookPart::show);
    connect(book_, &BookCheck::failed, this, [this](const QString& words) {
        setBusy(false);
        session_.warn(words);
    });
}

void BookPart::buildActions() {
    const auto act = [this](const QString& name, const QKeySequence& key, void (BookPart::*does)()) {
        auto* action = new QAction{name, this};
        action->setShortcut(key);
        connect(action, &QAction::triggered, this, does);
        addAction(action);
        return action;
    };
    check_ = act(tr("Check the book"), Qt::Key_F5, &BookPart::check);
    stop_ = act(tr("Stop"), Qt::SHIFT | Qt::Key_F5, &BookPart::stop);
    copy_ = act(tr("Back up to a file"), Qt::Key_F8, &BookPart::copy);
    stop_->setEnabled(false);
}

void BookPart::buildView() {
    progress_->setRange(0, 100);
    progress_->setAccessibleName(tr("Progress"));
    progress_->setVisible(false);
    result_->setWordWrap(true);
    found_->setAccessibleName(tr("Where the book disagrees"));
    found_->setVisible(false);
    auto* words =
        label(tr("The check adds up every movement again: width, money, reservations and codes. A backup is "
                 "consistent while the shop is open, and is checked before it counts."),
              "remark");
    words->setWordWrap(true);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(2 * step);
    for (QAction* action : {check_, stop_, copy_})
        buttons->addWidget(new KeyButton{action});
    buttons->addStretch();
    auto* column = new QVBoxLayout{this};
    column->setSpacing(3 * step);
    column->addWidget(words);
    column->addLayout(buttons);
    column->addWidget(progress_);
    column->addWidget(result_);
    column->addWidget(found_, 1);
    column->addStretch();
}

void BookPart::setBusy(bool busy) {
    progress_->setVisible(busy);
    check_->setEnabled(!busy);
    copy_->setEnabled(!busy);
    stop_->setEnabled(busy);
}

void BookPart::check() {
    setBusy(true);
    progress_->setRange(0, 100);
    progress_->setValue(0);
    book_->start();
}

void BookPart::stop() {
    book_->stop();
    setBusy(false);
    result_->setText(tr("Stopped."));
}

void BookPart::show(const store::Verification& verification) {
    setBusy(false);
    found_->clear();
    for (const auto& disagreement : verification.disagreements)
        found_->addItem(say(disagreement));
    found_->setVisible(found_->count() > 0);
    setSheetProperty(*result_, "role",
                     verification.agrees() ? QStringLiteral("ok") : QStringLiteral("danger"));
    result_->setText(verification.agrees()
                         ? tr("All agrees: %1 pieces, %2 movements, %3 postings.")
                               .arg(verification.pieces)
                               .arg(verification.movements)
                               .arg(verification.postings)
                         : tr("The book disagrees in %n places.", nullptr, found_->count()));
}

void BookPart::copy() {
    const QString target = QFileDialog::getSaveFileName(
        this, tr("Back up to a file"),
        tr("backup-%1.riband").arg(QString::fromStdString(printDate(session_.today()))),
        tr("Shops (*.riband)"), nullptr, QFileDialog::DontUseNativeDialog);
    if (!target.isEmpty()) copyTo(target);
}

/// On a thread and a connection of its own; the person has said already that the file may be replaced.
void BookPart::copyTo(const QString& target) {
    struct Copied {
        std::shared_ptr<store::Verification> verification;
        QString failure;
    };
    setBusy(true);
    stop_->setEnabled(false);
    progress_->setRange(0, 0);
    QtConcurrent::run([path = session_.file().toStdString(), to = target.toStdString()]() -> Copied {
        try {
            store::Connection own{path};
            return {std::make_shared<store::Verification>(store::backup(own, to, true)), {}};
        } catch (const store::StoreError& error) {
            return {nullptr, say(error)};
        }
    }).then(this, [this, target](const Copied& copied) {
        setBusy(false);
        if (!copied.verification) return session_.warn(copied.failure);
        show(*copied.verification);
        session_.tell(tr("The backup is in %1, checked.").arg(target));
    });
}

} // namespace riband::ui
