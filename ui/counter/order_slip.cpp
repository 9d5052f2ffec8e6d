#include "ui/counter/order_slip.h"

#include "core/measure/text.h"
#include "ui/counter/slip_delegate.h"
#include "ui/counter/slip_model.h"
#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/look/slip.h"
#include "ui/words/due_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

OrderSlip::OrderSlip(Session& session, const SlipActions& actions, QWidget* parent)
    : QWidget{parent}, session_{session}, model_{new SlipModel{this}}, list_{new QListView},
      title_{label({}, "part")}, who_{label({}, "remark")}, total_{label({}, "total")}, net_{label({})},
      tax_{label({})}, taxName_{label({}, "remark")} {
    setAccessibleName(tr("Order"));
    buildView(actions);
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) {
                if (current.isValid() && current.row() < static_cast<int>(added_))
                    setChosen(static_cast<std::size_t>(current.row()));
                showPrice();
            });
}

void OrderSlip::buildView(const SlipActions& actions) {
    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(0, 0, 0, 0);
    auto* paper = new Slip;
    outer->addWidget(paper);
    auto* column = new QVBoxLayout{paper};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    auto* head = new QHBoxLayout;
    head->addWidget(title_, 1);
    head->addWidget(who_);
    column->addLayout(head);
    list_->setModel(model_);
    list_->setItemDelegate(new SlipDelegate{list_});
    list_->setAccessibleName(tr("Lines of the order"));
    list_->setFrameShape(QFrame::NoFrame);
    list_->setStyleSheet(QStringLiteral("background: transparent; border: none;"));
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(list_, 1);
    buildBreakdown();
    column->addWidget(surface("line"));
    column->addWidget(breakdownBox_);
    column->addWidget(surface("line"));
    auto* sums = new QGridLayout;
    sums->setVerticalSpacing(step);
    sums->setColumnStretch(0, 1);
    sums->addWidget(label(tr("Net"), "remark"), 0, 0);
    sums->addWidget(net_, 0, 1, Qt::AlignRight);
    sums->addWidget(taxName_, 1, 0);
    sums->addWidget(tax_, 1, 1, Qt::AlignRight);
    sums->addWidget(label(tr("Total"), "part"), 2, 0, Qt::AlignBottom);
    sums->addWidget(total_, 2, 1, Qt::AlignRight);
    column->addLayout(sums);
    column->addSpacing(2 * step);
    column->addWidget(buildButtons(actions));
}

QWidget* OrderSlip::buildButtons(const SlipActions& actions) {
    auto* box = new QWidget;
    auto* grid = new QGridLayout{box};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(2 * step);
    order_ = new KeyButton{actions.order, KeyButton::Rank::Likely};
    quote_ = new KeyButton{actions.quote};
    park_ = new KeyButton{actions.park};
    customer_ = new KeyButton{actions.customer};
    keys_ = grid;
    grid->addWidget(order_, 0, 0, 1, 6);
    grid->addWidget(quote_, 1, 0, 1, 2);
    grid->addWidget(park_, 1, 2, 1, 2);
    grid->addWidget(customer_, 1, 4, 1, 2);
    return box;
}

void OrderSlip::rankKeys(bool forbidden) {
    KeyButton* likely = forbidden ? quote_ : order_;
    KeyButton* other = forbidden ? order_ : quote_;
    if (keys_->itemAtPosition(0, 0)->widget() == likely) return;
    for (KeyButton* key : {order_, quote_, park_, customer_})
        keys_->removeWidget(key);
    keys_->addWidget(likely, 0, 0, 1, 6);
    keys_->addWidget(other, 1, 0, 1, forbidden ? 6 : 2); // what is written on it needs a row of its own then
    keys_->addWidget(park_, forbidden ? 2 : 1, forbidden ? 0 : 2, 1, forbidden ? 3 : 2);
    keys_->addWidget(customer_, forbidden ? 2 : 1, forbidden ? 3 : 4, 1, forbidden ? 3 : 2);
    likely->setRank(KeyButton::Rank::Likely);
    other->setRank(KeyButton::Rank::Plain);
}

