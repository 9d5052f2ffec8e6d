#include "ui/review/buy_part.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/desk/long_work.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/words/buying_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QMessageBox>
#include <QProgressBar>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

namespace {

constexpr int BudgetWidth = 150;

QLabel* sentence(const char* role) {
    QLabel* words = label({}, role);
    words->setWordWrap(true);
    return words;
}

} // namespace

BuyPart::BuyPart(Session& session, QWidget* parent)
    : ReviewPart{parent}, session_{session}, work_{new LongWork{session, this}}, model_{new BuyModel{this}},
      budget_{new QLineEdit}, every_{new QCheckBox{tr("&Every belt")}}, sum_{label({}, "part")},
      name_{label({}, "strong")}, why_{sentence("")}, forecast_{sentence("remark")},
      progress_{new QProgressBar}, table_{new QTableView} {
    buildActions();
    buildView();
    connect(work_, &LongWork::progress, this, [this](int percent) {
        progress_->setValue(percent);
        progress_->setVisible(true);
        stop_->setEnabled(true);
    });
    connect(work_, &LongWork::ended, this, [this] {
        progress_->setVisible(false);
        stop_->setEnabled(false);
    });
    connect(budget_, &QLineEdit::returnPressed, this, &BuyPart::reckon);
    connect(every_, &QCheckBox::toggled, this, &BuyPart::fill);
    connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, &BuyPart::showWhy);
}

void BuyPart::buildActions() {
    const auto act = [this](const QString& name, const QKeySequence& key, void (BuyPart::*does)()) {
        auto* action = new QAction{name, this};
        action->setShortcut(key);
        connect(action, &QAction::triggered, this, does);
        addAction(action);
        return action;
    };
    reckon_ = act(tr("Reckon"), Qt::Key_F5, &BuyPart::reckon);
    pdf_ = act(tr("List as PDF"), Qt::Key_F7, &BuyPart::makePdf);
    expect_ = act(tr("Expect it"), Qt::Key_F8, &BuyPart::expectIt);
    takeBack_ = act(tr("Take it back"), QKeySequence::Undo, &BuyPart::takeItBack);
    print_ = act(tr("Print the list"), Qt::Key_F9, &BuyPart::printList);
    stop_ = new QAction{tr("Stop"), this};
    stop_->setShortcut(Qt::Key_Escape);
    connect(stop_, &QAction::triggered, work_, &LongWork::stop);
    addAction(stop_);
    for (QAction* action : {stop_, pdf_, print_, expect_, takeBack_})
        action->setEnabled(false);
}

QWidget* BuyPart::buildBudget() {
    auto* row = new QHBoxLayout;
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2 * step);
    auto* words = label(tr("&Budget"));
    words->setBuddy(budget_);
    budget_->setAccessibleName(tr("Budget of the purchase list"));
    budget_->setPlaceholderText(tr("no limit"));
    budget_->setFixedWidth(BudgetWidth);
    every_->setAccessibleName(tr("Show every belt"));
    progress_->setAccessibleName(tr("Reckoning"));
    progress_->setTextVisible(false);
    progress_->setFixedHeight(3 * step);
    progress_->setVisible(false);
    row->addWidget(words);
    row->addWidget(budget_);
    row->addWidget(new KeyButton{reckon_, KeyButton::Rank::Likely});
    row->addWidget(new KeyButton{stop_});
    row->addWidget(progress_, 1);
    row->addStretch();
    row->addWidget(every_);
    auto* box = new QWidget;
    box->setLayout(row);
    return box;
}

