#include "ui/bench/bench_page.h"

#include "core/shop/shelf_ticket.h"
#include "ui/bench/bench_delegate.h"
#include "ui/bench/bench_model.h"
#include "ui/bench/miscut_dialog.h"
#include "ui/bench/mounting_view.h"
#include "ui/bench/order_dialog.h"
#include "ui/bench/orders_dialog.h"
#include "ui/bench/record_dialog.h"
#include "ui/bench/together_dialog.h"
#include "ui/desk/labels.h"
#include "ui/desk/list_file.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/words/cutting_steps.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QListView>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

namespace {

constexpr int ListWidth = 340;

QStringList listRow(const shop::BenchMounting& mounting) {
    return {text(mounting.ticket),           text(mounting.order),      text(mounting.customer),
            text(mounting.belt.designation), text(mounting.piece.code), text(mounting.piece.place),
            shown(mounting.piece.extent),    shownCuts(mounting)};
}

bool mustNotBeMounted(const shop::BenchMounting& mounting) {
    const std::vector<Warning> warnings = warningsOf(mounting);
    return std::any_of(warnings.begin(), warnings.end(), [](const Warning& each) { return each.stop; });
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

} // namespace

BenchPage::BenchPage(Session& session, QWidget* parent)
    : Page{parent}, session_{session}, model_{new BenchModel{this}}, list_{new QListView},
      view_{new MountingView} {
    setObjectName(QStringLiteral("bench"));
    buildActions();
    buildView();
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &BenchPage::showCurrent);
    count();
}

QAction* BenchPage::act(const QString& name, const QKeySequence& key, void (BenchPage::*does)()) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

void BenchPage::buildActions() {
    record_ = act(tr("The cut is done"), Qt::Key_F9, &BenchPage::recordCut);
    miscut_ = act(tr("Miscut"), Qt::Key_F6, &BenchPage::recordMiscut);
    order_ = act(tr("Its order"), Qt::Key_F4, &BenchPage::openOrder);
    orders_ = act(tr("Orders at work"), Qt::Key_F5, &BenchPage::openOrders);
    together_ = act(tr("Cut together"), Qt::Key_F8, &BenchPage::cutTogether);
    giveUp_ = act(tr("Not for the shelf"), Qt::CTRL | Qt::Key_Delete, &BenchPage::giveUp);
    save_ = act(tr("Save the list"), Qt::CTRL | Qt::Key_E, &BenchPage::saveShownList);
    cutter_ = act(tr("On another cutter"), Qt::Key_F7, &BenchPage::changeCutter);
    print_ = act(tr("Print the ticket"), QKeySequence::Print, &BenchPage::printTicket);
}

void BenchPage::buildView() {
    list_->setModel(model_);
    list_->setItemDelegate(new BenchDelegate{list_});
    list_->setAccessibleName(tr("Waiting at the cutter"));
    list_->setFrameShape(QFrame::NoFrame);
    list_->setSpacing(1);
    list_->setResizeMode(QListView::Adjust);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(list_, &QListView::activated, this, &BenchPage::enter);
    connect(list_, &QListView::pressed, this, [this] { enterSleeps_ = false; });
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this] { enterSleeps_ = false; });
    auto* left = new QVBoxLayout;
    left->setSpacing(2 * step);
    left->addWidget(label(tr("Waiting, in the order that changes shafts least"), "remark"));
    left->addWidget(list_, 1);
    left->addWidget(new KeyButton{together_});
    left->addWidget(new KeyButton{orders_});
    left->addWidget(new KeyButton{giveUp_});
    left->addWidget(new KeyButton{save_});
    auto* right = new QVBoxLayout;
    right->setSpacing(3 * step);
    right->addWidget(view_, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(2 * step);
    recordKey_ = new KeyButton{record_, KeyButton::Rank::Likely};
    buttons->addWidget(recordKey_, 1);
    otherCutter_ = new KeyButton{cutter_};
    for (auto* button : {new KeyButton{miscut_, KeyButton::Rank::Danger}, new KeyButton{order_}, otherCutter_,
                         new KeyButton{print_}})
        buttons->addWidget(button);
    right->addLayout(buttons);
    auto* side = new QWidget;
    side->setFixedWidth(ListWidth);
    side->setLayout(left);
    left->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(5 * step, 5 * step, 5 * step, 5 * step);
    row->setSpacing(6 * step);
    row->addWidget(side);
    row->addLayout(right, 1);
}

QString BenchPage::help() const {
    return tr(
        "What waits at the cutter, in the order that changes shafts least. Set up by the steps, cut at the "
        "stops, then press Enter or F9 and type the rest as you measured it: trim, belts and rest are "
        "booked at once, and labels are made. F6 books a belt that was spoiled and plans again. F8 finds "
        "what could be cut in fewer mountings; F7 puts the mounting on the next cutter, where the shop has "
        "more than one. Ctrl+Delete leaves out what the chosen mounting would cut for the shelf; its ticket "
        "is "
        "made anew.");
}

