#include "ui/counter/counter_page.h"

#include "core/shop/kept.h"
#include "ui/counter/advice.h"
#include "ui/counter/choice_list.h"
#include "ui/counter/customer_dialog.h"
#include "ui/counter/parked_dialog.h"
#include "ui/counter/pick_form.h"
#include "ui/counter/ways_model.h"
#include "ui/counter/why_dialog.h"
#include "ui/desk/paper_tray.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QShortcut>
#include <QStackedWidget>

// What the Counter does when a key is pressed; how it shows things is in counter_page.cpp.

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
    toldUnpriced_ = false;
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

/// Everything that is typed goes along; what is not understood holds the order back, and nothing is lost.
void CounterPage::orderAndTicket() {
    choosing_->now();
    advice_->lookNow();
    if (lacks()) return; // the card says what is not here
    if (inquiry_.state() != Inquiry::State::Empty && !addLine()) {
        warnUnclear(tr("nothing was ordered"));
        choices_->setFocus();
        return;
    }
    if (hand_.isEmpty() || !priced()) return;
    std::optional<shop::Ordered> done;
    if (!session_.attempt([&] { done = shop::order(session_.shop(), hand_.draft(), hand_.instead); })) {
        showUnderstood();
        return;
    }
    if (done->ticket) lastTicket_ = done->ticket;
    print_->setEnabled(lastTicket_.has_value());
    start();
    session_.touch();
    keepPapers(*done);
    learnFrom(done->order);
}

/// Money would be lost without a word: the first key says it, the second goes on.
bool CounterPage::priced() {
    if (toldUnpriced_) return true;
    for (const SlipLine& line : hand_.lines()) {
        if (line.belt.price != WidthPrice::thousandths(0)) continue;
        toldUnpriced_ = true;
        session_.warn(
            tr("%1 has no price: only the cutting would be paid. The same key again goes on all the "
               "same; the owner sets prices under Shop, Belts and widths.")
                .arg(text(line.belt.designation)));
        return false;
    }
    return true;
}

/// What was just asked for may make a worth table due.
void CounterPage::learnFrom(store::OrderId order) {
    session_.attempt([&] {
        for (const auto& line : store::Orders{session_.shop().connection}.at(order).lines)
            emit session_.worthWanted(line.belt);
    });
}

/// "013-S (B2-1), 014-R (B2-1)": what the clerk fetches now.
QString CounterPage::fromShelf(const store::Order& order) const {
    const store::Ledger ledger{session_.shop().connection};
    QStringList pieces;
    for (const store::OrderLine& line : order.lines)
        for (const store::RecordedMovement& recorded : ledger.ofLine(line.id))
            for (const store::Posting& posting : recorded.movement.postings()) {
                if (posting.account != store::Account::Ready || !posting.piece) continue;
                const store::StockPiece piece = store::Pieces{session_.shop().connection}.at(*posting.piece);
                pieces << (piece.place.empty()
                               ? text(piece.code)
                               : tr("%1 (%2)", "piece, place").arg(text(piece.code), text(piece.place)));
            }
    return pieces.join(QStringLiteral(", "));
}

void CounterPage::keepPapers(const shop::Ordered& done) {
    session_.attempt([&] {
        const store::Order order = store::Orders{session_.shop().connection}.at(done.order);
        const QString other = done.otherWay
                                  ? QLatin1Char(' ') + tr("The chosen way was gone; another was planned.")
                                  : QString{};
        const QString gave = gaveWay(done);
        if (!done.ticket) {
            PaperTray{session_}.order(done.order);
            session_.tell(tr("Order %1: nothing to cut. From the shelf: %2.", "order, codes and places")
                              .arg(text(order.code), fromShelf(order)) +
                          other);
            return;
        }
        const store::Ticket ticket = store::Tickets{session_.shop().connection}.at(*done.ticket);
        const QString file = PaperTray{session_}.ticket(*done.ticket);
        session_.tell(tr("Ticket %1 for order %2 is in %3. Ctrl+P prints it.")
                          .arg(text(ticket.code), text(order.code), file) +
                      other + gave);
    });
}

