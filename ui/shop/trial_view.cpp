#include "ui/shop/trial_view.h"

#include "ui/desk/labels.h"
#include "ui/desk/long_work.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLocale>
#include <QProgressBar>
#include <QVBoxLayout>

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

QString figuresLine(const QString& head, store::PreCut preCut, const shop::TrialFigures& figures) {
    const auto number = [](double value) { return QLocale().toString(value, 'f', 2); };
    return TrialView::tr("%1 (cut before it is asked for: %2): %3 % wasted, %4 mountings an order, "
                         "%5 remnants and %6 ready belts there")
        .arg(head, say(preCut), number(figures.waste), number(figures.mountingsPerOrder),
             number(figures.remnants), number(figures.ready));
}

} // namespace

TrialView::TrialView(Session& session, QWidget& form, std::function<std::optional<Ask>()> asks)
    : session_{session}, asks_{std::move(asks)}, work_{new LongWork{session, this}},
      progress_{new QProgressBar}, outcome_{label({}, "strong")} {
    const auto act = [&](const QString& name, const QKeySequence& key, void (TrialView::*does)()) {
        auto* action = new QAction{name, this};
        action->setShortcut(key);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
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
    outcome_->setText(QStringList{tr("%1, %n orders", nullptr, outcome.now.orders).arg(text(trial.belt)),
                                  figuresLine(tr("As it is"), trial.preCutNow, outcome.now),
                                  figuresLine(tr("As it stands here"), trial.preCutThen, outcome.then)}
                          .join(QLatin1Char('\n')));
}

} // namespace riband::ui
