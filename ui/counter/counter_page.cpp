#include "ui/counter/counter_page.h"

#include "core/shop/delivery_time.h"
#include "core/shop/kept.h"

#include "ui/counter/advice.h"
#include "ui/counter/choice_list.h"
#include "ui/counter/evidence_strip.h"
#include "ui/counter/pick_form.h"
#include "ui/counter/substitutes.h"
#include "ui/counter/suggestion_card.h"
#include "ui/counter/understood_strip.h"
#include "ui/counter/ways_delegate.h"
#include "ui/counter/ways_model.h"
#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

// How the Counter shows what is said; what it does is in counter_acts.cpp and counter_order.cpp.

namespace riband::ui {

namespace {
constexpr int SlipWidth = 392;
} // namespace

CounterPage::CounterPage(Session& session, QWidget* parent)
    : Page{parent}, session_{session}, inquiry_{session.tables()}, evidence_{session.tables()},
      choosing_{new Reading{session, this}}, here_{new StockReader{session, this}},
      advice_{new Advice{session, this}}, line_{new QLineEdit},
      understood_{new UnderstoodStrip{session.tables()}}, strip_{new EvidenceStrip{session.tables()}},
      choices_{new ChoiceList}, below_{new QStackedWidget}, card_{new SuggestionCard}, hint_{new QWidget},
      waysModel_{new WaysModel{this}}, ways_{new QListView}, pickForm_{new PickForm{session}} {
    setObjectName(QStringLiteral("counter"));
    buildActions();
    buildView();
    buildEvidence();
    connectAll();
    start();
}

void CounterPage::buildView() {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(5 * step, 5 * step, 5 * step, 5 * step);
    row->setSpacing(6 * step);
    row->addWidget(buildLeft(), 1);
    slip_ = new OrderSlip{session_, actions_};
    slip_->setFixedWidth(SlipWidth);
    row->addWidget(slip_);
}

QWidget* CounterPage::buildLeft() {
    line_->setProperty("use", "main");
    line_->setPlaceholderText(tr("type or scan anything"));
    line_->setAccessibleName(tr("What the customer wants: a belt, a code, a customer"));
    line_->installEventFilter(this);
    below_->addWidget(buildAdvice());
    below_->addWidget(pickForm_);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4 * step);
    column->addWidget(line_);
    column->addWidget(understood_);
    column->addWidget(strip_);
    column->addWidget(choices_);
    column->addWidget(below_, 1);
    return box;
}

QWidget* CounterPage::buildAdvice() {
    buildHint();
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3 * step);
    column->addWidget(hint_);
    column->addWidget(card_);
    column->addWidget(buildWays(), 1);
    column->addStretch();
    return box;
}

/// While nothing is typed: what can be.
void CounterPage::buildHint() {
    auto* grid = new QGridLayout{hint_};
    grid->setContentsMargins(0, 2 * step, 0, 0);
    grid->setHorizontalSpacing(6 * step);
    grid->setVerticalSpacing(2 * step);
    grid->setColumnStretch(1, 1);
    grid->addWidget(label(tr("What does the customer say?"), "head"), 0, 0, 1, 2);
    const std::pair<QString, QString> hints[] = {
        {tr("3 x H8M 1200 30"), tr("profile, length, width and how many, in any order")},
        {tr("322L075"), tr("what is printed on the old belt")},
        {tr("6 PJ 47 inch"), tr("ribs, and inches")},
        {tr("scan"), tr("a piece, a ticket or an order, to see it")},
        {tr("Ctrl+W"), tr("no code, but the old belt: measure it")},
        {tr("F5"), tr("what pulley he brings, and what a tape says")},
        {tr("Ctrl+D"), tr("two pulleys and their distance instead of a belt")},
        {tr("F4"), tr("pick from drawings and lists instead")},
        {tr("F7"), tr("take up a parked or quoted order")}};
    int row = 1;
    for (const auto& [typed, means] : hints) {
        grid->addWidget(label(typed, "strong"), row, 0);
        grid->addWidget(label(means), row++, 1);
    }
}

