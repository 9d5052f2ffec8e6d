#include "ui/bench/bench_page.h"

#include "ui/bench/bench_delegate.h"
#include "ui/bench/bench_model.h"
#include "ui/bench/mounting_view.h"
#include "ui/desk/labels.h"
#include "ui/desk/list_file.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/words/cutting_steps.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QListView>
#include <QVBoxLayout>

#include <algorithm>

// How the Bench shows what waits; what it does is in bench_acts.cpp, codes are in bench_codes.cpp.

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
    right->addLayout(buildKeys());
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

QLayout* BenchPage::buildKeys() {
    keys_ = new QHBoxLayout;
    keys_->setSpacing(2 * step);
    recordKey_ = new KeyButton{record_, KeyButton::Rank::Likely};
    orderKey_ = new KeyButton{order_};
    otherCutter_ = new KeyButton{cutter_};
    for (auto* button : {recordKey_, new KeyButton{miscut_, KeyButton::Rank::Danger}, orderKey_, otherCutter_,
                         new KeyButton{print_}})
        keys_->addWidget(button);
    return keys_;
}

/// The large key is what is likely done next: to cut, or where it must not be cut here, to see to its order.
void BenchPage::rankKeys(bool forbidden) {
    forbidden_ = forbidden;
    record_->setText(forbidden ? tr("It was cut all the same") : tr("The cut is done"));
    for (auto [key, likely] : {std::pair{recordKey_, !forbidden}, std::pair{orderKey_, forbidden}}) {
        key->setRank(likely ? KeyButton::Rank::Likely : KeyButton::Rank::Plain);
        keys_->setStretchFactor(key, likely ? 1 : 0);
    }
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
        "of it. After an act Enter sleeps until another mounting is chosen: F9 records. Where a mounting "
        "must not be cut here, the large key opens its order instead.");
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
    rankKeys(at && mustNotBeMounted(*at));
    if (at)
        view_->show(*at, model_->whose(list_->currentIndex().row()), session_.today());
    else
        view_->clear();
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

} // namespace riband::ui
