#include "ui/tally/settle_view.h"

#include "ui/desk/labels.h"
#include "ui/desk/paper_tray.h"
#include "ui/desk/who_dialog.h"
#include "ui/look/look.h"
#include "ui/words/count_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace riband::ui {

namespace {

constexpr int DetailWidth = 620;

QString nameOf(const shop::Finding& finding) {
    return finding.piece ? text(finding.piece->code) : QObject::tr("without label");
}

QString placeOf(const shop::Finding& finding) {
    return finding.place.empty() ? QObject::tr("no place") : text(finding.place);
}

QString rowOf(const shop::Finding& finding) {
    return QStringLiteral("%1 · %2 · %3\n%4")
        .arg(placeOf(finding), nameOf(finding), text(finding.belt), say(finding));
}

/// Rows that are read from the rack; the arrows come from the line.
QListWidget* farList() {
    auto* list = new QListWidget;
    list->setFocusPolicy(Qt::NoFocus);
    list->setWordWrap(true);
    list->setProperty("rows", "two");
    list->setResizeMode(QListView::Adjust);
    list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return list;
}

void addFar(QListWidget& list, const QString& words) {
    auto* item = new QListWidgetItem{words, &list};
    QFont font = list.font();
    font.setPixelSize(TextSize::Head);
    item->setFont(font);
}

} // namespace

SettleView::SettleView(Session& session, QWidget* parent)
    : QWidget{parent}, session_{session}, line_{new QLineEdit}, list_{farList()}, proposals_{farList()},
      asks_{label({}, "head")}, said_{label({}, "saidWarn")}, count_{label({}, "part")},
      head_{label({}, "typed")}, what_{label({}, "head")}, facts_{label({}, "strong")},
      may_{label(tr("What may have happened"), "part")}, keys_{label(tr("F9 books the marked line."),
                                                                     "remark")} {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6 * step);
    row->addWidget(buildLeft(), 1);
    row->addWidget(buildRight());
    connect(line_, &QLineEdit::textEdited, this, &SettleView::typed);
    connect(line_, &QLineEdit::textChanged, this, [this] { refused_ = false; });
    connect(line_, &QLineEdit::returnPressed, this, &SettleView::enter);
    connect(list_, &QListWidget::currentRowChanged, this, &SettleView::showFinding);
    connect(proposals_, &QListWidget::currentRowChanged, this, &SettleView::showFacts);
}

QWidget* SettleView::buildLeft() {
    line_->setProperty("use", "main");
    line_->setAccessibleName(tr("Scan a piece, or the number of what happened"));
    line_->installEventFilter(this);
    list_->setAccessibleName(tr("Differences to settle"));
    said_->setWordWrap(true);
    said_->hide();
    asks_->setWordWrap(true);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addWidget(asks_);
    column->addWidget(line_);
    column->addWidget(said_);
    column->addWidget(count_);
    column->addWidget(list_, 1);
    return box;
}

QWidget* SettleView::buildRight() {
    proposals_->setAccessibleName(tr("What may have happened"));
    what_->setWordWrap(true);
    facts_->setWordWrap(true);
    auto* frame = surface("sunk");
    frame->setFixedWidth(DetailWidth);
    auto* column = new QVBoxLayout{frame};
    column->setContentsMargins(4 * step, 3 * step, 4 * step, 3 * step);
    column->setSpacing(2 * step);
    column->addWidget(head_);
    column->addWidget(what_);
    column->addWidget(facts_);
    column->addWidget(may_);
    column->addWidget(proposals_, 1);
    column->addWidget(keys_);
    column->addStretch();
    return frame;
}

void SettleView::focusLine() {
    line_->setFocus();
    if (refused_) line_->selectAll();
}

void SettleView::say(const QString& words) {
    said_->setText(words);
    said_->setVisible(!words.isEmpty());
}

