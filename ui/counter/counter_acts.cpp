#include "ui/counter/counter_page.h"

#include "ui/counter/advice.h"
#include "ui/counter/choice_list.h"
#include "ui/counter/pick_form.h"
#include "ui/counter/ways_model.h"
#include "ui/counter/why_dialog.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QShortcut>
#include <QStackedWidget>

// What the Counter does with the line and the lines of the slip when a key is pressed; what becomes of the
// whole order is in counter_order.cpp, how things are shown in counter_page.cpp.

namespace riband::ui {

QAction* CounterPage::act(const QString& name, const QKeySequence& key, void (CounterPage::*does)()) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

void CounterPage::buildActions() {
    actions_.order = act(tr("Order and ticket"), Qt::Key_F9, &CounterPage::orderAndTicket);
    actions_.quote = act(tr("Quote"), Qt::Key_F8, &CounterPage::quote);
    actions_.park = act(tr("Park"), Qt::Key_F7, &CounterPage::park);
    takeUp_ = act(tr("Parked and quoted orders"), Qt::SHIFT | Qt::Key_F7, &CounterPage::takeUp);
    actions_.customer = act(tr("Customer"), Qt::Key_F10, &CounterPage::editCustomer);
    why_ = act(tr("Why another way"), Qt::Key_F3, &CounterPage::sayWhy);
    shelf_ = act(tr("With or without belts for the shelf"), Qt::Key_F6, &CounterPage::shelfOrNot);
    pick_ = act(tr("Pick instead of typing"), Qt::Key_F4, &CounterPage::pickOrType);
    actions_.edit = act(tr("Change the line"), Qt::Key_F2, &CounterPage::editLine);
    actions_.remove = act(tr("Remove the line"), Qt::CTRL | Qt::Key_Delete, &CounterPage::removeLine);
    act(tr("Choose the line above on the slip"), Qt::CTRL | Qt::Key_Up, &CounterPage::chooseAbove);
    act(tr("Choose the line below on the slip"), Qt::CTRL | Qt::Key_Down, &CounterPage::chooseBelow);
    print_ = act(tr("Print the last ticket"), QKeySequence::Print, &CounterPage::printTicket);
    act(tr("Save the lines of the order"), Qt::CTRL | Qt::Key_E, &CounterPage::saveOrderLines);
    act(tr("Save the other ways"), Qt::CTRL | Qt::SHIFT | Qt::Key_E, &CounterPage::saveWays);
    print_->setEnabled(false);
    for (int digit = 0; digit < 9; ++digit)
        new QShortcut{Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + digit), this, [this, digit] {
                          choosing_->now();
                          choices_->pick(static_cast<std::size_t>(digit));
                      }};
}

void CounterPage::saveShown(const ListRows& list) {
    if (list.rows.empty()) return session_.tell(tr("The list is empty: there is nothing to save."));
    session_.attempt([&] { session_.tell(tr("The list is in %1.").arg(saveList(session_, list))); });
}

void CounterPage::saveOrderLines() { saveShown(slip_->lines()); }

void CounterPage::saveWays() {
    ListRows list{QStringLiteral("ways"), {tr("Cut from"), tr("Piece"), tr("Leaves"), tr("Costs more")}};
    for (int row = 0; row < waysModel_->rowCount(); ++row) {
        QStringList cells;
        for (const int role :
             {WaysModel::NameRole, WaysModel::PieceRole, WaysModel::LeavesRole, WaysModel::ExtraRole})
            cells << waysModel_->index(row).data(role).toString();
        list.rows.push_back(cells);
    }
    saveShown(list);
}

void CounterPage::start() {
    hand_.clear();
    toldUnpriced_ = toldForbidden_ = false;
    dropEvidence();
    line_->setText({}); // unlike clear() nothing that Ctrl+Z would bring back: the order stands
    inquiry_.say({});
    showUnderstood();
    showAdvice();
}

