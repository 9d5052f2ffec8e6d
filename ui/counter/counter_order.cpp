#include "ui/counter/counter_page.h"

#include "core/shop/kept.h"
#include "ui/counter/advice.h"
#include "ui/counter/choice_list.h"
#include "ui/counter/customer_dialog.h"
#include "ui/counter/parked_dialog.h"
#include "ui/desk/paper_tray.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QLineEdit>

// What becomes of the order on the slip: ordered with its papers, quoted, parked, taken up again.

namespace riband::ui {

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
    if (hand_.isEmpty() || !priced() || !mayBeCut()) return;
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

/// Something would be cut that no cutter here is made for.
bool CounterPage::forbids(const SlipLine& line) const {
    return line.cut && !shop::notMadeFor(session_.settings().cutters, line.belt).empty();
}

const SlipLine* CounterPage::forbiddenLine() const {
    for (const SlipLine& line : hand_.lines())
        if (forbids(line)) return &line;
    return nullptr;
}

/// One key alone does not order to be cut what must not be cut here: the first says it, the second goes on.
bool CounterPage::mayBeCut() {
    const SlipLine* line = forbiddenLine();
    if (toldForbidden_ || !line) return true;
    toldForbidden_ = true;
    session_.warn(
        tr("%1: no cutter here is made for it. Order it cut and finished from its maker; F8 quotes it. "
           "Where the local rules and trained people allow it, the same key again goes on.")
            .arg(text(line->belt.designation)));
    return false;
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

void CounterPage::printTicket() {
    if (lastTicket_) session_.attempt([&] { PaperTray{session_}.printTicket(*lastTicket_, this); });
}

} // namespace riband::ui