/// Digits alone mark at once; the code of a piece begins with one, and then what was marked before stays so.
void SettleView::typed(const QString& words) {
    say({});
    if (words.size() == 1) markedBefore_ = proposals_->currentRow();
    const bool digits = std::all_of(words.begin(), words.end(), [](QChar c) { return c.isDigit(); });
    const int number = words.isEmpty() || !digits ? 0 : words.back().digitValue();
    if (number >= 1 && number <= proposals_->count())
        proposals_->setCurrentRow(number - 1);
    else if (!digits)
        proposals_->setCurrentRow(markedBefore_);
}

void SettleView::enter() {
    const QString words = line_->text().trimmed();
    const bool digits = std::all_of(words.begin(), words.end(), [](QChar c) { return c.isDigit(); });
    say({});
    if (words.size() > 1 || !digits) choose(words);
    if (!refused_) line_->clear();
    focusLine();
}

/// By its piece, or the first of a place.
void SettleView::choose(const QString& words) {
    std::optional<store::StockPiece> piece;
    session_.attempt([&] { piece = shop::scan(session_.shop(), words.toStdString()).piece; });
    const auto found = std::find_if(findings_.begin(), findings_.end(), [&](const shop::Finding& finding) {
        return piece ? finding.piece && finding.piece->id == piece->id
                     : text(finding.place).compare(words, Qt::CaseInsensitive) == 0;
    });
    refused_ = found == findings_.end();
    if (!refused_)
        list_->setCurrentRow(static_cast<int>(found - findings_.begin()));
    else
        say(piece ? tr("Nothing of %1 waits to be settled.").arg(text(piece->code))
                  : tr("“%1” is no code of a piece, and nothing of a place of that name waits to be settled.")
                        .arg(words));
}

bool SettleView::eventFilter(QObject* watched, QEvent* event) {
    if (watched != line_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Escape) {
        line_->clear();
        say({});
        return true;
    }
    if ((key != Qt::Key_Down && key != Qt::Key_Up) || list_->count() == 0) return false;
    list_->setCurrentRow(
        std::clamp(list_->currentRow() + (key == Qt::Key_Down ? 1 : -1), 0, list_->count() - 1));
    return true;
}

void SettleView::refresh() {
    const int row = std::max(0, list_->currentRow());
    session_.attempt([this] { findings_ = shop::findings(session_.shop()); });
    list_->clear();
    for (const shop::Finding& finding : findings_)
        addFar(*list_, rowOf(finding));
    showWhetherOpen();
    if (list_->count() > 0) list_->setCurrentRow(std::min(row, list_->count() - 1));
    showFinding();
}

/// Where nothing is open, nothing is asked for either.
void SettleView::showWhetherOpen() {
    const bool open = !findings_.empty();
    asks_->setText(open ? tr("Scan a piece to choose its difference; a digit marks what happened")
                        : tr("Nothing waits here: what a count finds otherwise than the book comes here"));
    count_->setText(open ? tr("To settle: %1").arg(findings_.size())
                         : tr("Nothing is open: every difference is settled."));
    for (QWidget* each : std::initializer_list<QWidget*>{may_, proposals_, keys_, facts_})
        each->setVisible(open);
}

const shop::Finding* SettleView::current() const {
    const int row = list_->currentRow();
    if (row < 0 || row >= static_cast<int>(findings_.size())) return nullptr;
    return &findings_[static_cast<std::size_t>(row)];
}

void SettleView::showFinding() {
    const shop::Finding* finding = current();
    proposals_->clear();
    head_->setText(finding ? tr("%1 · %2", "piece, place").arg(nameOf(*finding), placeOf(*finding))
                           : tr("No difference"));
    what_->setText(finding ? QStringLiteral("%1: %2").arg(text(finding->belt), ui::say(*finding))
                           : tr("There is nothing to book. F4 counts on; F6 lists what was settled and takes "
                                "it back."));
    if (finding)
        session_.attempt([&] {
            int number = 0;
            for (const auto& proposal : finding->proposals)
                addFar(*proposals_, tr("%1   %2 %   %3", "number, likelihood, what")
                                        .arg(++number)
                                        .arg(std::lround(proposal.likelihood * 100))
                                        .arg(ui::say(proposal, *finding, session_.shop().connection)));
        });
    proposals_->setCurrentRow(proposals_->count() > 0 ? 0 : -1);
    showFacts();
}