void CounterPage::enter() {
    if (inquiry_.state() == Inquiry::State::Empty) return;
    // A scanner ends what it types with Enter: a code that is known, and nothing else, opens at once.
    if (inquiry_.state() == Inquiry::State::Fault && openScanned(session_, inquiry_.said())) {
        line_->clear();
        return;
    }
    choosing_->now();
    if (inquiry_.state() == Inquiry::State::Complete && !disagrees())
        addLine();
    else if (!choices_->isEmpty())
        choices_->setFocus();
}

void CounterPage::escape() {
    session_.tell({});
    hand_.stopEditing(); // the line stays as it was; what comes next is another one
    line_->clear();
    showSlip();
}

void CounterPage::take(const Choice& choice) {
    session_.tell({});
    switch (choice.does) {
    case Choice::Does::Say:
        line_->setText(choice.value);
        break;
    case Choice::Does::Settle:
        inquiry_.choose(choice.reading);
        showUnderstood();
        break;
    case Choice::Does::Overrule:
        evidence_.overrule();
        showUnderstood();
        break;
    case Choice::Does::Open:
        line_->clear();
        openScanned(session_, choice.value);
        return;
    case Choice::Does::Drive:
        emit driveWanted();
        return;
    case Choice::Does::Customer:
        hand_.customer = choice.value.toStdString();
        hand_.phone = choice.remark.toStdString();
        line_->clear();
        showSlip();
        break;
    }
    line_->setFocus();
}

void CounterPage::want(const belt::Reading& reading) {
    line_->selectAll();
    line_->insert(wordsFor(reading, session_.tables()).value_or(text(belt::designation(reading.belt))));
    line_->setFocus();
}

bool CounterPage::addLine() {
    advice_->lookNow();
    auto line = pending();
    if (!line || disagrees()) return false;
    hand_.put(std::move(*line));
    line_->setText({}); // it stands on the slip: Ctrl+Z must not order it twice
    showSlip();
    return true;
}

void CounterPage::warnUnclear(const QString& undone) {
    session_.warn((disagrees()
                       ? tr("What is known of the belt disagrees with what was said. Choose below; %1.")
                       : tr("The line is not clear yet. Finish or clear it first; %1."))
                      .arg(undone));
}

void CounterPage::editLine() {
    const auto index = slip_->chosenLine();
    if (!index) return;
    if (inquiry_.state() != Inquiry::State::Empty && !hand_.editing()) {
        session_.warn(tr("Finish or clear what is typed first."));
        return;
    }
    hand_.edit(*index);
    const shop::DraftLine line = hand_.lines()[*index].line;
    line_->setText(text(line.said));
    if (line.way) {
        std::optional<Advice::Why> why;
        if (line.overrideKey) why = Advice::Why{*line.overrideKey, line.overrideWords};
        advice_->remember({*line.way, line.wayPieces, std::move(why)});
    }
    if (line.noShelf) advice_->setNoShelf(true);
    line_->setFocus();
    line_->selectAll();
    showSlip();
}

void CounterPage::chooseAbove() { slip_->choose(-1); }
void CounterPage::chooseBelow() { slip_->choose(1); }

void CounterPage::removeLine() {
    const auto index = slip_->chosenLine();
    if (!index) return;
    hand_.remove(*index);
    showUnderstood();
    showSlip();
}

void CounterPage::pickOrType() {
    const bool open = below_->currentWidget() == pickForm_;
    below_->setCurrentIndex(open ? 0 : 1);
    pick_->setText(open ? tr("Pick instead of typing") : tr("Type instead of picking"));
    if (open)
        line_->setFocus();
    else {
        pickForm_->refresh();
        pickForm_->show(inquiry_);
        pickForm_->setFocus();
    }
}

void CounterPage::sayWhy() {
    if (!advice_->choseOther()) return;
    WhyDialog dialog{this};
    if (dialog.exec() == QDialog::Accepted) advice_->setWhy({dialog.key(), dialog.words().toStdString()});
    line_->setFocus();
}

void CounterPage::shelfOrNot() { advice_->setNoShelf(!advice_->noShelf()); }

} // namespace riband::ui
