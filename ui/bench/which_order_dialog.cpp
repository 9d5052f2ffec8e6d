#include "ui/bench/which_order_dialog.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"

#include <QDialogButtonBox>
#include <QKeyEvent>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

WhichOrderDialog::WhichOrderDialog(const std::vector<Choice>& orders, QWidget* parent)
    : QDialog{parent}, list_{new QListWidget} {
    setWindowTitle(tr("Which order?"));
    setWhatsThis(tr("Belts of several orders are cut in this mounting: a digit, or Enter on a line, opens "
                    "that order."));
    setMinimumWidth(460);
    int digit = 0;
    for (const Choice& each : orders) {
        const QString who = each.customer.isEmpty() ? tr("walk-in") : each.customer;
        list_->addItem(tr("%1  %2 · %3 · %4", "digit, order, customer, belts")
                           .arg(++digit)
                           .arg(each.code, who, each.belts.join(QStringLiteral(", "))));
    }
    list_->setCurrentRow(0);
    list_->setAccessibleName(tr("Orders of this mounting"));
    list_->installEventFilter(this);
    connect(list_, &QListWidget::itemActivated, this, &QDialog::accept);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Open | QDialogButtonBox::Cancel};
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(2 * step);
    column->addWidget(label(tr("This mounting is for several orders. A digit opens one."), "remark"));
    column->addWidget(list_);
    column->addWidget(buttons);
    list_->setFocus();
}

/// A digit on the list is the answer; the list itself would only look for it.
bool WhichOrderDialog::eventFilter(QObject* watched, QEvent* event) {
    if (watched != list_ || event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
    const int row = static_cast<QKeyEvent*>(event)->key() - Qt::Key_1;
    if (row < 0 || row >= std::min(list_->count(), 9)) return QDialog::eventFilter(watched, event);
    list_->setCurrentRow(row);
    accept();
    return true;
}

std::size_t WhichOrderDialog::chosen() const {
    return static_cast<std::size_t>(std::max(0, list_->currentRow()));
}

std::optional<store::OrderId> WhichOrderDialog::ask(const std::vector<Choice>& orders, QWidget* parent) {
    WhichOrderDialog dialog{orders, parent};
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return orders[dialog.chosen()].order;
}

} // namespace riband::ui
