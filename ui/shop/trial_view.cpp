#include "ui/shop/trial_view.h"

#include "ui/desk/labels.h"
#include "ui/desk/long_work.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLocale>
#include <QProgressBar>
#include <QTableWidget>
#include <QVBoxLayout>

#include <array>
#include <cmath>

namespace riband::ui {

namespace {

/// Nothing of it if nothing was ever ordered.
struct Tried {
    std::optional<shop::Trial> trial;
    shop::TrialOutcome outcome{};
};

Tried play(const TrialView::Ask& ask, const shop::Shop& shop, const foresight::Work& work) {
    Tried tried{ask(shop)};
    if (!tried.trial) return tried;
    const auto outcome = shop::tryOut(*tried.trial, [&](double share) {
        work.told(share);
        return !work.stopped();
    });
    if (!outcome) throw foresight::Stopped{};
    tried.outcome = *outcome;
    return tried;
}

QString number(double value) { return QLocale().toString(value, 'f', 2); }

/// With its sign: a minus that is as long as a plus.
QString difference(double value) {
    const QString shown = number(std::abs(value));
    if (shown == number(0)) return shown;
    return (value < 0 ? QStringLiteral("−") : QStringLiteral("+")) + shown;
}

QString verdict(const shop::TrialOutcome& outcome) {
    const QString less = number(std::abs(outcome.lessWaste)), margin = number(outcome.margin);
    if (!outcome.tells())
        return TrialView::tr("The runs don't tell which of both wastes less (%1 points, ± %2).")
            .arg(less, margin);
    return outcome.lessWaste > 0
               ? TrialView::tr("As it stands here less is wasted: %1 points, ± %2.").arg(less, margin)
               : TrialView::tr("As it stands here more is wasted: %1 points, ± %2.").arg(less, margin);
}

using Row = std::array<double, 4>;

Row rowOf(const shop::TrialFigures& figures) {
    return {figures.waste, figures.mountingsPerOrder, figures.remnants, figures.ready};
}

} // namespace

TrialView::TrialView(Session& session, QWidget& form, std::function<std::optional<Ask>()> asks)
    : session_{session}, asks_{std::move(asks)}, work_{new LongWork{session, this}},
      progress_{new QProgressBar}, figures_{new QTableWidget{3, 4}}, outcome_{label({}, "strong")} {
    const auto act = [&](const QString& name, const QKeySequence& key, void (TrialView::*does)()) {
        auto* action = new QAction{name, this};
        action->setShortcut(key);
        connect(action, &QAction::triggered, this, does);
        form.addAction(action);
        return action;
    };
    try_ = act(tr("Try it out"), Qt::Key_F5, &TrialView::tryOut);
    halt_ = act(tr("Stop"), Qt::SHIFT | Qt::Key_F5, &TrialView::stop);
    halt_->setEnabled(false);
    progress_->setRange(0, 100);
    progress_->setAccessibleName(tr("Progress"));
    progress_->setVisible(false);
    outcome_->setWordWrap(true);
    buildTable();
    connect(work_, &LongWork::progress, progress_, &QProgressBar::setValue);
    connect(work_, &LongWork::ended, this, &TrialView::end);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(2 * step);
    buttons->addWidget(new KeyButton{try_});
    buttons->addWidget(new KeyButton{halt_});
    buttons->addStretch();
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3 * step);
    column->addLayout(buttons);
    column->addWidget(progress_);
    column->addWidget(outcome_);
    column->addWidget(figures_);
}

void TrialView::buildTable() {
    figures_->setAccessibleName(tr("What it comes to"));
    figures_->setHorizontalHeaderLabels(
        {tr("Wasted, %"), tr("Mountings an order"), tr("Remnants there"), tr("Ready belts there")});
    figures_->setVerticalHeaderLabels({tr("As it is"), tr("As it stands here"), tr("Difference")});
    figures_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    figures_->setSelectionMode(QAbstractItemView::NoSelection);
    figures_->setFocusPolicy(Qt::NoFocus); // all of it can be seen
    figures_->setShowGrid(false);
    figures_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    figures_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    figures_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    figures_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    figures_->setVisible(false);
}

bool TrialView::trying() const { return work_->running(); }
QString TrialView::outcome() const { return outcome_->text(); }

void TrialView::tryOut() {
    if (trying()) return;
    const auto ask = asks_();
    if (!ask) return;
    try_->setEnabled(false);
    halt_->setEnabled(true);
    progress_->setVisible(true);
    outcome_->clear();
    figures_->setVisible(false);
    work_->start(
        [ask = *ask](const shop::Shop& shop, const foresight::Work& work) { return play(ask, shop, work); },
        [this](const Tried& tried) {
            if (!tried.trial)
                outcome_->setText(tr("Nothing was ordered yet that it could be tried on."));
            else
                show(*tried.trial, tried.outcome);
        });
}

void TrialView::stop() {
    work_->stop();
    outcome_->setText(tr("Stopped."));
}

void TrialView::end() {
    try_->setEnabled(true);
    halt_->setEnabled(false);
    progress_->setVisible(false);
}

void TrialView::show(const shop::Trial& trial, const shop::TrialOutcome& outcome) {
    QStringList words{tr("%1, %n orders.", nullptr, outcome.now.orders).arg(text(trial.belt)),
                      verdict(outcome)};
    if (trial.preCutNow != trial.preCutThen)
        words << tr("Cut before it is asked for: %1; as it stands here: %2.")
                     .arg(say(trial.preCutNow), say(trial.preCutThen));
    outcome_->setText(words.join(QLatin1Char(' ')));
    const Row now = rowOf(outcome.now), then = rowOf(outcome.then);
    for (std::size_t i = 0; i < now.size(); ++i) {
        const QString cells[] = {number(now[i]), number(then[i]), difference(then[i] - now[i])};
        for (int row = 0; row < 3; ++row) {
            auto* cell = new QTableWidgetItem{cells[row]};
            cell->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            figures_->setItem(row, static_cast<int>(i), cell);
        }
    }
    figures_->setFixedHeight(figures_->horizontalHeader()->sizeHint().height() +
                             figures_->verticalHeader()->length() + 2 * figures_->frameWidth());
    figures_->setVisible(true);
}

} // namespace riband::ui