QString SettleView::worthOf(const shop::Finding& finding) const {
    return tr("worth %1 %2")
        .arg(shown(finding.value, session_.currency()),
             QString::fromLatin1(session_.currency().code().data(),
                                 static_cast<qsizetype>(session_.currency().code().size())));
}

const shop::counting::Proposal* SettleView::marked() const {
    const shop::Finding* finding = current();
    const int row = proposals_->currentRow();
    if (!finding || row < 0 || row >= static_cast<int>(finding->proposals.size())) return nullptr;
    return &finding->proposals[static_cast<std::size_t>(row)];
}

void SettleView::showFacts() {
    const shop::Finding* finding = current();
    const shop::counting::Proposal* proposal = marked();
    QString words = finding ? worthOf(*finding) : QString{};
    if (proposal && shop::needsApproval(*finding, *proposal))
        words = tr("%1, more than the limit: the owner approves it", "worth").arg(words);
    facts_->setText(words);
}

ListRows SettleView::rows() const {
    ListRows list{QStringLiteral("differences"),
                  {tr("Place"), tr("Piece"), tr("Belt"), tr("Difference"), tr("Worth"),
                   tr("What may have happened"), tr("Likely, %")}};
    for (const shop::Finding& finding : findings_) {
        const bool known = !finding.proposals.empty();
        list.rows.push_back(
            {text(finding.place), nameOf(finding), text(finding.belt), ui::say(finding),
             shown(finding.value, session_.currency()),
             known ? ui::say(finding.proposals.front(), finding, session_.shop().connection) : QString{},
             known ? QString::number(std::lround(finding.proposals.front().likelihood * 100)) : QString{}});
    }
    return list;
}

bool SettleView::approved(const shop::Finding& finding, const shop::counting::Proposal& proposal,
                          std::optional<store::PersonId>& by) {
    if (!shop::needsApproval(finding, proposal) || session_.reaches(store::Role::Owner)) return true;
    WhoDialog dialog{
        session_.shop().connection, store::Role::Owner,
        tr("%1: %2. That is %3, more than the limit: the owner must approve it.", "piece, difference, worth")
            .arg(nameOf(finding), ui::say(finding), worthOf(finding)),
        this};
    if (dialog.exec() != QDialog::Accepted) return false;
    by = dialog.person();
    return true;
}

bool SettleView::accept() {
    if (!current() || !marked()) return false;
    const shop::Finding finding = *current();
    const shop::counting::Proposal proposal = *marked();
    std::optional<store::PersonId> by;
    if (!approved(finding, proposal, by)) return false;
    std::optional<shop::Settled> settled;
    line_->clear();
    say({});
    if (!session_.attempt(
            [&] { settled = shop::settle(session_.shop(), finding.difference, proposal, by); })) {
        refresh();
        return false;
    }
    follow(*settled);
    session_.touch();
    return true;
}

void SettleView::follow(const shop::Settled& settled) {
    QString words = tr("Settled. F6 of the Tally takes it back.");
    if (settled.label)
        session_.attempt([&] {
            words = tr("Settled. The label is in %1.").arg(PaperTray{session_}.labels({*settled.label}));
        });
    if (settled.voided.empty()) return session_.tell(words);
    session_.warn(
        words + QLatin1Char(' ') +
        tr("Tickets of this piece can't be cut any more. Plan them again: Bench, Orders at work (F5)."));
}

} // namespace riband::ui
