#include "ui/bench/mounting_view.h"

#include "ui/bench/bench_model.h"
#include "ui/bench/stops_model.h"
#include "ui/desk/labels.h"
#include "ui/drawing/pictures.h"
#include "ui/look/look.h"
#include "ui/words/cutting_steps.h"
#include "ui/words/due_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

namespace {

constexpr int StopHeight = 26;

/// Holds a table as high as whole rows of it: one that is cut in two would be read wrongly.
class WholeRows final : public QWidget {
public:
    explicit WholeRows(QTableView& table) : table_{table} {
        table_.setParent(this);
        setMinimumHeight(table_.horizontalHeader()->sizeHint().height() + 3 * StopHeight);
    }

protected:
    void resizeEvent(QResizeEvent*) override {
        const int around = table_.horizontalHeader()->sizeHint().height() + 2 * table_.frameWidth();
        const int rows = std::max(0, height() - around) / StopHeight;
        table_.setGeometry(0, 0, width(), around + rows * StopHeight);
    }

private:
    QTableView& table_;
};

void empty(QLayout* layout) {
    while (QLayoutItem* item = layout->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

QLabel* wrapped(const QString& words, const char* role) {
    auto* made = label(words, role);
    made->setWordWrap(true);
    return made;
}

} // namespace

MountingView::MountingView(QWidget* parent)
    : QWidget{parent}, whole_{new QWidget}, headline_{label({}, "head")}, piece_{label({}, "remark")},
      whose_{wrapped({}, "remark")}, cuts_{wrapped({}, "strong")}, tolerance_{wrapped({}, "remark")},
      nothing_{wrapped(tr("Nothing waits at the cutter. A ticket made at the Counter comes here by itself."),
                       "remark")},
      band_{new BandWidget{BandSize::Large}}, warnings_{new QVBoxLayout}, steps_{new QGridLayout},
      stops_{new StopsModel{this}}, stopsView_{new QTableView} {
    buildView();
    clear();
}

void MountingView::buildView() {
    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(3 * step);
    outer->addWidget(nothing_);
    auto* column = new QVBoxLayout{whole_};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3 * step);
    auto* head = new QHBoxLayout;
    head->setSpacing(4 * step);
    head->addWidget(headline_);
    head->addWidget(piece_);
    head->addWidget(whose_, 1);
    whose_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    column->addLayout(head);
    column->addWidget(cuts_);
    band_->setMinimumHeight(124);
    column->addWidget(band_);
    column->addLayout(warnings_);
    auto* halves = new QHBoxLayout;
    halves->setSpacing(6 * step);
    halves->addWidget(buildSteps(), 3); // sentences; the stops are figures
    halves->addWidget(buildStops(), 2);
    column->addLayout(halves, 1);
    outer->addWidget(whole_, 1);
    outer->addStretch();
    outer->addWidget(buildCautions());
}

QWidget* MountingView::buildSteps() {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addWidget(label(tr("Set-up"), "part"));
    steps_->setSpacing(2 * step);
    steps_->setColumnStretch(1, 1);
    auto* all = new QWidget;
    auto* inside = new QVBoxLayout{all};
    inside->setContentsMargins(0, 0, 0, 0);
    inside->addLayout(steps_);
    inside->addStretch();
    auto* room = new QScrollArea; // where there is not enough of it, steps are scrolled, never cut in two
    room->setObjectName(QStringLiteral("steps"));
    room->setAccessibleName(tr("Set-up"));
    room->setFrameShape(QFrame::NoFrame);
    room->setWidgetResizable(true);
    room->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    room->setFocusPolicy(Qt::NoFocus);
    room->setWidget(all);
    column->addWidget(room, 1);
    return box;
}

QWidget* MountingView::buildStops() {
    stopsView_->setModel(stops_);
    stopsView_->setAccessibleName(tr("Stops of the display"));
    stopsView_->verticalHeader()->hide();
    stopsView_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    stopsView_->horizontalHeader()->setStretchLastSection(true);
    stopsView_->setHorizontalScrollBarPolicy(
        Qt::ScrollBarAlwaysOff); // the stops stand first and are never cut
    stopsView_->setShowGrid(false);
    stopsView_->setSelectionMode(QAbstractItemView::NoSelection);
    stopsView_->setFont(Look::font(TextSize::Text, QFont::Medium));
    stopsView_->verticalHeader()->setDefaultSectionSize(StopHeight);
    stopsView_->setVerticalScrollMode(QAbstractItemView::ScrollPerItem);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addWidget(label(tr("Stops of the display"), "part"));
    column->addWidget(tolerance_);
    column->addWidget(new WholeRows{*stopsView_}, 1);
    return box;
}

QWidget* MountingView::buildCautions() {
    auto* box = surface("advice");
    box->setAccessibleName(tr("Cautions"));
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(4 * step, 2 * step, 4 * step, 2 * step);
    column->setSpacing(2);
    QStringList said;
    for (const QString& words : cautions())
        said << words;
    // One paragraph: on a low screen each line is wanted for the steps.
    column->addWidget(wrapped(said.join(QLatin1Char(' ')), "remark"));
    return box;
}

QString MountingView::whoseWords(const shop::BenchMounting& mounting, const shop::MountingFor& whose,
                                 Date today) {
    if (mounting.order.empty()) return tr("ticket %1 · for the shelf").arg(text(mounting.ticket));
    const QString codes = whose.isJoint()
                              ? tr("ticket %1 · orders %2").arg(text(mounting.ticket), text(mounting.order))
                              : tr("ticket %1 · order %2").arg(text(mounting.ticket), text(mounting.order));
    QStringList parts{codes};
    if (!mounting.customer.empty()) parts << text(mounting.customer);
    if (whose.due) parts << tr("wanted by %1").arg(shownDue(*whose.due, today));
    return parts.join(QStringLiteral(" · "));
}

void MountingView::show(const shop::BenchMounting& mounting, const shop::MountingFor& whose, Date today) {
    headline_->setText(tr("Mount %1").arg(text(mounting.piece.code)));
    const QString piece =
        tr("%1 %2 · %3", "kind, belt, width")
            .arg(say(mounting.piece.kind), text(mounting.belt.designation), shown(mounting.piece.extent));
    piece_->setText(
        whose.others.empty()
            ? piece
            : tr("%1 · some of it for %2", "piece, other tickets").arg(piece, text(whose.others)));
    cuts_->setText(tr("Cut %1").arg(shownCuts(mounting)));
    whose_->setText(whoseWords(mounting, whose, today));
    band_->show(pictureOf(mounting));
    showWarnings(mounting);
    empty(steps_);
    int number = 0;
    for (const QString& words : setUpSteps(mounting)) {
        steps_->addWidget(label(tr("%1.", "number of a step").arg(number + 1)), number, 0, Qt::AlignTop);
        steps_->addWidget(wrapped(words, ""), number++, 1);
    }
    stops_->setMounting(mounting, whose);
    const QString tolerance = tolerancesOf(mounting);
    tolerance_->setText(tolerance.isEmpty() ? QString{} : tr("Allowed: %1").arg(tolerance));
    nothing_->setVisible(false);
    whole_->setVisible(true);
}

void MountingView::showWarnings(const shop::BenchMounting& mounting) {
    empty(warnings_);
    for (const Warning& warning : warningsOf(mounting))
        warnings_->addWidget(wrapped(warning.words, warning.stop ? "danger" : "warn"));
}

void MountingView::clear() {
    band_->clear();
    stops_->clear();
    whole_->setVisible(false);
    nothing_->setVisible(true);
}

} // namespace riband::ui
