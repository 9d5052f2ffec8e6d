#include "ui/which/which_dialog.h"

#include "core/store/measuring.h"
#include "ui/desk/labels.h"
#include "ui/desk/print.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/papers/gauge_card.h"
#include "ui/papers/papers.h"
#include "ui/which/answer_card.h"
#include "ui/which/candidates_delegate.h"
#include "ui/which/candidates_model.h"
#include "ui/which/errors_dialog.h"
#include "ui/which/gauge_dialog.h"
#include "ui/which/sample_form.h"
#include "ui/which/shape_tiles.h"
#include "ui/words/identify_words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QListView>
#include <QScrollArea>
#include <QShortcut>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr QSize usualSize{1300, 716};
constexpr int formWidth = 636;
} // namespace

WhichDialog::WhichDialog(Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, stock_{session}, identifier_{new Identifier{session, this}},
      form_{new SampleForm{session.tables()}}, card_{new AnswerCard{session.tables()}},
      model_{new CandidatesModel{session.tables(), stock_, this}}, list_{new QListView} {
    setWindowTitle(tr("Which belt is this?"));
    setWhatsThis(
        tr("Choose the shape of the teeth, lay the belt flat and measure what you can, in any order; "
           "each measure makes the answer surer. F3 goes to the measure that tells most. A figure "
           "may have an error of its own, 100.1 ±0.3."));
    setObjectName(QStringLiteral("which"));
    buildView();
    connect(form_, &SampleForm::changed, this, &WhichDialog::ask);
    connect(identifier_, &Identifier::answered, this, &WhichDialog::take);
    connect(identifier_, &Identifier::failed, &session_, &Session::warn);
    connect(&card_->measureNext(), &QAbstractButton::clicked, form_, &SampleForm::enterAsked);
    for (std::size_t i = 0; i < belt::identify::shapeCount; ++i)
        new QShortcut{Qt::ALT | static_cast<Qt::Key>(static_cast<int>(Qt::Key_1) + static_cast<int>(i)), this,
                      [this, i] { form_->shapes().toggle(i); }};
    showNothing();
    resize(usualSize);
}

void WhichDialog::buildView() {
    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(5 * step, 4 * step, 5 * step, 4 * step);
    outer->setSpacing(3 * step);
    auto* row = new QHBoxLayout;
    row->setSpacing(6 * step);
    form_->setFixedWidth(formWidth);
    row->addWidget(form_);
    row->addWidget(buildAnswer(), 1);
    outer->addLayout(row, 1);
    outer->addWidget(buildKeys());
}

QWidget* WhichDialog::buildAnswer() {
    list_->setModel(model_);
    list_->setItemDelegate(new CandidatesDelegate{list_});
    list_->setAccessibleName(tr("What it may be, likeliest first"));
    list_->setUniformItemSizes(true);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(list_, &QListView::activated, this, &WhichDialog::send);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addWidget(card_);
    auto* head = new QHBoxLayout;
    head->addWidget(label(tr("It may be"), "strong"), 1);
    head->addWidget(label(tr("↑ ↓ to choose"), "remark"));
    column->addLayout(head);
    column->addWidget(list_, 1);
    return box;
}

QAction* WhichDialog::act(const QString& name, const QKeySequence& key, const std::function<void()>& does) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

QWidget* WhichDialog::buildKeys() {
    auto* box = new QWidget;
    auto* row = new QHBoxLayout{box};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2 * step);
    QAction* acts[] = {act(tr("Other instrument"), Qt::Key_F2, [this] { form_->changeInstrument(); }),
                       act(tr("Errors"), Qt::Key_F6, [this] { setErrors(); }),
                       act(tr("Gauge on screen"), Qt::Key_F5, [this] { showGauge(); }),
                       act(tr("Print the gauge"), QKeySequence::Print, [this] { printGauge(); }),
                       act(tr("Clear"), Qt::CTRL | Qt::Key_Delete, [this] { clear(); })};
    for (QAction* action : acts)
        row->addWidget(new KeyButton{action});
    row->addStretch();
    otherwise_ = act({}, Qt::CTRL | Qt::Key_Return, [this] { sendOtherwise(); });
    otherwise_->setShortcuts({Qt::CTRL | Qt::Key_Return, Qt::CTRL | Qt::Key_Enter});
    row->addWidget(new KeyButton{otherwise_});
    send_ = new KeyButton{{}, {}, KeyButton::Rank::Likely};
    send_->setShownKey(Qt::Key_Return);
    connect(send_, &QAbstractButton::clicked, this, &WhichDialog::send);
    row->addWidget(send_);
    goesTo({});
    return box;
}

void WhichDialog::bring() {
    goesTo({});
    showNow();
}

void WhichDialog::bringFor(const QString& where) {
    goesTo(where);
    showNow();
}

