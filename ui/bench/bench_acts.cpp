#include "ui/bench/bench_page.h"

#include "core/shop/shelf_ticket.h"
#include "ui/bench/bench_model.h"
#include "ui/bench/miscut_dialog.h"
#include "ui/bench/order_dialog.h"
#include "ui/bench/orders_dialog.h"
#include "ui/bench/record_dialog.h"
#include "ui/bench/together_dialog.h"
#include "ui/bench/which_order_dialog.h"
#include "ui/desk/paper_tray.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QListView>

#include <algorithm>

// What the Bench does with the chosen mounting when a key is pressed; how it shows things is in
// bench_page.cpp.

namespace riband::ui {

namespace {

/// The mounting as far as it was well cut when a belt of it was spoiled.
shop::BenchMounting asCut(shop::BenchMounting mounting, const shop::Miscut& miscut) {
    auto& cuts = mounting.mounting.cuts;
    for (std::size_t i = 0; i < cuts.size(); ++i)
        cuts[i].count = miscut.good[i];
    return mounting;
}

/// The mounting as it was really cut: of the belts for the shelf perhaps fewer.
shop::BenchMounting asCut(shop::BenchMounting mounting, const shop::CutRecord& record) {
    std::size_t shelf = 0;
    auto& cuts = mounting.mounting.cuts;
    for (auto& cut : cuts)
        if (!cut.line && record.ofShelf) cut.count = record.ofShelf->at(shelf++);
    std::erase_if(cuts, [](const store::TicketCut& cut) { return cut.count == 0; });
    return mounting;
}

/// Whose belts a mounting cuts, and which.
std::vector<WhichOrderDialog::Choice> ordersOf(const shop::BenchMounting& mounting,
                                               store::Connection& connection) {
    const store::Orders orders{connection};
    std::vector<WhichOrderDialog::Choice> choices;
    for (const store::TicketCut& cut : mounting.mounting.cuts) {
        if (!cut.line) continue;
        const store::OrderId id = orders.orderOf(*cut.line);
        auto at = std::find_if(choices.begin(), choices.end(),
                               [&](const WhichOrderDialog::Choice& each) { return each.order == id; });
        if (at == choices.end()) {
            const store::Order order = orders.at(id);
            choices.push_back({id, text(order.code), text(order.customerName), {}});
            at = choices.end() - 1;
        }
        at->belts << BenchPage::tr("%1 × %2", "belts of a width").arg(cut.count).arg(shown(cut.extent));
    }
    return choices;
}

} // namespace

/// One Enter too many, or a scanner that fires twice, must not record a cut that nobody has made: after an
/// act Enter sleeps until another mounting is chosen.
void BenchPage::enter() {
    if (enterSleeps_) return session_.tell(tr("F9 records the next cut, when it is made."));
    if (forbidden_)
        return session_.warn(
            tr("This must not be cut here: F4 opens its order. If it was cut all the same, F9 records it."));
    recordCut();
}

void BenchPage::recordCut() {
    if (!currentMounting()) return;
    const shop::BenchMounting mounting = model_->mounting(list_->currentIndex().row());
    std::vector<std::string> places;
    session_.attempt([&] { places = store::Pieces{session_.shop().connection}.places(); });
    RecordDialog dialog{mounting, places, this};
    std::optional<shop::CutDone> done;
    // A refusal leaves the dialog as it was typed.
    while (!done) {
        if (!stillWaits(mounting) || dialog.exec() != QDialog::Accepted) return;
        session_.attempt([&] { done = shop::recordCut(session_.shop(), dialog.record()); });
    }
    std::vector<store::PieceId> labelled = done->shelf;
    if (done->remnant) labelled.push_back(*done->remnant);
    session_.attempt([&] {
        PaperTray{session_}.labels(labelled);
        PaperTray{session_}.beltLabels(mounting); // the customers' belts are all cut then
    });
    session_.touch();
    choose(0); // on the shaft, perhaps of the piece, that is on the cutter
    enterSleeps_ = true;
    session_.tell(wordsFor(asCut(mounting, dialog.record()), *done));
}

/// Somebody else may have cut it, or changed its order, since it was listed: then the list is read anew.
bool BenchPage::stillWaits(const shop::BenchMounting& mounting) {
    bool waits = false;
    const bool read = session_.attempt([&] {
        const auto ticket = store::Tickets{session_.shop().connection}.ofMounting(mounting.mounting.id);
        for (const auto& each : ticket.mountings)
            if (each.id == mounting.mounting.id) waits = each.state == store::MountingState::Planned;
    });
    if (waits || !read) return waits;
    session_.touch();
    session_.warn(tr("%1 on ticket %2 waits no more: it is cut or changed already. The list is read anew.")
                      .arg(text(mounting.piece.code), text(mounting.ticket)));
    return false;
}

QString BenchPage::wordsFor(const shop::BenchMounting& mounting, const shop::CutDone& done) const {
    QStringList words{tr("Booked: %1 from %2.").arg(shownCuts(mounting), text(mounting.piece.code))};
    words << orderWords(done.orders);
    if (!done.voided.empty())
        words << tr("The rest is too narrow for %n tickets that wait; plan what is missing in Orders.",
                    nullptr, static_cast<int>(done.voided.size()));
    words << tr("Labels are in %1.").arg(session_.papersFolder());
    return words.join(QLatin1Char(' '));
}

/// Which orders may be handed over now, and which not yet.
QStringList BenchPage::orderWords(const std::vector<shop::OrderAfter>& orders) {
    QStringList ready, words;
    for (const shop::OrderAfter& order : orders)
        if (order.missing == 0)
            ready << text(order.code);
        else
            words << tr("Still to be cut for order %1: %2.", "code, number of belts")
                         .arg(text(order.code))
                         .arg(order.missing);
    if (ready.size() == 1) words.prepend(tr("Order %1 is ready to be handed over.").arg(ready.front()));
    if (ready.size() > 1)
        words.prepend(tr("Orders %1 are ready to be handed over.").arg(ready.join(QStringLiteral(", "))));
    return words;
}

void BenchPage::recordMiscut() {
    if (!currentMounting()) return;
    const shop::BenchMounting mounting = model_->mounting(list_->currentIndex().row());
    MiscutDialog dialog{mounting, this};
    std::optional<shop::Replanned> done;
    while (!done) {
        if (!stillWaits(mounting) || dialog.exec() != QDialog::Accepted) return;
        session_.attempt([&] { done = shop::recordMiscut(session_.shop(), dialog.miscut()); });
    }
    bookMiscut(mounting, dialog.miscut(), *done);
}

/// Papers and words for what was booked.
void BenchPage::bookMiscut(const shop::BenchMounting& mounting, const shop::Miscut& miscut,
                           const shop::Replanned& done) {
    QStringList words{tr("The miscut is booked.")};
    words << orderWords(done.orders);
    session_.attempt([&] {
        if (done.remnant) PaperTray{session_}.labels({*done.remnant});
        PaperTray{session_}.beltLabels(asCut(mounting, miscut));
        if (done.ticket)
            words << tr("The new ticket is in %1.").arg(PaperTray{session_}.ticket(*done.ticket));
    });
    if (!done.unserved.empty()) words << tr("Not all can be cut from what is here; the order waits.");
    session_.touch();
    enterSleeps_ = true;
    session_.tell(words.join(QLatin1Char(' ')));
}

void BenchPage::openOrder() {
    if (!currentMounting()) return;
    const shop::BenchMounting& mounting = model_->mounting(list_->currentIndex().row());
    std::vector<WhichOrderDialog::Choice> orders;
    if (!session_.attempt([&] { orders = ordersOf(mounting, session_.shop().connection); })) return;
    std::optional<store::OrderId> chosen;
    if (orders.size() == 1) chosen = orders.front().order;
    if (orders.size() > 1) chosen = WhichOrderDialog::ask(orders, this);
    if (chosen) OrderDialog{session_, *chosen, this}.exec();
    enterSleeps_ = true;
}

/// The next one in the order of the shop.
void BenchPage::changeCutter() {
    if (!currentMounting()) return;
    const shop::BenchMounting mounting = model_->mounting(list_->currentIndex().row());
    const std::vector<store::ShopCutter>& cutters = session_.settings().cutters;
    const auto now = std::find_if(cutters.begin(), cutters.end(), [&](const store::ShopCutter& each) {
        return each.id == mounting.cutter.id;
    });
    const store::ShopCutter& next =
        now == cutters.end() || now + 1 == cutters.end() ? cutters.front() : *(now + 1);
    if (!session_.attempt([&] { shop::putOnCutter(session_.shop(), mounting.mounting.id, next.id); })) return;
    const QString name = text(next.cutter.name);
    session_.touch();
    enterSleeps_ = true;
    session_.tell(tr("%1 is to be cut on %2.").arg(text(mounting.piece.code), name));
}

/// What was to become ready belts stays with the piece.
void BenchPage::giveUp() {
    if (!currentMounting()) return;
    const shop::BenchMounting mounting = model_->mounting(list_->currentIndex().row());
    if (!session_.attempt([&] { shop::giveUpForShelf(session_.shop(), mounting.mounting.id); })) return;
    QString words = tr("Nothing of %1 is cut for the shelf.").arg(text(mounting.piece.code));
    if (!mounting.mounting.onlyForShelf())
        session_.attempt([&] {
            const auto ticket = store::Tickets{session_.shop().connection}.ofMounting(mounting.mounting.id);
            words += QLatin1Char(' ') + tr("Ticket %1 as it is now is in %2.")
                                            .arg(text(ticket.code), PaperTray{session_}.ticket(ticket.id));
        });
    session_.touch();
    enterSleeps_ = true;
    session_.tell(words);
}

void BenchPage::cutTogether() {
    TogetherDialog{session_, this}.exec();
    enterSleeps_ = true;
}

void BenchPage::openOrders() {
    OrdersDialog{session_, this}.exec();
    enterSleeps_ = true;
}

void BenchPage::printTicket() {
    if (!currentMounting()) return;
    session_.attempt([&] {
        const auto ticket = store::Tickets{session_.shop().connection}.ofMounting(*currentMounting());
        PaperTray{session_}.printTicket(ticket.id, this);
    });
}

} // namespace riband::ui
