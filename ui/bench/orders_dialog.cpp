#include "ui/bench/orders_dialog.h"

#include "core/shop/order.h"
#include "ui/bench/order_dialog.h"
#include "ui/bench/orders_model.h"
#include "ui/bench/payment_action.h"
#include "ui/desk/labels.h"
#include "ui/desk/list_file.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

namespace riband::ui {

namespace {

QString beltsOf(const store::Order& order, const shop::Shop& shop) {
    QStringList belts;
    for (const auto& line : order.lines)
        belts << OrdersDialog::tr("%1 × %2, %3", "quantity, belt, width")
                     .arg(line.quantity - line.cancelled)
                     .arg(text(store::Catalogue{shop.connection}.at(line.belt).designation),
                          shown(line.extent));
    return belts.join(QStringLiteral("; "));
}

/// What is wanted soonest comes first, what has no time after it: what is ready, then the longest waiting.
void sortByDue(std::vector<OrdersModel::Row>& rows) {
    std::stable_sort(rows.begin(), rows.end(), [](const OrdersModel::Row& a, const OrdersModel::Row& b) {
        return a.order.due.value_or(Moment::max()) < b.order.due.value_or(Moment::max());
    });
}

std::vector<OrdersModel::Row> rowsOf(const shop::Shop& shop) {
    std::set<store::OrderId> missing;
    for (const auto& line : shop::missing(shop))
        missing.insert(line.order);
    std::vector<OrdersModel::Row> rows;
    for (const auto state : {store::OrderState::Ready, store::OrderState::Open})
        for (auto& order : store::Orders{shop.connection}.inState(state)) {
            const QString belts = beltsOf(order, shop);
            const bool lacks = missing.count(order.id) > 0;
            rows.push_back({std::move(order), belts, lacks});
        }
    sortByDue(rows);
    return rows;
}

} // namespace

OrdersDialog::OrdersDialog(Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, model_{new OrdersModel{this}}, table_{new QTableView} {
    setWindowTitle(tr("Orders at work"));
    setWhatsThis(tr("The orders at work. What is ready is handed over, what waits can be looked at or cut "
                    "together."));
    resize(940, 520);
    buildActions();
    buildView();
    refresh();
}

QAction* OrdersDialog::act(const QString& name, const QKeySequence& key, void (OrdersDialog::*does)()) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

void OrdersDialog::buildActions() {
    handOver_ = act(tr("Hand over"), Qt::Key_F9, &OrdersDialog::handOver);
    paid_ = new PaymentAction{this};
    addAction(paid_);
    open_ = act(tr("Open"), Qt::Key_F4, &OrdersDialog::openOrder);
    save_ = act(tr("Save the list"), Qt::CTRL | Qt::Key_E, &OrdersDialog::saveShownList);
    together_ = act(tr("Cut together"), Qt::Key_F5, &OrdersDialog::cutTogether);
}

void OrdersDialog::buildView() {
    table_->setModel(model_);
    table_->setAccessibleName(windowTitle());
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(OrdersModel::BeltsColumn, QHeaderView::Stretch);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    connect(table_, &QTableView::activated, this, &OrdersDialog::openOrder);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &OrdersDialog::enableActions);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(3 * step);
    column->addWidget(
        label(tr("Enter opens an order. Choose several with Shift to cut them together."), "remark"));
    column->addWidget(table_, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(2 * step);
    buttons->addWidget(new KeyButton{handOver_, KeyButton::Rank::Likely}, 1);
    buttons->addWidget(new KeyButton{paid_});
    buttons->addWidget(new KeyButton{open_});
    buttons->addWidget(new KeyButton{together_});
    buttons->addWidget(new KeyButton{save_});
    column->addLayout(buttons);
}

void OrdersDialog::saveShownList() {
    session_.attempt([&] {
        session_.tell(tr("The list is in %1.").arg(saveList(session_, *model_, QStringLiteral("orders"))));
    });
}

void OrdersDialog::refresh() {
    session_.attempt([&] { model_->setOrders(rowsOf(session_.shop())); });
    if (model_->rowCount() > 0) table_->selectRow(0);
    table_->setFocus();
    enableActions();
}

std::vector<store::OrderId> OrdersDialog::chosen(store::OrderState state) const {
    std::vector<store::OrderId> orders;
    for (const auto& index : table_->selectionModel()->selectedRows())
        if (model_->order(index.row()).state == state) orders.push_back(model_->order(index.row()).id);
    return orders;
}

void OrdersDialog::enableActions() {
    handOver_->setEnabled(!chosen(store::OrderState::Ready).empty());
    paid_->setEnabled(handOver_->isEnabled());
    together_->setEnabled(chosen(store::OrderState::Open).size() > 1);
    open_->setEnabled(table_->currentIndex().isValid());
}

void OrdersDialog::openOrder() {
    if (!table_->currentIndex().isValid()) return;
    OrderDialog{session_, model_->order(table_->currentIndex().row()).id, this}.exec();
    refresh();
}

void OrdersDialog::handOver() {
    int count = 0;
    for (const auto order : chosen(store::OrderState::Ready))
        if (session_.attempt([&] { shop::handOver(session_.shop(), order, paid_->kind()); })) ++count;
    if (count == 0) return;
    session_.touch();
    session_.tell(tr("%n orders are handed over.", nullptr, count));
    refresh();
}

void OrdersDialog::cutTogether() {
    std::optional<shop::Ordered> done;
    if (!session_.attempt([&] { done = shop::together(session_.shop(), chosen(store::OrderState::Open)); }))
        return;
    if (done->ticket)
        session_.attempt([&] {
            const QString file = PaperTray{session_}.ticket(*done->ticket);
            session_.tell(tr("One ticket for all of them is in %1.").arg(file));
        });
    session_.touch();
    refresh();
}

} // namespace riband::ui