/// Papers of tickets that lost their belts for the shelf are made anew.
QString CounterPage::gaveWay(const shop::Ordered& done) const {
    QStringList codes;
    for (const store::TicketId id : done.gaveWay) {
        const store::Ticket ticket = store::Tickets{session_.shop().connection}.at(id);
        if (ticket.state == store::TicketState::Open) PaperTray{session_}.ticket(id);
        codes << text(ticket.code);
    }
    if (codes.isEmpty()) return {};
    return QLatin1Char(' ') +
           tr("Cut no belts for the shelf by %1 any more: they gave way. Its paper is new.",
              "codes of tickets")
               .arg(codes.join(QStringLiteral(", ")));
}

std::optional<store::OrderId> CounterPage::keepAside(KeepAside keep) {
    if (inquiry_.state() != Inquiry::State::Empty && !addLine()) {
        warnUnclear(tr("nothing was kept"));
        return std::nullopt;
    }
    if (keep == &shop::quote && !priced()) return std::nullopt;
    std::optional<store::OrderId> kept;
    session_.attempt([&] { kept = keep(session_.shop(), hand_.draft(), hand_.instead); });
    if (kept) {
        lastAside_ = kept;
        start();
        session_.touch();
    }
    return kept;
}

void CounterPage::quote() {
    const auto order = keepAside(&shop::quote);
    if (!order) return;
    session_.attempt([&] {
        const std::string code = store::Orders{session_.shop().connection}.at(*order).code;
        const QString file = PaperTray{session_}.order(*order);
        session_.tell(tr("Quote %1 is in %2. Shift+F7 takes it up again.").arg(text(code), file));
    });
}

void CounterPage::park() {
    if (hand_.isEmpty() && inquiry_.state() == Inquiry::State::Empty) return takeUp();
    const auto order = keepAside(&shop::park);
    if (!order) return;
    session_.attempt([&] {
        const std::string code = store::Orders{session_.shop().connection}.at(*order).code;
        session_.tell(tr("Parked as %1. F7 takes it up again.").arg(text(code)));
    });
}

void CounterPage::keepSlip() {
    if (!hand_.isEmpty())
        session_.attempt([&] { shop::park(session_.shop(), hand_.draft(), hand_.instead); });
}

void CounterPage::takeUp() {
    if (!hand_.isEmpty()) {
        session_.warn(tr("Another order is in hand. Park it first with F7."));
        return;
    }
    ParkedDialog dialog{session_, lastAside_, this};
    if (dialog.exec() != QDialog::Accepted || !dialog.chosen()) return;
    takeUp(*dialog.chosen());
}

void CounterPage::takeUp(store::OrderId id) {
    if (!hand_.isEmpty()) {
        session_.warn(tr("Another order is in hand. Park it first with F7."));
        return;
    }
    session_.attempt([&] {
        const store::Order order = store::Orders{session_.shop().connection}.at(id);
        const shop::Draft draft = shop::resume(session_.shop(), order.id);
        start();
        for (const auto& line : draft.lines) {
            const store::StockedBelt belt = shop::entryOf(session_.shop(), line.belt);
            hand_.put({line,
                       belt,
                       shop::priceOf(session_.settings().prices, belt.price, line.extent, line.quantity),
                       {}});
        }
        hand_.customer = draft.customer;
        hand_.phone = draft.phone;
        hand_.note = draft.note;
        hand_.due = draft.due;
        hand_.instead = order.id;
        hand_.insteadCode = order.code;
    });
    showSlip();
    line_->setFocus();
}

void CounterPage::editCustomer() {
    CustomerDialog dialog{session_, hand_, this};
    if (dialog.exec() == QDialog::Accepted) dialog.writeTo(hand_);
    showSlip();
    line_->setFocus();
}

void CounterPage::editLine() {
    const auto index = slip_->chosenLine();
    if (!index) return;
    if (inquiry_.state() != Inquiry::State::Empty && !hand_.editing()) {
        session_.warn(tr("Finish or clear what is typed first."));
        return;
    }
    hand_.edit(*index);
    const shop::DraftLine& line = hand_.lines()[*index].line;
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

void CounterPage::printTicket() {
    if (lastTicket_) session_.attempt([&] { PaperTray{session_}.printTicket(*lastTicket_, this); });
}

} // namespace riband::ui