void BenchPage::count() {
    session_.attempt([&] { waiting_ = static_cast<int>(shop::bench(session_.shop()).size()); });
    emit waitingChanged();
}

void BenchPage::refresh() {
    const int at = list_->currentIndex().row();
    const auto before = at < 0 ? std::nullopt : std::optional{model_->mounting(at)};
    const bool many = session_.settings().cutters.size() > 1;
    session_.attempt([&] { model_->setMountings(shop::bench(session_.shop()), many); });
    otherCutter_->setVisible(many);
    cutter_->setVisible(many);
    waiting_ = model_->rowCount();
    int again = before ? model_->rowOf(before->mounting.id) : -1;
    if (before && again < 0) again = model_->rowAfter(*before);
    choose(again);
    list_->setFocus();
    emit waitingChanged();
}

void BenchPage::choose(int row) {
    if (waiting_ > 0) list_->setCurrentIndex(model_->index(std::max(row, 0), 0));
    showCurrent();
}

const store::MountingId* BenchPage::currentMounting() const {
    const int row = list_->currentIndex().row();
    return row < 0 ? nullptr : &model_->mounting(row).mounting.id;
}

void BenchPage::showCurrent() {
    const bool any = currentMounting() != nullptr;
    for (QAction* action : {record_, miscut_, print_, cutter_})
        action->setEnabled(any);
    const shop::BenchMounting* at = any ? &model_->mounting(list_->currentIndex().row()) : nullptr;
    order_->setEnabled(at && !at->mounting.onlyForShelf());
    giveUp_->setEnabled(at && !at->forShelf().empty());
    recordKey_->setRank(at && mustNotBeMounted(*at) ? KeyButton::Rank::Plain : KeyButton::Rank::Likely);
    if (at)
        view_->show(*at);
    else
        view_->clear();
}

void BenchPage::showTicket(store::TicketId ticket) {
    session_.attempt([&] {
        const store::Ticket shown = store::Tickets{session_.shop().connection}.at(ticket);
        const int row = model_->rowOfTicket(shown.code);
        if (row >= 0)
            list_->setCurrentIndex(model_->index(row, 0));
        else
            session_.tell(tr("Nothing of ticket %1 waits to be cut.").arg(text(shown.code)));
    });
}

/// One Enter too many, or a scanner that fires twice, must not record a cut that nobody has made: after one
/// is recorded Enter sleeps until another mounting is chosen.
void BenchPage::enter() {
    if (enterSleeps_) return session_.tell(tr("F9 records the next cut, when it is made."));
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
        PaperTray{session_}.beltLabels(mounting);
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
    if (done.orderReady) words << tr("Order %1 is ready to be handed over.").arg(text(mounting.order));
    if (!done.voided.empty())
        words << tr("The rest is too narrow for %n tickets that wait; plan what is missing in Orders.",
                    nullptr, static_cast<int>(done.voided.size()));
    words << tr("Labels are in %1.").arg(session_.papersFolder());
    return words.join(QLatin1Char(' '));
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
    QString words = tr("The miscut is booked.");
    session_.attempt([&] {
        if (done->remnant) PaperTray{session_}.labels({*done->remnant});
        if (done->ticket)
            words += QLatin1Char(' ') +
                     tr("The new ticket is in %1.").arg(PaperTray{session_}.ticket(*done->ticket));
    });
    if (!done->unserved.empty())
        words += QLatin1Char(' ') + tr("Not all can be cut from what is here; the order waits.");
    session_.touch();
    session_.tell(words);
}

void BenchPage::openOrder() {
    if (!currentMounting()) return;
    const shop::BenchMounting& mounting = model_->mounting(list_->currentIndex().row());
    std::optional<store::Order> order;
    session_.attempt([&] {
        const auto ticket = store::Tickets{session_.shop().connection}.ofMounting(mounting.mounting.id);
        if (ticket.order) order = store::Orders{session_.shop().connection}.at(*ticket.order);
    });
    if (order) OrderDialog{session_, order->id, this}.exec();
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
    session_.tell(words);
}

void BenchPage::saveShownList() {
    session_.attempt([&] {
        ListRows list{QStringLiteral("bench"),
                      {tr("Ticket"), tr("Order"), tr("Customer"), tr("Belt"), tr("Piece"), tr("Place"),
                       tr("Width"), tr("Cuts")}};
        for (int row = 0; row < model_->rowCount(); ++row)
            list.rows.push_back(listRow(model_->mounting(row)));
        session_.tell(tr("The list is in %1.").arg(saveList(session_, list)));
    });
}

void BenchPage::cutTogether() { TogetherDialog{session_, this}.exec(); }

void BenchPage::openOrders() { OrdersDialog{session_, this}.exec(); }

void BenchPage::printTicket() {
    if (!currentMounting()) return;
    session_.attempt([&] {
        const auto ticket = store::Tickets{session_.shop().connection}.ofMounting(*currentMounting());
        PaperTray{session_}.printTicket(ticket.id, this);
    });
}

} // namespace riband::ui