void OrderSlip::show(const OrderInHand& hand, const std::optional<SlipLine>& pending) {
    const int keep = list_->currentIndex().row();
    model_->setLines(hand, pending, session_.currency());
    const bool more = hand.lines().size() > added_;
    added_ = hand.lines().size();
    if (added_ == 0)
        setChosen(std::nullopt);
    else if (hand.editing())
        setChosen(hand.editing());
    else
        setChosen(more ? added_ - 1 : std::min(chosen_.value_or(added_ - 1), added_ - 1));
    showHead(hand);
    const int last = model_->rowCount() - 1;
    if (last >= 0) {
        const bool open = pending.has_value();
        const int row = hand.editing() ? static_cast<int>(*hand.editing()) : (open || keep < 0) ? last : keep;
        list_->setCurrentIndex(model_->index(std::min(row, last), 0));
    }
    showPrice();
}

void OrderSlip::showHead(const OrderInHand& hand) {
    title_->setText(hand.insteadCode.empty() ? tr("New order") : tr("Order %1").arg(text(hand.insteadCode)));
    const QString who = hand.customer.empty() ? tr("walk-in") : text(hand.customer);
    who_->setText(hand.due
                      ? tr("%1 · by %2", "customer, a time").arg(who, shownDue(*hand.due, session_.today()))
                      : who);
}

void OrderSlip::setChosen(std::optional<std::size_t> line) {
    chosen_ = line;
    model_->setChosen(line);
}

void OrderSlip::choose(int by) {
    if (!chosen_) return;
    const int last = static_cast<int>(added_) - 1;
    const int row = std::clamp(static_cast<int>(*chosen_) + by, 0, last);
    setChosen(static_cast<std::size_t>(row));
    if (model_->rowCount() > static_cast<int>(added_)) // what is typed stays the current one
        list_->scrollTo(model_->index(row, 0));
    else
        list_->setCurrentIndex(model_->index(row, 0));
}

ListRows OrderSlip::lines() const {
    ListRows list{QStringLiteral("order-lines"),
                  {tr("How many"), tr("Belt"), tr("Width"), tr("As said"), tr("Amount without tax")}};
    for (int row = 0; row < model_->rowCount(); ++row) {
        const SlipLine& line = model_->line(row);
        list.rows.push_back({QString::number(line.line.quantity), text(line.belt.designation),
                             shown(line.line.extent), text(line.line.said),
                             shown(line.price.net, session_.currency())});
    }
    return list;
}

/// The labels stay and only their words change: making them anew would cost more than all the rest of a key.
void OrderSlip::buildBreakdown() {
    breakdownBox_ = new QWidget;
    auto* grid = new QGridLayout{breakdownBox_};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(step);
    grid->setColumnStretch(0, 1);
    for (std::size_t row = 0; row < breakdown_.size(); ++row) {
        breakdown_[row] = {label({}, "remark"), label({}, "remark")};
        breakdown_[row].what->setWordWrap(true);
        grid->addWidget(breakdown_[row].what, static_cast<int>(row), 0);
        grid->addWidget(breakdown_[row].amount, static_cast<int>(row), 1, Qt::AlignRight);
    }
}

void OrderSlip::showBreakdown(const std::vector<PriceLine>& lines) {
    for (std::size_t row = 0; row < breakdown_.size(); ++row) {
        const bool used = row < lines.size();
        breakdown_[row].what->setText(used ? lines[row].what : QString{});
        breakdown_[row].amount->setText(used ? lines[row].amount : QString{});
        breakdown_[row].what->setVisible(used);
        breakdown_[row].amount->setVisible(used);
    }
    breakdownBox_->setVisible(!lines.empty());
}

void OrderSlip::showPrice() {
    const store::PriceRules& rules = session_.settings().prices;
    std::vector<store::LinePrice> prices;
    for (int row = 0; row < model_->rowCount(); ++row)
        prices.push_back(model_->line(row).price);
    const int current = list_->currentIndex().row();
    if (current >= 0 && current < model_->rowCount()) {
        const SlipLine& line = model_->line(current);
        showBreakdown(priceLines(line.price, line.belt.price, line.line.extent, line.line.quantity, rules));
    } else
        showBreakdown({});
    const store::LinePrice sum = shop::sumOf(prices);
    net_->setText(shown(sum.net, rules.currency));
    taxName_->setText(tr("Tax %1 %").arg(text(printPercent(rules.tax))));
    tax_->setText(shown(sum.tax, rules.currency));
    total_->setText(shown(sum.total, rules.currency));
}

} // namespace riband::ui
