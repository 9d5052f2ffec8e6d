#include "ui/counter/parked_dialog.h"

#include "ui/desk/labels.h"
#include "ui/desk/list_file.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QDialogButtonBox>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

namespace {

QStringList cellsOf(const store::Order& order, const shop::Shop& shop) {
    QStringList lines;
    store::Catalogue catalogue{shop.connection};
    for (const auto& line : order.lines)
        lines << ParkedDialog::tr("%1 × %2, %3", "quantity, belt, width")
                     .arg(line.quantity)
                     .arg(text(catalogue.at(line.belt).designation), shown(line.extent));
    return {text(order.code), say(order.state),
            order.customerName.empty() ? ParkedDialog::tr("walk-in") : text(order.customerName),
            shown(dayOf(order.made)), lines.join(QStringLiteral("; "))};
}

QString rowOf(const store::Order& order, const shop::Shop& shop) {
    const QStringList cells = cellsOf(order, shop);
    return ParkedDialog::tr("%1 · %2 · %3 · %4\n%5", "code, state, customer, day, lines")
        .arg(cells[0], cells[1], cells[2], cells[3], cells[4]);
}

} // namespace

ParkedDialog::ParkedDialog(Session& session, std::optional<store::OrderId> last, QWidget* parent)
    : QDialog{parent}, session_{session}, list_{new QListWidget} {
    setWindowTitle(tr("Parked and quoted orders"));
    setWhatsThis(tr("Orders that were set aside or quoted. Enter takes one up again: its number stays, and "
                    "what is here is looked at anew."));
    auto* save = new QAction{tr("Save the list"), this};
    save->setShortcut(Qt::CTRL | Qt::Key_E);
    connect(save, &QAction::triggered, this, &ParkedDialog::saveShownList);
    addAction(save);
    resize(640, 420);
    buildView();
    session_.attempt([&] { fill(last); });
}

void ParkedDialog::buildView() {
    list_->setAccessibleName(windowTitle());
    auto* column = new QVBoxLayout{this};
    column->addWidget(label(tr("Enter takes one up again; Ctrl+E saves the list."), "remark"));
    column->addWidget(list_, 1);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    buttons->button(QDialogButtonBox::Ok)->setText(tr("&Take up"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(list_, &QListWidget::itemDoubleClicked, this, &QDialog::accept);
    column->addWidget(buttons);
}

void ParkedDialog::saveShownList() {
    ListRows list{QStringLiteral("parked"),
                  {tr("Order"), tr("State"), tr("Customer"), tr("Day"), tr("Lines")}};
    for (const store::Order& order : orders_)
        list.rows.push_back(cellsOf(order, session_.shop()));
    session_.attempt([&] { session_.tell(tr("The list is in %1.").arg(saveList(session_, list))); });
}

void ParkedDialog::fill(std::optional<store::OrderId> last) {
    store::Orders orders{session_.shop().connection};
    for (const auto state : {store::OrderState::Parked, store::OrderState::Quoted})
        for (auto& order : orders.inState(state))
            orders_.push_back(std::move(order));
    for (const auto& order : orders_)
        list_->addItem(rowOf(order, session_.shop()));
    const auto marked = std::find_if(orders_.begin(), orders_.end(),
                                     [&](const store::Order& order) { return last && order.id == *last; });
    list_->setCurrentRow(marked == orders_.end() ? list_->count() - 1
                                                 : static_cast<int>(marked - orders_.begin()));
    list_->setFocus();
}

std::optional<store::OrderId> ParkedDialog::chosen() const {
    const int row = list_->currentRow();
    if (row < 0) return std::nullopt;
    return orders_[static_cast<std::size_t>(row)].id;
}

} // namespace riband::ui
