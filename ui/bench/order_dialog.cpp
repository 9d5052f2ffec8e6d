#include "ui/bench/order_dialog.h"

#include "core/shop/change.h"
#include "core/shop/cut.h"
#include "core/shop/order.h"
#include "ui/bench/change_line_dialog.h"
#include "ui/bench/order_lines_model.h"
#include "ui/bench/payment_action.h"
#include "ui/desk/labels.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QGridLayout>
#include <QHeaderView>
#include <QMessageBox>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

OrderDialog::OrderDialog(Session& session, store::OrderId order, QWidget* parent)
    : QDialog{parent}, session_{session}, id_{order}, lines_{new OrderLinesModel{this}},
      table_{new QTableView}, title_{label({}, "head")}, state_{label({}, "remark")}, note_{label({},
                                                                                                  "remark")} {
    resize(760, 480);
    buildActions();
    buildView();
    refresh();
}

QAction* OrderDialog::act(const QString& name, const QKeySequence& key, void (OrderDialog::*does)()) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

void OrderDialog::buildActions() {
    handOver_ = act(tr("Hand over"), Qt::Key_F9, &OrderDialog::handOver);
    paid_ = new PaymentAction{this};
    addAction(paid_);
    change_ = act(tr("Change the line"), Qt::Key_F2, &OrderDialog::changeLine);
    missing_ = act(tr("Plan what is missing"), Qt::Key_F5, &OrderDialog::planMissing);
    ticket_ = act(tr("Print the ticket"), QKeySequence::Print, &OrderDialog::printTicket);
    paper_ = act(tr("Print the order"), Qt::CTRL | Qt::SHIFT | Qt::Key_P, &OrderDialog::printOrder);
    takeUp_ = act(tr("Take up at the Counter"), Qt::Key_F8, &OrderDialog::takeUp);
    cancel_ = act(tr("Cancel the order"), Qt::CTRL | Qt::Key_Delete, &OrderDialog::cancelOrder);
}

void OrderDialog::buildView() {
    table_->setModel(lines_);
    table_->setAccessibleName(tr("Lines of the order"));
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    connect(table_, &QTableView::activated, this, &OrderDialog::changeLine);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(3 * step);
    column->addWidget(title_);
    column->addWidget(state_);
    column->addWidget(note_);
    column->addWidget(table_, 1);
    auto* buttons = new QGridLayout;
    buttons->setSpacing(2 * step);
    buttons->addWidget(new KeyButton{handOver_, KeyButton::Rank::Likely}, 0, 0, 1, 2);
    buttons->addWidget(new KeyButton{paid_}, 0, 2);
    buttons->addWidget(new KeyButton{change_}, 1, 0);
    buttons->addWidget(new KeyButton{missing_}, 1, 1);
    buttons->addWidget(new KeyButton{ticket_}, 1, 2);
    buttons->addWidget(new KeyButton{paper_}, 2, 0);
    buttons->addWidget(new KeyButton{takeUp_}, 2, 1);
    buttons->addWidget(new KeyButton{cancel_, KeyButton::Rank::Danger}, 2, 2);
    column->addLayout(buttons);
}

void OrderDialog::refresh() {
    session_.attempt([&] {
        store::Connection& connection = session_.shop().connection;
        order_ = store::Orders{connection}.at(id_);
        std::vector<std::string> designations;
        for (const auto& line : order_->lines)
            designations.push_back(store::Catalogue{connection}.at(line.belt).designation);
        lines_->setOrder(*order_, std::move(designations), session_.currency());
    });
    if (!order_) return;
    setWindowTitle(tr("Order %1").arg(text(order_->code)));
    setWhatsThis(
        tr("One order: what of it is cut, ready, missing. Lines can be changed until they are handed "
           "over; what is cancelled gives its pieces back to the rack."));
    title_->setText(windowTitle());
    const QString who = order_->customerName.empty() ? tr("walk-in") : text(order_->customerName);
    state_->setText(tr("%1 · %2 · made %3", "state, customer, day")
                        .arg(say(order_->state), who, shown(dayOf(order_->made))));
    note_->setText(text(order_->note));
    note_->setVisible(!order_->note.empty());
    if (lines_->rowCount() > 0) table_->selectRow(0);
    enableActions();
}

bool OrderDialog::missesBelts() const {
    bool found = false;
    session_.attempt([&] {
        for (const auto& missing : shop::missing(session_.shop()))
            found = found || missing.order == id_;
    });
    return found;
}

void OrderDialog::enableActions() {
    using store::OrderState;
    const bool live = order_->state == OrderState::Open || order_->state == OrderState::Ready;
    handOver_->setEnabled(order_->state == OrderState::Ready);
    takeUp_->setEnabled(order_->state == OrderState::Parked || order_->state == OrderState::Quoted);
    paid_->setEnabled(handOver_->isEnabled());
    change_->setEnabled(live);
    missing_->setEnabled(order_->state == OrderState::Open && missesBelts());
    cancel_->setEnabled(order_->state != OrderState::HandedOver && order_->state != OrderState::Cancelled);
    ticket_->setEnabled(lastTicket().has_value());
}