QWidget* CounterPage::buildWays() {
    ways_->setModel(waysModel_);
    ways_->setItemDelegate(new WaysDelegate{ways_});
    ways_->setAccessibleName(tr("Other ways"));
    ways_->setUniformItemSizes(true);
    ways_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    waysBox_ = new QWidget;
    auto* column = new QVBoxLayout{waysBox_};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step);
    auto* head = new QHBoxLayout;
    head->addWidget(label(tr("Other ways"), "strong"), 1);
    head->addWidget(label(tr("↓ to choose"), "remark"));
    column->addLayout(head);
    column->addWidget(ways_, 1);
    return waysBox_;
}

void CounterPage::connectAll() {
    connect(line_, &QLineEdit::textChanged, this, &CounterPage::lineChanged);
    connect(line_, &QLineEdit::returnPressed, this, &CounterPage::enter);
    connect(choices_, &ChoiceList::picked, this, &CounterPage::take);
    connect(choices_, &ChoiceList::left, line_, qOverload<>(&QWidget::setFocus));
    connect(choices_, &ChoiceList::typed, this, &CounterPage::beginAnew);
    connect(advice_, &Advice::changed, this, &CounterPage::showAdvice);
    connect(here_, &StockReader::read, this, [this] {
        showEvidence();
        showAdvice();
    });
    connect(card_, &SuggestionCard::shelfWanted, this, [this](bool wanted) { advice_->setNoShelf(!wanted); });
    connect(pickForm_, &PickForm::picked, line_, &QLineEdit::setText);
    connect(pickForm_, &PickForm::done, this, &CounterPage::pickOrType);
    connect(ways_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) {
                if (current.isValid()) advice_->choose(static_cast<std::size_t>(current.row()));
            });
    new QShortcut{Qt::Key_Delete, &slip_->list(), this, &CounterPage::removeLine, Qt::WidgetShortcut};
    connect(&session_, &Session::settingsChanged, this, &CounterPage::showSlip);
}

QString CounterPage::help() const {
    return tr(
        "Type what is printed on the belt or what the customer says, or scan a label: profile, length, "
        "width and how many, in any order. The line below says what was understood; the card says which "
        "piece to cut, why, and what to cut for the shelf as well (F6 leaves that out). ↓ chooses another "
        "way, F3 says "
        "why. Enter puts the line on the order, F9 makes the order and its ticket. When "
        "something is open, Enter goes to the choices and a digit picks one; anything else that is typed or "
        "scanned begins the line anew.");
}

bool CounterPage::settled() const { return !choosing_->running() && !advice_->searching() && !here_->busy(); }

void CounterPage::refresh() {
    if (below_->currentWidget() == pickForm_) pickForm_->refresh();
    readTapeError();
    here_->forget();
    lineChanged(line_->text()); // the pieces may be others by now
    if (!line_->hasFocus()) line_->setFocus();
}

void CounterPage::typed(const QString& words) {
    line_->setFocus();
    line_->insert(words);
}

void CounterPage::beginAnew(const QString& words) {
    line_->setFocus();
    line_->selectAll();
    line_->insert(words);
}

void CounterPage::say(const QString& words) { line_->setText(words); }

void CounterPage::lineChanged(const QString& words) {
    inquiry_.say(words);
    showUnderstood();
}

void CounterPage::showUnderstood() {
    askChoices();
    if (const auto wanted = inquiry_.wanted()) {
        advice_->ask(*wanted, hand_.wishesWith(wanted->belt, {wanted->extent, wanted->quantity}));
        if (hand_.declinesShelf(wanted->belt)) advice_->setNoShelf(true);
    } else
        advice_->drop();
    showReading();
    showEvidence();
    enableActs();
    if (below_->currentWidget() == pickForm_) pickForm_->show(inquiry_);
}

