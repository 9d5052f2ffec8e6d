#include "ui/review/what_if_part.h"

#include "ui/desk/labels.h"
#include "ui/desk/long_work.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/review/replay_model.h"
#include "ui/words/replay_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLocale>
#include <QProgressBar>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>

#include <cmath>
#include <set>

namespace riband::ui {

namespace {

constexpr int FormWidth = 350;

/// The least value means that nothing is otherwise.
QDoubleSpinBox* figure(double nothing, double most, double step, int places, const QString& suffix) {
    auto* box = new QDoubleSpinBox;
    box->setDecimals(places);
    box->setRange(nothing, most);
    box->setSingleStep(step);
    box->setSuffix(suffix);
    box->setSpecialValueText(WhatIfPart::tr("as it is"));
    box->setValue(nothing);
    box->setMinimumHeight(pressHeight);
    return box;
}

QSpinBox* count(int least, int most, int value) {
    auto* box = new QSpinBox;
    box->setRange(least, most);
    box->setValue(value);
    box->setMinimumHeight(pressHeight);
    return box;
}

std::optional<double> said(const QDoubleSpinBox& box) {
    if (box.value() <= box.minimum()) return std::nullopt;
    return box.value();
}

std::optional<Extent> widthOf(const QDoubleSpinBox& box) {
    const auto millimetres = said(box);
    if (!millimetres) return std::nullopt;
    return Width::micrometres(static_cast<std::int64_t>(std::llround(*millimetres * 1000)));
}

} // namespace

WhatIfPart::WhatIfPart(Session& session, QWidget* parent)
    : ReviewPart{parent}, session_{session}, work_{new LongWork{session, this}}, model_{new ReplayModel{
                                                                                     this}},
      trim_{figure(-0.1, 20, 0.1, 1, tr(" mm"))}, sleeve_{figure(49, 2000, 10, 0, tr(" mm"))},
      least_{figure(-1, 500, 5, 0, tr(" mm"))}, price_{figure(-91, 900, 5, 0, tr(" %"))},
      service_{figure(49.5, 99.9, 0.5, 1, tr(" %"))}, lead_{count(0, 365, 0)}, years_{count(2, 200, 20)},
      together_{new QCheckBox{tr("Cut toge&ther at closing time")}}, profile_{new QComboBox},
      from_{new QComboBox}, headline_{label({}, "part")}, progress_{new QProgressBar}, table_{
                                                                                           new QTableView} {
    lead_->setSpecialValueText(tr("as it is"));
    lead_->setSuffix(tr(" days"));
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
}

void WhatIfPart::buildActions() {
    play_ = new QAction{tr("Play the year again"), this};
    play_->setShortcut(Qt::Key_F5);
    connect(play_, &QAction::triggered, this, &WhatIfPart::play);
    stop_ = new QAction{tr("Stop"), this};
    stop_->setShortcut(Qt::Key_Escape);
    stop_->setEnabled(false);
    connect(stop_, &QAction::triggered, this, [this] {
        work_->stop();
        headline_->setText(tr("Stopped."));
    });
    addActions({play_, stop_});
}

void WhatIfPart::addRow(QFormLayout& form, const QString& words, QWidget* field) {
    auto* name = label(words);
    name->setMinimumHeight(pressHeight);
    name->setBuddy(field);
    field->setAccessibleName(QString{words}.remove(QLatin1Char('&')));
    form.addRow(name, field);
}

QWidget* WhatIfPart::buildForm() {
    auto* card = surface("sunk");
    card->setFixedWidth(FormWidth);
    auto* column = new QVBoxLayout{card};
    column->setSpacing(2 * step);
    column->addWidget(label(tr("What would be otherwise"), "part"));
    auto* form = new QFormLayout;
    form->setVerticalSpacing(2 * step);
    addRow(*form, tr("&Trim"), trim_);
    addRow(*form, tr("Width of a new &sleeve"), sleeve_);
    addRow(*form, tr("&Price of a sleeve, more"), price_);
    addRow(*form, tr("&Least remnant"), least_);
    addRow(*form, tr("Ser&vice"), service_);
    addRow(*form, tr("&Delivery"), lead_);
    addRow(*form, tr("&Belts"), profile_);
    addRow(*form, tr("&Orders"), from_);
    addRow(*form, tr("&Years drawn"), years_);
    profile_->setMinimumHeight(pressHeight);
    from_->setMinimumHeight(pressHeight);
    from_->addItem(tr("of the last year"), static_cast<int>(shop::Years::History));
    from_->addItem(tr("as expected"), static_cast<int>(shop::Years::Outlook));
    column->addLayout(form);
    together_->setAccessibleName(tr("Cut together at closing time"));
    column->addWidget(together_);
    column->addStretch();
    column->addWidget(new KeyButton{play_, KeyButton::Rank::Likely});
    column->addWidget(new KeyButton{stop_});
    return card;
}

void WhatIfPart::buildView() {
    table_->setModel(model_);
    table_->setAccessibleName(tr("The year side by side"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(pressHeight);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(ReplayModel::VerdictColumn, QHeaderView::Stretch);
    progress_->setAccessibleName(tr("Playing"));
    progress_->setTextVisible(false);
    progress_->setFixedHeight(3 * step);
    progress_->setVisible(false);
    headline_->setWordWrap(true);
    headline_->setText(tr("Say what would be otherwise; the last year is then played again, both ways."));
    auto* right = new QVBoxLayout;
    right->setSpacing(3 * step);
    right->addWidget(headline_);
    right->addWidget(progress_);
    right->addWidget(table_, 1);
    auto* remark =
        label(tr("± is half of a 95 % interval over the drawn years; better or worse is said only where it "
                 "is more than that. Money as a whole is rubber, labour of mountings, interest on sleeves "
                 "held and the margin of what was not sold. Levels are those of the smallest piece that "
                 "fits."),
              "remark");
    remark->setWordWrap(true);
    right->addWidget(remark);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(5 * step);
    row->addWidget(buildForm());
    row->addLayout(right, 1);
}

void WhatIfPart::show(const shop::Period&) { fillProfiles(); }

void WhatIfPart::fillProfiles() {
    const QString chosen = profile_->currentData().toString();
    session_.attempt([this] {
        std::set<std::string> profiles;
        for (const auto& belt : store::Catalogue{session_.shop().connection}.all())
            profiles.insert(belt.belt.profile);
        profile_->clear();
        profile_->addItem(tr("all"), QString{});
        for (const std::string& profile : profiles)
            profile_->addItem(text(profile), text(profile));
    });
    profile_->setCurrentIndex(std::max(0, profile_->findData(chosen)));
}

bool WhatIfPart::settled() const { return !work_->running(); }

shop::WhatIf WhatIfPart::whatIf() const {
    shop::WhatIf what;
    what.trim = widthOf(*trim_);
    what.sleeve = widthOf(*sleeve_);
    what.leastRemnant = widthOf(*least_);
    if (const auto more = said(*price_)) what.price = 1 + *more / 100;
    if (const auto service = said(*service_)) what.service = *service / 100;
    if (lead_->value() > 0) what.leadDays = lead_->value();
    what.together = together_->isChecked();
    return what;
}

void WhatIfPart::play() {
    const shop::WhatIf what = whatIf();
    const bool any = what.trim || what.sleeve || what.leastRemnant || what.price || what.service ||
                     what.leadDays || what.together;
    if (!any) return session_.warn(tr("Say first what would be otherwise."));
    const shop::ReplayTerms terms{.years = years_->value(),
                                  .from = static_cast<shop::Years>(from_->currentData().toInt()),
                                  .profile = profile_->currentData().toString().toStdString()};
    headline_->setText(tr("Playing %1 years both ways …").arg(terms.years));
    model_->clear();
    work_->start(
        [what, terms](const shop::Shop& shop, const foresight::Work& work) {
            return shop::replay(shop::lookAtBuying(shop), {what}, terms, work);
        },
        [this](const shop::ReplayResult& result) { showResult(result); });
}

void WhatIfPart::showResult(const shop::ReplayResult& result) {
    const std::size_t changed = result.alternatives.back().belts;
    if (changed == 0) {
        headline_->setText(tr("None of %1 belts would be changed by this.").arg(result.belts));
        return;
    }
    model_->show(result, session_.currency());
    headline_->setText(verdictOf(result.alternatives.back(), session_.currency()) + QLatin1Char(' ') +
                       tr("%1 of %2 belts would be cut or bought otherwise.").arg(changed).arg(result.belts));
}

shop::ReportTable WhatIfPart::table() const {
    return model_->rowCount() == 0 ? shop::ReportTable{} : model_->table();
}

} // namespace riband::ui
