#include "ui/tally/tally_page.h"

#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/tally/count_view.h"
#include "ui/tally/missing_dialog.h"
#include "ui/tally/plan_view.h"
#include "ui/tally/settle_view.h"
#include "ui/tally/settlements_dialog.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace riband::ui {

TallyPage::TallyPage(Session& session, QWidget* parent)
    : Page{parent}, session_{session}, tally_{session}, count_{new CountView{session, tally_}},
      settle_{new SettleView{session}}, stack_{new QStackedWidget} {
    setObjectName(QStringLiteral("tally"));
    buildActions();
    stack_->addWidget(count_);
    stack_->addWidget(settle_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(5 * step, 5 * step, 5 * step, 5 * step);
    column->setSpacing(4 * step);
    column->addWidget(stack_, 1);
    column->addWidget(buildButtons());
    connect(count_, &CountView::noted, this, [this] {
        settle_->refresh();
        showActions();
        emit waitingChanged();
    });
    connect(count_, &CountView::stepped, this, &TallyPage::showActions);
    showActions();
}

QAction* TallyPage::act(const QString& name, const QKeySequence& key, void (TallyPage::*does)()) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

void TallyPage::buildActions() {
    method_ = act(tr("Method"), Qt::Key_F2, &TallyPage::nextMethod);
    close_ = act(tr("Place is done"), Qt::Key_F3, &TallyPage::closePlace);
    start_ = act(tr("Count it"), Qt::Key_F5, &TallyPage::startPlace);
    turn_ = act(tr("Settle"), Qt::Key_F4, &TallyPage::turn);
    settled_ = act(tr("Settled"), Qt::Key_F6, &TallyPage::showSettled);
    save_ = act(tr("Save the list"), Qt::CTRL | Qt::Key_E, &TallyPage::saveShownList);
    accept_ = act(tr("Accept"), Qt::Key_F9, &TallyPage::accept);
}

QWidget* TallyPage::buildButtons() {
    auto* box = new QWidget;
    auto* row = new QHBoxLayout{box};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2 * step);
    for (QAction* action : {method_, turn_, settled_, save_, start_, close_, accept_}) {
        buttons_.emplace_back(action, new KeyButton{action});
        row->addWidget(buttons_.back().second, 1);
    }
    return box;
}

QString TallyPage::help() const {
    return tr(
        "What is most worth counting in your minutes stands first; Enter alone starts it, the arrows mark "
        "another. Or count any place: scan its label, then each piece and its width, or the number of ribs. "
        "The book's "
        "figures stay hidden until you have told yours. What is near enough is corrected at once; what is "
        "not is measured twice and then settled (F4): the likeliest cause stands first, F9 books it, and F6 "
        "lists what was settled and takes it back.");
}

bool TallyPage::settling() const { return stack_->currentWidget() == settle_; }

QWidget& TallyPage::line() { return count_->line(); }

QWidget& TallyPage::settleLine() { return settle_->line(); }

const PlanView& TallyPage::plan() const { return count_->plan(); }

int TallyPage::waiting() const { return settle_->waiting(); }

void TallyPage::refresh() {
    count_->refresh();
    settle_->refresh();
    showActions();
    emit waitingChanged();
    focusLine();
}

void TallyPage::focusLine() {
    if (settling())
        settle_->focusLine();
    else
        count_->focusLine();
}

void TallyPage::typed(const QString& words) {
    focusLine();
    (settling() ? settle_->line() : count_->line()).insert(words);
}

/// A piece without label is next: its belt is what the line asks for.
bool TallyPage::wantsBelt() const { return !settling() && tally_.step() == Tally::Step::Piece; }

void TallyPage::takeBelt(const QString& belt) {
    count_->line().setText(belt);
    count_->line().setFocus();
}

void TallyPage::showActions() {
    method_->setEnabled(!settling());
    start_->setEnabled(!settling() && !tally_.count());
    close_->setEnabled(!settling() && tally_.count());
    turn_->setText(settling() ? tr("Count on") : tr("Settle"));
    accept_->setEnabled(settling() && settle_->waiting() > 0);
    const QAction* likely = settling() ? accept_ : tally_.count() ? close_ : start_;
    for (const auto& [action, button] : buttons_)
        button->setRank(action == likely ? KeyButton::Rank::Likely : KeyButton::Rank::Plain);
}

void TallyPage::nextMethod() {
    tally_.nextMethod();
    count_->refresh();
}

void TallyPage::startPlace() { count_->start(); }

/// Asks before pieces are missing. A scan is no answer: it is counted.
bool TallyPage::mayClose() {
    if (!tally_.canClose()) return false;
    const std::vector<store::StockPiece> unseen = tally_.unseen();
    if (unseen.empty()) return true;
    MissingDialog dialog{session_, tally_.place(), unseen, this};
    if (dialog.exec() == QDialog::Accepted) return true;
    if (!dialog.begun().isEmpty()) count_->line().setText(dialog.begun());
    return false;
}

void TallyPage::closePlace() {
    if (mayClose() && tally_.close()) emit waitingChanged();
    refresh();
}

void TallyPage::countOn() {
    if (settling()) turn();
}

void TallyPage::turn() {
    stack_->setCurrentWidget(settling() ? static_cast<QWidget*>(count_) : settle_);
    refresh();
}

void TallyPage::accept() {
    settle_->accept();
    refresh();
}

void TallyPage::saveShownList() {
    session_.attempt([&] {
        session_.tell(
            tr("The list is in %1.").arg(saveList(session_, settling() ? settle_->rows() : count_->list())));
    });
}

void TallyPage::showSettled() {
    SettlementsDialog{session_, this}.exec();
    refresh();
}

} // namespace riband::ui