/// What was to choose from stays until it is known what is.
void CounterPage::askChoices() {
    if (inquiry_.state() == Inquiry::State::Empty) {
        choosing_->drop();
        return choices_->show({});
    }
    const auto take = [this](const Choices& choices) {
        choices_->show(choices);
        showEvidence();
        showAdvice();
    };
    choosing_->start([inquiry = inquiry_](const shop::Shop& shop) { return choicesFor(inquiry, shop); }, take,
                     [take] { take({}); });
}

void CounterPage::showReading() {
    if (!inquiry_.reading() || !inquiry_.open().empty()) return understood_->clear();
    const auto* outlook = advice_->outlook();
    QStringList made;
    if (outlook && !outlook->belt.body.empty()) made << text(outlook->belt.body);
    if (outlook && !outlook->belt.cord.empty()) made << tr("%1 cord").arg(text(outlook->belt.cord));
    QStringList hard;
    if (outlook)
        for (const auto remark : shop::notMadeFor(session_.settings().cutters, outlook->belt))
            hard << ui::say(remark);
    understood_->show(*inquiry_.reading(), made.join(QStringLiteral(", ")), hard);
}

/// What was advised stays until the shop has been looked at: a card that goes and comes back would flicker.
void CounterPage::showAdvice() {
    if (advice_->looking()) return;
    showReading();
    const shop::Outlook* outlook = advice_->outlook();
    const shop::Way* way = advice_->way();
    hint_->setVisible(inquiry_.state() == Inquiry::State::Empty);
    if (!outlook || !way) {
        card_->setVisible(false);
        waysBox_->setVisible(false);
    } else if (way->plan.mountings.empty() && way->plan.taken.empty()) {
        showNothingHere();
    } else {
        showSuggestion(*outlook, *way);
        waysBox_->setVisible(waysModel_->rowCount() > 0);
    }
    showSlip();
}

void CounterPage::showSuggestion(const shop::Outlook& outlook, const shop::Way& way) {
    const shop::Suggestion& suggestion = *advice_->suggestion();
    const auto costs = session_.costsIn();
    QString why;
    if (advice_->why()) {
        why = ui::say(advice_->why()->key);
        if (!advice_->why()->words.empty()) why += QStringLiteral(", ") + text(advice_->why()->words);
    }
    ShownWay shown = shownWay(outlook, way, costs);
    if (const auto line = pending(); line && forbids(*line))
        shown.missing +=
            tr("Do not cut it here. Order it cut and finished from the belt's maker: F8 quotes it. The "
               "local rules and trained people decide.");
    card_->show(shown, {advice_->noShelf() ? QString{} : savingOf(outlook, suggestion, costs),
                        basisOf(suggestion), shownWay(outlook, *advice_->withShelf(), costs).shelf,
                        !advice_->noShelf(), advice_->choseOther(), why});
    card_->setThinking(advice_->searching());
    if (!advice_->choseOther()) waysModel_->setWays(outlook, suggestion.others, costs);
}

void CounterPage::showNothingHere() {
    const shop::Outlook& outlook = *advice_->outlook();
    QStringList sentences;
    if (outlook.pieces.empty())
        sentences << tr("There is no piece of this belt on the rack.");
    else
        sentences << shownWay(outlook, *advice_->way(), {}).missing;
    sentences << tr("F8 quotes it from a new sleeve of %1.").arg(shown(outlook.belt.newSleeve));
    const Wanted wanted = *inquiry_.wanted();
    const Extent taken = outlook.problem.rules.trim + wanted.extent * wanted.quantity;
    if (taken < outlook.belt.newSleeve)
        sentences << tr("%1 of it would stay here.").arg(shown(outlook.belt.newSleeve - taken));
    const int days = shop::deliveryDays(outlook.belt, session_.settings());
    if (days > 0) sentences << tr("Delivery takes about %n days.", nullptr, days);
    showSubstitutes();
    card_->showNone(tr("%1 is not here").arg(text(outlook.belt.designation)),
                    sentences.join(QLatin1Char(' ')));
    waysBox_->setVisible(false);
}

