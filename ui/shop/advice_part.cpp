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
#include <QFormLayout>
#include <QHBoxLayout>
#include <QSpinBox>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr int MostAtOnce = 20;
constexpr int MostRemnants = 30; // more can't be weighed at once

std::optional<Permille> readPercent(const std::string& typed) {
    const auto read = readWidth(typed); // three places at most, never negative: 6.5 is 6500
    if (!read || read->inMicrometres() % 100 != 0 || read->inMicrometres() > 100'000) return std::nullopt;
    return Permille{read->inMicrometres() / 100};
}

constexpr Width MostCost = Width::millimetres(1000); // dearer is no labour and no room, but a slip

bool isCost(const std::string& typed) {
    const auto read = readWidth(typed);
    return read && *read <= MostCost;
}

QString expectedCost() {
    return AdvicePart::tr("Type a width in mm from 0 to %1, for example 4.").arg(shownNumber(MostCost));
}

QString shownPercent(Permille permille) { return shownNumber(Width::micrometres(permille.count() * 100)); }

} // namespace

AdvicePart::AdvicePart(Session& session, QWidget* parent)
    : SettingsPart{parent}, session_{session}, finish_{new QCheckBox{tr("Suggest belts for the s&helf")}},
      shelf_{new QSpinBox}, atOnce_{new QSpinBox}, remnants_{new QSpinBox},
      mounting_{new Entry{tr("Labour of a &mounting, in width"), isCost, expectedCost()}},
      interest_{new Entry{tr("&Interest a year on what lies there"),
                          [](const auto& typed) { return readPercent(typed).has_value(); },
                          tr("Type a percentage from 0 to 100, for example 6.5.")}},
      holding_{new Entry{tr("&Room of a piece a year, in width"), isCost, expectedCost()}},
      trial_{new TrialView{session, *this, [this] { return asked(); }}} {
    usual_ = new QAction{tr("The usual figures"), this};
    usual_->setShortcut(Qt::Key_F6);
    usual_->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(usual_, &QAction::triggered, this, [this] {
        static const store::ShopSettings usual;
        show(usual);
        emit edited();
    });
    addAction(usual_);
    buildView();
}

void AdvicePart::buildView() {
    shelf_->setRange(0, foresight::shelfLimit);
    atOnce_->setRange(0, MostAtOnce);
    remnants_->setRange(1, MostRemnants);
    auto* form = new QFormLayout;
    finish_->setAccessibleName(tr("Suggest belts for the shelf"));
    form->addRow(QString{}, finish_);
    const auto row = [&](const QString& name, QSpinBox* field) {
        field->setAccessibleName(QString{name}.remove('&'));
        form->addRow(name, field);
        connect(field, &QSpinBox::valueChanged, this, &SettingsPart::edited);
    };
    row(tr("Most ready &belts of a width"), shelf_);
    atOnce_->setSpecialValueText(tr("any number"));
    row(tr("Most of them from &one mounting"), atOnce_);
    row(tr("Most &remnants of a belt"), remnants_);
    mounting_->addTo(*form, tr("mm"));
    interest_->addTo(*form, tr("%"));
    holding_->addTo(*form, tr("mm"));
    connect(finish_, &QCheckBox::toggled, this, &SettingsPart::edited);
    for (Entry* entry : {mounting_, interest_, holding_})
        connect(entry, &QLineEdit::textEdited, this, &SettingsPart::edited);
    auto* words =
        label(tr("What the suggestion at the counter goes by. Try it out plays %1 orders, as they are to "
                 "be expected of the busiest belt, by the settings as they are and as they stand here. "
                 "Which belts may be cut before anybody asks is set with each belt.")
                  .arg(shop::trialOrders),
              "remark");
    words->setWordWrap(true);
    auto* usual = new QHBoxLayout;
    usual->addWidget(new KeyButton{usual_});
    usual->addStretch();
    auto* column = new QVBoxLayout{this};
    column->setSpacing(3 * step);
    column->addWidget(words);
    column->addLayout(form);
    column->addLayout(usual);
    column->addWidget(trial_);
}

void AdvicePart::show(const store::ShopSettings& settings) {
    finish_->setChecked(settings.advice.finish);
    shelf_->setValue(settings.advice.shelfLimit);
    atOnce_->setValue(settings.advice.shelfAtOnce);
    remnants_->setValue(settings.mostRemnants);
    mounting_->setText(shownNumber(settings.mountingCost));
    interest_->setText(shownPercent(settings.advice.interest));
    holding_->setText(shownNumber(settings.advice.holding));
}

bool AdvicePart::write(store::ShopSettings& settings) const {
    if (!mounting_->isRight() || !interest_->isRight() || !holding_->isRight()) return false;
    settings.advice.finish = finish_->isChecked();
    settings.advice.shelfLimit = shelf_->value();
    settings.advice.shelfAtOnce = atOnce_->value();
    settings.mostRemnants = remnants_->value();
    settings.mountingCost = *readWidth(mounting_->typed());
    settings.advice.interest = *readPercent(interest_->typed());
    settings.advice.holding = *readWidth(holding_->typed());
    return true;
}

std::optional<TrialView::Ask> AdvicePart::asked() const {
    store::ShopSettings proposed = session_.settings();
    if (!write(proposed)) {
        session_.warn(Entry::firstWrong(*this));
        return std::nullopt;
    }
    return [proposed](const shop::Shop& shop) { return shop::trialOf(shop, proposed); };
}

} // namespace riband::ui