std::optional<store::TicketId> OrderDialog::lastTicket() const {
    std::optional<store::TicketId> last;
    session_.attempt([&] {
        for (const auto& ticket : store::Tickets{session_.shop().connection}.ofOrder(id_))
            if (ticket.state != store::TicketState::Void) last = ticket.id;
    });
    return last;
}

void OrderDialog::did(const QString& words) {
    session_.touch();
    session_.tell(words);
    refresh();
}

void OrderDialog::takeUp() {
    accept();
    emit session_.takeUpWanted(id_);
}

void OrderDialog::handOver() {
    if (!session_.attempt([&] { shop::handOver(session_.shop(), id_, paid_->kind()); })) return;
    did(tr("Order %1 is handed over.").arg(text(order_->code)));
    accept();
}

/// A change that would open a whole sleeve says so before it is made.
QString OrderDialog::objection(const store::OrderLine& line, Extent extent, std::int64_t quantity) {
    shop::ChangePlan plan;
    try {
        plan = shop::planChange(session_.shop(), line.id, extent, quantity);
    } catch (const shop::Refusal& refusal) {
        return say(refusal);
    }
    QStringList sleeves;
    for (const store::StockPiece& sleeve : plan.opened)
        sleeves << (sleeve.place.empty()
                        ? tr("%1, %2", "piece, width").arg(text(sleeve.code), shown(sleeve.extent))
                        : tr("%1 at %2, %3", "piece, place, width")
                              .arg(text(sleeve.code), text(sleeve.place), shown(sleeve.extent)));
    if (sleeves.isEmpty()) return {};
    const auto answer =
        QMessageBox::question(this, tr("Open a new sleeve?"),
                              tr("What is begun does not give it. This would open: %1. Change the line?")
                                  .arg(sleeves.join(QStringLiteral("; "))),
                              QMessageBox::Yes | QMessageBox::No, QMessageBox::Yes);
    return answer == QMessageBox::Yes
               ? QString{}
               : tr("Nothing is changed. Another width or number may need no new sleeve.");
}

void OrderDialog::changeLine() {
    const int row = table_->currentIndex().row();
    if (row < 0 || !change_->isEnabled()) return;
    const store::OrderLine line = lines_->line(row);
    std::optional<Extent> widest;
    if (!session_.attempt([&] { widest = shop::widestBelt(session_.shop(), line.belt); })) return;
    ChangeLineDialog dialog{line, lines_->index(row, 0).data().toString(), *widest,
                            [&](Extent extent, std::int64_t quantity) {
                                QString words = tr("The shop's file could not be read.");
                                session_.attempt([&] { words = objection(line, extent, quantity); });
                                return words;
                            },
                            this};
    if (dialog.exec() != QDialog::Accepted) return;
    std::optional<shop::Ordered> done;
    if (!session_.attempt(
            [&] { done = shop::change(session_.shop(), line.id, dialog.extent(), dialog.quantity()); }))
        return;
    tellChanged(*done);
}

void OrderDialog::tellChanged(const shop::Ordered& done) {
    QString file;
    session_.attempt([&] {
        PaperTray{session_}.labels(done.shelf);
        if (done.ticket) file = PaperTray{session_}.ticket(*done.ticket);
    });
    QString words = file.isEmpty()
                        ? tr("Order %1 is changed; nothing of it waits to be cut.").arg(text(order_->code))
                        : tr("Order %1 is changed. Its new ticket is in %2.").arg(text(order_->code), file);
    if (!done.shelf.empty())
        words +=
            QLatin1Char(' ') + tr("%n belts that were cut already go to the shelf, their labels are made.",
                                  nullptr, static_cast<int>(done.shelf.size()));
    did(words);
}

void OrderDialog::planMissing() {
    std::optional<shop::Planned> done;
    if (!session_.attempt([&] { done = shop::planMissing(session_.shop(), id_); })) return;
    if (done->ticket) session_.attempt([&] { PaperTray{session_}.ticket(*done->ticket); });
    did(done->unserved.empty() ? tr("All that was missing is planned.")
                               : tr("%n lines still want belts that are not here.", nullptr,
                                    static_cast<int>(done->unserved.size())));
}

void OrderDialog::printTicket() {
    if (const auto ticket = lastTicket())
        session_.attempt([&] { PaperTray{session_}.printTicket(*ticket, this); });
}

void OrderDialog::printOrder() {
    session_.attempt([&] { PaperTray{session_}.printOrder(id_, this); });
}

void OrderDialog::cancelOrder() {
    const auto answer = QMessageBox::question(
        this, tr("Cancel the order"),
        tr("Cancel order %1? Belts already cut become ready belts.").arg(text(order_->code)),
        QMessageBox::Yes | QMessageBox::No, QMessageBox::No);
    if (answer != QMessageBox::Yes) return;
    std::vector<store::PieceId> ready;
    if (!session_.attempt([&] { ready = shop::cancel(session_.shop(), id_); })) return;
    session_.attempt([&] { PaperTray{session_}.labels(ready); });
    did(ready.empty() ? tr("Order %1 is cancelled.").arg(text(order_->code))
                      : tr("Order %1 is cancelled; %n belts go to the shelf, their labels are made.", nullptr,
                           static_cast<int>(ready.size()))
                            .arg(text(order_->code)));
}

} // namespace riband::ui
