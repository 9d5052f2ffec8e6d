#include "ui/tally/settle_view.h"

#include "ui/desk/labels.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/look.h"
#include "ui/words/count_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QLocale>
#include <QVBoxLayout>

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

} // namespace

SettleView::SettleView(Session& session, QWidget* parent)
    : QWidget{parent}, session_{session}, list_{new QListWidget}, proposals_{new QListWidget},
      count_{label({}, "part")}, head_{label({}, "head")}, what_{label({}, "strong")}, facts_{label(
                                                                                           {}, "remark")} {
    list_->setAccessibleName(tr("Differences to settle"));
    list_->setProperty("rows", "two");
    auto* left = new QVBoxLayout;
    left->setSpacing(2 * step);
    left->addWidget(count_);
    left->addWidget(list_, 1);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6 * step);
    row->addLayout(left, 1);
    row->addWidget(buildRight());
    connect(list_, &QListWidget::currentRowChanged, this, &SettleView::showFinding);
}

QWidget* SettleView::buildRight() {
    proposals_->setAccessibleName(tr("What may have happened"));
    proposals_->setWordWrap(true);
    proposals_->setProperty("rows", "two");
    proposals_->setFocusPolicy(Qt::NoFocus);
    what_->setWordWrap(true);
    auto* frame = surface("sunk");
    frame->setFixedWidth(DetailWidth);
    auto* column = new QVBoxLayout{frame};
    column->setContentsMargins(4 * step, 3 * step, 4 * step, 3 * step);
    column->setSpacing(2 * step);
    column->addWidget(head_);
    column->addWidget(what_);
    column->addWidget(facts_);
    column->addWidget(label(tr("What may have happened"), "part"));
    column->addWidget(proposals_, 1);
    column->addWidget(label(tr("A digit marks another line; F9 books the marked one."), "remark"));
    return frame;
}

void SettleView::refresh() {
    const int row = std::max(0, list_->currentRow());
    session_.attempt([this] { findings_ = shop::findings(session_.shop()); });
    list_->clear();
    for (const shop::Finding& finding : findings_)
        list_->addItem(rowOf(finding));
    count_->setText(findings_.empty() ? tr("Nothing is open: every difference is settled.")
                                      : tr("To settle: %1").arg(findings_.size()));
    if (list_->count() > 0) list_->setCurrentRow(std::min(row, list_->count() - 1));
    showFinding();
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
    what_->setText(finding ? QStringLiteral("%1: %2").arg(text(finding->belt), say(*finding)) : QString{});
    facts_->setText(
        finding ? tr("worth %1 %2")
                      .arg(shown(finding->value, session_.currency()),
                           QString::fromLatin1(session_.currency().code().data(),
                                               static_cast<qsizetype>(session_.currency().code().size())))
                : QString{});
    if (!finding) return;
    session_.attempt([&] {
        int number = 0;
        for (const auto& proposal : finding->proposals)
            proposals_->addItem(tr("%1   %2 %   %3", "number, likelihood, what")
                                    .arg(++number)
                                    .arg(std::lround(proposal.likelihood * 100))
                                    .arg(say(proposal, *finding, session_.shop().connection)));
    });
    proposals_->setCurrentRow(0);
}

ListRows SettleView::rows() const {
    ListRows list{QStringLiteral("differences"),
                  {tr("Place"), tr("Piece"), tr("Belt"), tr("Difference"), tr("Worth"),
                   tr("What may have happened"), tr("Likely, %")}};
    for (const shop::Finding& finding : findings_) {
        const bool known = !finding.proposals.empty();
        list.rows.push_back(
            {text(finding.place), nameOf(finding), text(finding.belt), say(finding),
             shown(finding.value, session_.currency()),
             known ? say(finding.proposals.front(), finding, session_.shop().connection) : QString{},
             known ? QString::number(std::lround(finding.proposals.front().likelihood * 100)) : QString{}});
    }
    return list;
}

void SettleView::mark(int number) {
    if (number >= 1 && number <= proposals_->count()) proposals_->setCurrentRow(number - 1);
}

bool SettleView::accept() {
    const shop::Finding* finding = current();
    if (!finding || proposals_->currentRow() < 0) return false;
    const auto proposal = finding->proposals[static_cast<std::size_t>(proposals_->currentRow())];
    std::optional<shop::Settled> settled;
    if (!session_.attempt([&] { settled = shop::settle(session_.shop(), finding->difference, proposal); })) {
        refresh();
        return false;
    }
    last_ = settled->settlements.front();
    follow(*settled);
    session_.touch();
    return true;
}

void SettleView::follow(const shop::Settled& settled) {
    if (!settled.voided.empty())
        session_.warn(tr("Tickets of this piece can't be cut any more. Plan them again on the Bench."));
    if (!settled.label) {
        session_.tell(tr("Settled. F6 takes it back."));
        return;
    }
    session_.attempt([&] {
        session_.tell(tr("Settled. The label is in %1.").arg(PaperTray{session_}.labels({*settled.label})));
    });
}

bool SettleView::takeBack() {
    if (!last_) return false;
    if (!session_.attempt([&] { shop::counterSettlement(session_.shop(), *last_); })) return false;
    last_.reset();
    session_.tell(tr("Taken back by a counter-entry; the difference is open again."));
    session_.touch();
    return true;
}

} // namespace riband::ui