/// Nowhere else: to the Counter.
void WhichDialog::goesTo(const QString& where) {
    elsewhere_ = !where.isEmpty();
    send_->setText(elsewhere_ ? tr("To %1", "the page it was called from").arg(where) : tr("To the Counter"));
    otherwise_->setText(elsewhere_ ? tr("To the Counter") : tr("Only compare"));
}

void WhichDialog::showNow() {
    stock_.forget();
    identifier_->forgetSales();
    readErrors();
    ask();
    open();
    form_->field(belt::identify::Measure::PitchOver).enter();
}

void WhichDialog::showNothing() {
    answer_.reset();
    model_->clear();
    form_->setAsked(std::nullopt);
    send_->setEnabled(false);
    otherwise_->setEnabled(false);
    if (const QString wrong = form_->wrong(); !wrong.isEmpty())
        card_->showWords(
            tr("That is no figure"),
            tr("%1: what stands there can't be measured on a belt. Type a number, for example 100.1, or with "
               "its own error 100.1 ±0.3; or clear it.")
                .arg(wrong));
    else
        card_->showWords(
            tr("Nothing is measured yet"),
            tr("Choose the shape, and lay the belt flat: how far is it over 20 teeth? Any measure will "
               "do, in any order."));
}

void WhichDialog::ask() {
    entered_ = false;
    const belt::identify::Sample sample = form_->sample();
    // A figure that is none must not be dropped without a word: nothing is answered until it is put right.
    if (belt::identify::faultOf(sample) || !form_->wrong().isEmpty()) {
        identifier_->drop();
        showNothing();
        return;
    }
    belt::identify::Wishes wishes;
    wishes.errors = form_->errors();
    identifier_->ask({sample, wishes});
}

void WhichDialog::take(const Identifier::Shared& answer) {
    answer_ = answer;
    model_->setAnswer(answer, form_->keepWidth());
    list_->setCurrentIndex(model_->index(0, 0));
    form_->setAsked(answer->found.next);
    card_->show(*answer);
    send_->setEnabled(chosen().has_value());
    otherwise_->setEnabled(chosen().has_value());
    if (entered_ && answer->found.settled) return send();
    entered_ = false; // the clerk should see that it is not settled
}

bool WhichDialog::settled() const { return !identifier_->busy() && !stock_.busy(); }

std::optional<MeasuredBelt> WhichDialog::chosen() const {
    if (!answer_ || answer_->found.contradictory() || model_->rowCount() == 0) return std::nullopt;
    const int row = std::max(0, list_->currentIndex().row());
    const auto& candidate = model_->candidate(row);
    MeasuredBelt measured{candidate.profile->name, candidate.belt, {}, candidate.probability};
    measured.byTheMetre = candidate.supply == belt::identify::Supply::ByTheMetre;
    if (candidate.probability < belt::identify::Wishes::usuallyCertain && model_->rowCount() > 1)
        measured.rival = nameOf(model_->candidate(row == 0 ? 1 : 0)).toStdString();
    if (candidate.width) measured.width = candidate.width->offered(form_->keepWidth());
    return measured;
}

void WhichDialog::choose(int by) {
    const int row = std::clamp(list_->currentIndex().row() + by, 0, std::max(0, model_->rowCount() - 1));
    list_->setCurrentIndex(model_->index(row, 0));
}

void WhichDialog::send() {
    if (!isVisible()) return;
    entered_ = identifier_->busy(); // what is shown is not yet the answer to what is typed
    if (entered_) return;
    const auto measured = chosen();
    if (!measured) return;
    hide();
    if (elsewhere_)
        emit taken(*measured);
    else
        emit sent(*measured);
}

/// From the Counter its line stays, and it says where that and the measures disagree.
void WhichDialog::sendOtherwise() {
    if (!isVisible() || identifier_->busy()) return;
    const auto measured = chosen();
    if (!measured) return;
    hide();
    if (elsewhere_)
        emit sent(*measured);
    else
        emit compared(*measured);
}

void WhichDialog::clear() {
    form_->clear();
    form_->field(belt::identify::Measure::PitchOver).enter();
}

/// The shop's errors, as they are kept now.
void WhichDialog::readErrors() {
    session_.attempt([&] { form_->setInstruments(store::readMeasuring(session_.shop().connection)); });
}

void WhichDialog::setErrors() {
    if (ErrorsDialog{session_, this}.exec() != QDialog::Accepted) return;
    readErrors();
    ask();
}

void WhichDialog::showGauge() {
    std::vector<std::string> first;
    for (int row = 0; row < model_->rowCount(); ++row)
        first.push_back(model_->candidate(row).profile->name);
    GaugeDialog{session_.tables(), first, this}.exec();
}

void WhichDialog::printGauge() {
    printPaper(
        ticketSize(session_.settings()),
        [this](QPagedPaintDevice& device) { paintGaugeCard(device, session_.tables()); }, this);
}

void WhichDialog::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Down:
        return choose(1);
    case Qt::Key_Up:
        return choose(-1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return send();
    default:
        QDialog::keyPressEvent(event);
    }
}

} // namespace riband::ui
