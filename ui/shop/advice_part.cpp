#include "ui/shop/advice_part.h"

#include "core/foresight/setting.h"
#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/shop/entry.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QCheckBox>
#include <QCoreApplication>
#include <QFormLayout>
#include <QFuture>
#include <QHBoxLayout>
#include <QLocale>
#include <QPointer>
#include <QProgressBar>
#include <QSpinBox>
#include <QVBoxLayout>
#include <QtConcurrentRun>

namespace riband::ui {

namespace {

constexpr int MostRemnants = 30; // more can't be weighed at once

std::optional<Permille> readPercent(const std::string& typed) {
    const auto read = readWidth(typed); // three places at most, never negative: 6.5 is 6500
    if (!read || read->inMicrometres() % 100 != 0 || read->inMicrometres() > 100'000) return std::nullopt;
    return Permille{read->inMicrometres() / 100};
}

QString shownPercent(Permille permille) { return shownNumber(Width::micrometres(permille.count() * 100)); }

QString figuresLine(const QString& head, const shop::TrialFigures& figures) {
    const auto number = [](double value) { return QLocale().toString(value, 'f', 2); };
    return AdvicePart::tr("%1: %2 % wasted, %3 mountings an order, %4 remnants and %5 ready belts there")
        .arg(head, number(figures.waste), number(figures.mountingsPerOrder), number(figures.remnants),
             number(figures.ready));
}

} // namespace

AdvicePart::AdvicePart(Session& session, QWidget* parent)
    : SettingsPart{parent}, session_{session}, finish_{new QCheckBox{tr("Cut &dead ends into ready belts")}},
      shelf_{new QSpinBox}, remnants_{new QSpinBox}, mounting_{new Entry{
                                                         tr("Labour of a &mounting, in width"),
                                                         [](const auto& typed) {
                                                             return readWidth(typed).ok();
                                                         }}},
      interest_{new Entry{tr("&Interest a year on what lies there"),
                          [](const auto& typed) { return readPercent(typed).has_value(); }}},
      holding_{new Entry{tr("&Room of a piece a year, in width"),
                         [](const auto& typed) { return readWidth(typed).ok(); }}},
      progress_{new QProgressBar}, outcome_{label({}, "strong")} {
    try_ = new QAction{tr("Try it out"), this};
    try_->setShortcut(Qt::Key_F5);
    connect(try_, &QAction::triggered, this, &AdvicePart::tryOut);
    halt_ = new QAction{tr("Stop"), this};
    halt_->setShortcut(Qt::SHIFT | Qt::Key_F5);
    connect(halt_, &QAction::triggered, this, &AdvicePart::stop);
    halt_->setEnabled(false);
    addActions({try_, halt_});
    for (QAction* action : {try_, halt_})
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    buildView();
}

AdvicePart::~AdvicePart() {
    if (stop_) stop_->store(true);
}

void AdvicePart::buildView() {
    shelf_->setRange(0, foresight::shelfLimit);
    remnants_->setRange(1, MostRemnants);
    auto* form = new QFormLayout;
    finish_->setAccessibleName(tr("Cut dead ends into ready belts"));
    form->addRow(QString{}, finish_);
    const auto row = [&](const QString& name, QSpinBox* field) {
        field->setAccessibleName(QString{name}.remove('&'));
        form->addRow(name, field);
        connect(field, &QSpinBox::valueChanged, this, &SettingsPart::edited);
    };
    row(tr("Most ready &belts of a width"), shelf_);
    row(tr("Most &remnants of a belt"), remnants_);
    mounting_->addTo(*form, tr("mm"));
    interest_->addTo(*form, tr("%"));
    holding_->addTo(*form, tr("mm"));
    connect(finish_, &QCheckBox::toggled, this, &SettingsPart::edited);
    for (Entry* entry : {mounting_, interest_, holding_})
        connect(entry, &QLineEdit::textEdited, this, &SettingsPart::edited);
    auto* words =
        label(tr("What the suggestion at the counter goes by. Try it out plays 400 orders, as they are to "
                 "be expected of the busiest belt, by the settings as they are and as they stand here. "
                 "Which belts may be cut before anybody asks is set with each belt."),
              "remark");
    words->setWordWrap(true);
    progress_->setRange(0, 100);
    progress_->setAccessibleName(tr("Progress"));
    progress_->setVisible(false);
    outcome_->setWordWrap(true);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(2 * step);
    buttons->addWidget(new KeyButton{try_});
    buttons->addWidget(new KeyButton{halt_});
    buttons->addStretch();
    auto* column = new QVBoxLayout{this};
    column->setSpacing(3 * step);
    column->addWidget(words);
    column->addLayout(form);
    column->addLayout(buttons);
    column->addWidget(progress_);
    column->addWidget(outcome_);
}

void AdvicePart::show(const store::ShopSettings& settings) {
    finish_->setChecked(settings.advice.finish);
    shelf_->setValue(settings.advice.shelfLimit);
    remnants_->setValue(settings.mostRemnants);
    mounting_->setText(shownNumber(settings.mountingCost));
    interest_->setText(shownPercent(settings.advice.interest));
    holding_->setText(shownNumber(settings.advice.holding));
}

bool AdvicePart::write(store::ShopSettings& settings) const {
    if (!mounting_->isRight() || !interest_->isRight() || !holding_->isRight()) return false;
    settings.advice.finish = finish_->isChecked();
    settings.advice.shelfLimit = shelf_->value();
    settings.mostRemnants = remnants_->value();
    settings.mountingCost = *readWidth(mounting_->typed());
    settings.advice.interest = *readPercent(interest_->typed());
    settings.advice.holding = *readWidth(holding_->typed());
    return true;
}

QString AdvicePart::outcome() const { return outcome_->text(); }

void AdvicePart::tryOut() {
    store::ShopSettings proposed = session_.settings();
    if (trying()) return;
    if (!write(proposed)) return session_.warn(tr("A figure here is wrong; it has a red edge."));
    std::optional<shop::Trial> read;
    if (!session_.attempt([&] { read = shop::trialOf(session_.shop(), proposed); })) return;
    if (!read) return outcome_->setText(tr("Nothing was ordered yet that it could be tried on."));
    const auto trial = std::make_shared<const shop::Trial>(std::move(*read));
    const auto stop = std::make_shared<std::atomic_bool>(false);
    stop_ = stop;
    try_->setEnabled(false);
    halt_->setEnabled(true);
    progress_->setValue(0);
    progress_->setVisible(true);
    outcome_->clear();
    const QPointer<QProgressBar> bar{progress_};
    QtConcurrent::run([trial, stop, bar] {
        return shop::tryOut(*trial, [&](double share) {
            QMetaObject::invokeMethod(
                qApp,
                [bar, share] {
                    if (bar) bar->setValue(static_cast<int>(100 * share));
                },
                Qt::QueuedConnection);
            return !stop->load();
        });
    }).then(this, [this, stop, trial](const std::optional<shop::TrialOutcome>& outcome) {
        if (stop == stop_) show(trial->belt, outcome);
    });
}

void AdvicePart::stop() {
    if (stop_) stop_->store(true);
    stop_.reset();
    show({}, std::nullopt);
}

void AdvicePart::show(const std::string& belt, const std::optional<shop::TrialOutcome>& outcome) {
    stop_.reset();
    try_->setEnabled(true);
    halt_->setEnabled(false);
    progress_->setVisible(false);
    if (!outcome) return outcome_->setText(tr("Stopped."));
    outcome_->setText(QStringList{tr("%1, %n orders", nullptr, outcome->now.orders).arg(text(belt)),
                                  figuresLine(tr("As it is"), outcome->now),
                                  figuresLine(tr("As it stands here"), outcome->then)}
                          .join(QLatin1Char('\n')));
}

} // namespace riband::ui
