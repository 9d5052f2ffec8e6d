#include "ui/bench/bench_page.h"

#include "core/measure/code.h"
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
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

namespace {

constexpr int LeastListWidth = 340, MostListWidth = 520;

QStringList listRow(const shop::BenchMounting& mounting, const shop::MountingFor& whose) {
    return {text(mounting.ticket),
            text(mounting.order),
            text(mounting.customer),
            text(mounting.belt.designation),
            text(mounting.piece.code),
            text(mounting.piece.place),
            shown(mounting.piece.extent),
            shownCuts(mounting),
            whose.due ? shown(*whose.due) : QString{}};
}

bool mustNotBeMounted(const shop::BenchMounting& mounting) {
    const std::vector<Warning> warnings = warningsOf(mounting);
    return std::any_of(warnings.begin(), warnings.end(), [](const Warning& each) { return each.stop; });
}

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

} // namespace

BenchPage::BenchPage(Session& session, QWidget* parent)
    : Page{parent}, session_{session}, model_{new BenchModel{this}}, list_{new QListView},
      code_{new QLineEdit}, view_{new MountingView} {
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
    code_->setAccessibleName(tr("Code of a piece, a ticket or an order"));
    code_->setPlaceholderText(tr("scan or type a code"));
    code_->setToolTip(tr("A piece, a ticket or an order: what waits of it is chosen."));
    code_->installEventFilter(this);
    connect(code_, &QLineEdit::returnPressed, this, &BenchPage::takeCode);
    left->addWidget(code_);
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
    side_ = new QWidget;
    side_->setFixedWidth(LeastListWidth);
    side_->setLayout(left);
    left->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(5 * step, 5 * step, 5 * step, 5 * step);
    row->setSpacing(6 * step);
    row->addWidget(side_);
    row->addLayout(right, 1);
}

/// On a wide screen what waits can be read whole.
void BenchPage::resizeEvent(QResizeEvent* event) {
    side_->setFixedWidth(std::clamp(width() / 4, LeastListWidth, MostListWidth));
    Page::resizeEvent(event);
}

QString BenchPage::help() const {
    return tr(
        "What waits at the cutter, in the order that changes shafts least. Set up by the steps, cut at the "
        "stops, then press Enter or F9 and type the rest as you measured it: trim, belts and rest are "
        "booked at once, and labels are made. F6 books a belt that was spoiled and plans again. F8 finds "
        "what could be cut in fewer mountings; F7 puts the mounting on the next cutter, where the shop has "
        "more than one. Ctrl+Delete leaves out what the chosen mounting would cut for the shelf; its ticket "
        "is made anew. A code that is scanned or typed, of a piece, a ticket or an order, chooses what waits "
        "of it. After an act Enter sleeps until another mounting is chosen: F9 records.");
}

void BenchPage::count() {
    session_.attempt([&] { waiting_ = static_cast<int>(shop::bench(session_.shop()).size()); });
    emit waitingChanged();
}

void BenchPage::refresh() {
    const int at = list_->currentIndex().row();
    const auto before = at < 0 ? std::nullopt : std::optional{model_->mounting(at)};
    const bool many = session_.settings().cutters.size() > 1;
    const bool slept = enterSleeps_;
    session_.attempt([&] {
        std::vector<shop::BenchMounting> mountings = shop::bench(session_.shop());
        std::vector<shop::MountingFor> whose = shop::whoseAre(session_.shop(), mountings);
        model_->setMountings(std::move(mountings), std::move(whose), many, session_.today());
    });
    otherCutter_->setVisible(many);
    cutter_->setVisible(many);
    waiting_ = model_->rowCount();
    int again = before ? model_->rowOf(before->mounting.id) : -1;
    if (before && again < 0) again = model_->rowAfter(*before);
    choose(again);
    const store::MountingId* now = currentMounting();
    // What took the place of another was chosen by nobody.
    enterSleeps_ = slept || (before && (!now || *now != before->mounting.id));
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
        view_->show(*at, model_->whose(list_->currentIndex().row()), session_.today());
    else
        view_->clear();
}

void BenchPage::showTicket(store::TicketId ticket) {
    session_.attempt([&] { chooseByCode(store::Tickets{session_.shop().connection}.at(ticket).code); });
}

/// What is typed or scanned on this page is a code: there is nothing else to type.
void BenchPage::typed(const QString& words) {
    code_->setFocus();
    code_->insert(words);
}

bool BenchPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched != code_ || event->type() != QEvent::KeyPress) return Page::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape) code_->clear();
    if (key->key() != Qt::Key_Escape && key->key() != Qt::Key_Up && key->key() != Qt::Key_Down) return false;
    list_->setFocus();
    if (key->key() != Qt::Key_Escape) QCoreApplication::sendEvent(list_, event);
    return true;
}

/// It chooses, and never records: whoever scans the piece has not cut it yet.
void BenchPage::takeCode() {
    const QString typed = code_->text().trimmed();
    code_->clear();
    list_->setFocus();
    enterSleeps_ = true;
    if (typed.isEmpty()) return;
    session_.attempt([&] {
        const auto code = Code::read(typed.toStdString());
        const shop::Scanned found = shop::scan(session_.shop(), typed.toStdString());
        if (code && found.any()) return chooseByCode(code->text());
        session_.warn(
            tr("No piece, ticket or order is called %1. Scan its label again, or type its code.").arg(typed));
    });
}

void BenchPage::chooseByCode(const std::string& code) {
    const int row = model_->rowOfCode(code, list_->currentIndex().row());
    if (row >= 0) {
        const QModelIndex chosen = model_->index(row, 0);
        list_->setCurrentIndex(chosen);
        list_->scrollTo(chosen);
        session_.tell(tr("Chosen: %1. F9 records it when it is cut.").arg(chosen.data().toString()));
    } else
        session_.warn(notWaiting(shop::scan(session_.shop(), code), text(code)));
    enterSleeps_ = true;
}

QString BenchPage::notWaiting(const shop::Scanned& found, const QString& code) const {
    if (found.ticket) return tr("Nothing of ticket %1 waits to be cut.").arg(code);
    if (found.order) return tr("Nothing of order %1 waits to be cut.").arg(code);
    return tr("%1 is none of the pieces that wait to be cut. Put it back; the Rack (Ctrl+3) says what it is.")
        .arg(code);
}

/// One Enter too many, or a scanner that fires twice, must not record a cut that nobody has made: after an
/// act Enter sleeps until another mounting is chosen.
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
    std::optional<store::Order> order;
    session_.attempt([&] {
        const auto ticket = store::Tickets{session_.shop().connection}.ofMounting(mounting.mounting.id);
        if (ticket.order) order = store::Orders{session_.shop().connection}.at(*ticket.order);
    });
    if (order) OrderDialog{session_, order->id, this}.exec();
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

void BenchPage::saveShownList() {
    session_.attempt([&] {
        ListRows list{QStringLiteral("bench"),
                      {tr("Ticket"), tr("Order"), tr("Customer"), tr("Belt"), tr("Piece"), tr("Place"),
                       tr("Width"), tr("Cuts"), tr("Wanted by")}};
        for (int row = 0; row < model_->rowCount(); ++row)
            list.rows.push_back(listRow(model_->mounting(row), model_->whose(row)));
        session_.tell(tr("The list is in %1.").arg(saveList(session_, list)));
    });
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