void BuyPart::buildView() {
    table_->setModel(model_);
    table_->setAccessibleName(tr("Purchase list"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->setWordWrap(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(pressHeight);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    QFrame* reason = surface("advice");
    auto* inside = new QVBoxLayout{reason};
    inside->setSpacing(step);
    for (QLabel* words : {name_, why_, forecast_})
        inside->addWidget(words);
    auto* papers = new QHBoxLayout;
    papers->setSpacing(2 * step);
    papers->addWidget(sum_, 1);
    papers->addWidget(new KeyButton{expect_});
    papers->addWidget(new KeyButton{takeBack_});
    papers->addWidget(new KeyButton{pdf_});
    papers->addWidget(new KeyButton{print_});
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3 * step);
    column->addWidget(buildBudget());
    column->addWidget(table_, 1);
    column->addWidget(reason);
    column->addLayout(papers);
}

void BuyPart::show(const shop::Period&) {
    showWhatCanBeTakenBack();
    if (!work_->running()) reckon();
}

bool BuyPart::settled() const { return !work_->running(); }

void BuyPart::reckon() {
    std::optional<Money> budget;
    if (const QString typed = budget_->text().trimmed(); !typed.isEmpty()) {
        const auto read = readMoney(typed.toStdString(), session_.currency());
        if (!read || *read < Money::minor(0)) {
            session_.warn(read ? tr("A budget is not negative.") : tr("Budget: %1").arg(say(read.reason())));
            budget_->setFocus();
            return;
        }
        budget = *read;
    }
    work_->start(
        [budget](const shop::Shop& shop, const foresight::Work& work) {
            shop::BuyingOutlook outlook = shop::lookAtBuying(shop);
            shop::PurchaseList list = shop::purchaseList(outlook, budget, work);
            return Purchase{std::move(outlook), std::move(list)};
        },
        [this](Purchase purchase) { showPurchase(std::move(purchase)); });
}

void BuyPart::showPurchase(Purchase purchase) {
    purchase_ = std::make_shared<const Purchase>(std::move(purchase));
    for (QAction* action : {pdf_, print_})
        action->setEnabled(true);
    const shop::PurchaseList& list = purchase_->list;
    expect_->setEnabled(std::any_of(list.lines.begin(), list.lines.end(),
                                    [](const shop::PurchaseLine& line) { return line.sleeves > 0; }));
    const Currency& currency = session_.currency();
    sum_->setText(list.budget ? tr("%1 of %2 that should be bought")
                                    .arg(shownSum(list.cost, currency), shownSum(list.wanted, currency))
                              : tr("%1 in all").arg(shownSum(list.cost, currency)));
    fill();
}

void BuyPart::fill() {
    if (!purchase_) return;
    model_->show(purchase_, every_->isChecked());
    if (model_->rowCount() > 0) table_->selectRow(0);
    showWhy();
}

void BuyPart::showWhy() {
    const QModelIndex at = table_->currentIndex();
    if (!purchase_ || !at.isValid()) {
        name_->setText(purchase_ ? tr("Nothing needs to be bought.") : QString{});
        why_->clear();
        forecast_->clear();
        return;
    }
    const shop::PurchaseLine& line = model_->line(at.row());
    name_->setText(text(purchase_->outlook.belts[line.belt].belt.designation));
    why_->setText(whyOf(line, purchase_->outlook).join(QLatin1Char(' ')));
    forecast_->setText(tr("Sales: %1. Whole sleeves at which to order again: %2, then at once: %3.")
                           .arg(forecastOf(line, purchase_->outlook))
                           .arg(line.advice.reorderPoint)
                           .arg(line.advice.lot));
}

shop::ReportTable BuyPart::table() const {
    if (!purchase_) return {};
    auto rows = purchaseTable(purchase_->list, purchase_->outlook);
    shop::ReportTable table{std::move(rows.front()), {}};
    table.rows.assign(std::make_move_iterator(rows.begin() + 1), std::make_move_iterator(rows.end()));
    return table;
}

void BuyPart::makePdf() {
    if (!purchase_) return;
    session_.attempt([this] {
        session_.tell(tr("The purchase list is in %1.")
                          .arg(PaperTray{session_}.purchaseList(purchase_->list, purchase_->outlook)));
    });
}

/// Several deliveries are noted at once: what and when is asked first.
bool BuyPart::mayExpect(const std::vector<shop::Expectation>& deliveries) {
    QStringList all;
    Money cost = Money::minor(0);
    for (const shop::Expectation& delivery : deliveries) {
        QStringList goods;
        for (const shop::ExpectedGoods& line : delivery.lines) {
            goods << tr("%1 × %2, %3", "sleeves, belt, width")
                         .arg(line.sleeves)
                         .arg(text(belt::designation(line.belt)), shown(line.extent));
            cost = cost + line.costEach * line.sleeves;
        }
        all << tr("Due %1: %2.").arg(delivery.due ? shown(*delivery.due) : QString{}, goods.join(tr("; ")));
    }
    QMessageBox ask{
        QMessageBox::Question, tr("Expect it"),
        tr("Expect deliveries for %1 %2?")
            .arg(shownSum(cost, session_.currency()), text(std::string{session_.currency().code()})),
        QMessageBox::Ok | QMessageBox::Cancel, this};
    ask.setInformativeText(all.join(QLatin1Char('\n')) + QStringLiteral("\n\n") +
                           tr("They have no supplier yet: name it on the Rack (Shift+F8). Ctrl+Z here takes "
                              "all of them back while nothing has come."));
    ask.setDefaultButton(QMessageBox::Ok);
    return ask.exec() == QMessageBox::Ok;
}

/// What was ordered by this list is supply from now on, so that the next list does not order it again.
void BuyPart::expectIt() {
    if (!purchase_) return;
    const auto deliveries = shop::expectationsOf(purchase_->list, purchase_->outlook);
    if (!mayExpect(deliveries)) return;
    if (!session_.attempt([&] { shop::expectAll(session_.shop(), deliveries); })) return;
    expect_->setEnabled(false);
    showWhatCanBeTakenBack();
    session_.tell(tr("They are expected. The Rack shows them with Shift+F8; Ctrl+Z takes them back."));
    reckon();
}

/// The book knows the newest list of which nothing has come, whoever noted it, and when.
void BuyPart::showWhatCanBeTakenBack() {
    session_.attempt([this] { takeBack_->setEnabled(shop::lastExpectedList(session_.shop()).has_value()); });
}

/// A list of another day has been ordered by now: nobody takes that back without a thought.
bool BuyPart::mayTakeBack(const shop::ExpectedList& list) {
    if (list.day == printDate(session_.today())) return true;
    QMessageBox ask{QMessageBox::Question, tr("Take it back"),
                    tr("Is the purchase list of %1 not expected after all?").arg(text(list.day)),
                    QMessageBox::Ok | QMessageBox::Cancel, this};
    ask.setInformativeText(
        tr("Nothing of it has come. What was ordered from a supplier is still to be cancelled "
           "there."));
    ask.setDefaultButton(QMessageBox::Cancel);
    return ask.exec() == QMessageBox::Ok;
}

void BuyPart::takeItBack() {
    std::optional<shop::ExpectedList> list;
    if (!session_.attempt([&] { list = shop::lastExpectedList(session_.shop()); })) return;
    if (!list) return showWhatCanBeTakenBack();
    if (!mayTakeBack(*list)) return;
    if (!session_.attempt([&] { shop::takeBack(session_.shop(), list->deliveries); })) return;
    showWhatCanBeTakenBack();
    session_.tell(tr("Nothing of the list of %1 is expected any more.").arg(text(list->day)));
    reckon();
}

void BuyPart::printList() {
    if (!purchase_) return;
    session_.attempt(
        [this] { PaperTray{session_}.printPurchaseList(purchase_->list, purchase_->outlook, this); });
}

} // namespace riband::ui