/// What could be sold in its place; nothing while it is still being looked up.
void CounterPage::showSubstitutes() {
    const belt::Reading& said = *inquiry_.reading();
    if (!choices_->isEmpty()) return;
    if (const auto* stock = here_->of(said.belt.profile))
        choices_->show(substituteChoices(said, *stock, session_.tables()));
}

std::optional<SlipLine> CounterPage::pending() const {
    const auto wanted = inquiry_.wanted();
    const shop::Outlook* outlook = advice_->outlook();
    if (!wanted || !outlook) return std::nullopt;
    SlipLine line{
        {wanted->belt, wanted->extent, wanted->quantity, inquiry_.said().toStdString(), {}, {}},
        outlook->belt,
        shop::priceOf(session_.settings().prices, outlook->belt.price, wanted->extent, wanted->quantity),
        {}};
    const shop::Way* way = advice_->way();
    if (way) {
        line.source = shownWay(*outlook, *way, {}).source.toStdString();
        line.cut = !way->plan.mountings.empty();
    }
    line.line.noShelf = advice_->noShelf();
    // A way of one's own holds for one line; several of one belt are planned together again.
    if (way && advice_->choseOther() && outlook->problem.lines.size() == 1) {
        line.line.way = way->plan;
        line.line.forShelf = way->forShelf;
        if (advice_->why()) {
            line.line.overrideKey = advice_->why()->key;
            line.line.overrideWords = advice_->why()->words;
        }
        for (const auto& piece : outlook->problem.pieces)
            line.line.wayPieces.push_back(piece.code);
    }
    return line;
}

void CounterPage::showSlip() {
    const auto now = pending();
    slip_->show(hand_, now);
    slip_->rankKeys(forbiddenLine() || (now && forbids(*now)));
    enableActs();
}

/// What is typed counts before the shop has been looked at: one who is quicker loses no key.
void CounterPage::enableActs() {
    const bool any = inquiry_.wanted() || !hand_.isEmpty();
    actions_.order->setEnabled(any && !lacks());
    actions_.quote->setEnabled(any);
    actions_.edit->setEnabled(!hand_.isEmpty());
    actions_.remove->setEnabled(!hand_.isEmpty());
    why_->setEnabled(advice_->choseOther());
    shelf_->setEnabled(advice_->withShelf() && advice_->withShelf()->fillsShelf());
    actions_.park->setText(any ? tr("Park") : tr("Parked"));
}

/// What is typed can't be cut from what is here, so it can't be ordered, only quoted.
bool CounterPage::lacks() const {
    const shop::Way* way = advice_->way();
    return way && !way->plan.unserved.empty();
}

bool CounterPage::chooseWay(int by) {
    advice_->lookNow();
    if (!waysBox_->isVisible()) return false;
    if (advice_->outlook() && advice_->outlook()->problem.lines.size() > 1) {
        session_.tell(
            tr("The lines of one belt are planned together, as suggested. Another way can be chosen "
               "for a belt that has one line."));
        return true;
    }
    const int row = ways_->currentIndex().isValid() ? ways_->currentIndex().row() + by : by - 1;
    if (row < 0) {
        ways_->setCurrentIndex({});
        ways_->clearSelection();
        advice_->choose(std::nullopt);
    } else if (row < waysModel_->rowCount())
        ways_->setCurrentIndex(waysModel_->index(row, 0));
    return true;
}

bool CounterPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched != line_ || event->type() != QEvent::KeyPress) return Page::eventFilter(watched, event);
    const auto& key = *static_cast<QKeyEvent*>(event);
    if (const QString digit = choices_->takeDigitBefore(key); !digit.isEmpty() && !key.text().isEmpty()) {
        beginAnew(digit + key.text()); // of a code that was scanned while something was open
        return true;
    }
    switch (key.key()) {
    case Qt::Key_Down:
        return chooseWay(1);
    case Qt::Key_Up:
        return ways_->currentIndex().isValid() && chooseWay(-1);
    case Qt::Key_Escape:
        escape();
        return true;
    default:
        return false;
    }
}

} // namespace riband::ui
