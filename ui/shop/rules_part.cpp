#include "ui/shop/rules_part.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/shop/entry.h"
#include "ui/words/words.h"

#include <QFormLayout>
#include <QSpinBox>

namespace riband::ui {

namespace {
constexpr int MostRemnants = 99;
} // namespace

RulesPart::RulesPart(QWidget* parent)
    : SettingsPart{parent}, mounting_{new Entry{tr("Labour of a &mounting, in width"),
                                                [](const auto& typed) { return readWidth(typed).ok(); }}},
      remnants_{new QSpinBox} {
    auto* form = new QFormLayout{this};
    form->addRow(label(tr("Toothed belts"), "strong"));
    toothed_ = addFields(*form, Unit::Micrometre);
    form->addRow(label(tr("Ribbed belts"), "strong"));
    ribbed_ = addFields(*form, Unit::Rib);
    form->addRow(label(tr("Planning"), "strong"));
    mounting_->addTo(*form, tr("mm"));
    remnants_->setRange(1, MostRemnants);
    remnants_->setAccessibleName(tr("Most remnants of a belt"));
    form->addRow(tr("Most &remnants of a belt"), remnants_);
    connect(mounting_, &QLineEdit::textEdited, this, &SettingsPart::edited);
    connect(remnants_, &QSpinBox::valueChanged, this, &SettingsPart::edited);
}

RulesPart::Fields RulesPart::addFields(QFormLayout& form, Unit unit) {
    const auto reads = [unit](const std::string& typed) { return readExtent(typed, unit).ok(); };
    const QString shownUnit = unit == Unit::Rib ? tr("ribs") : tr("mm");
    const Fields fields{new Entry{tr("Trim, lost at every mounting"), reads},
                        new Entry{tr("Kerf, lost at every belt"), reads},
                        new Entry{tr("End, left beyond the last cut"), reads},
                        new Entry{tr("Stub, least that can be held"), reads}};
    for (Entry* entry : {fields.trim, fields.kerf, fields.end, fields.stub}) {
        entry->addTo(form, shownUnit);
        connect(entry, &QLineEdit::textEdited, this, &SettingsPart::edited);
    }
    return fields;
}

void RulesPart::show(const Fields& fields, const cutting::Rules& rules) {
    fields.trim->setText(shownNumber(rules.trim));
    fields.kerf->setText(shownNumber(rules.kerf));
    fields.end->setText(shownNumber(rules.end));
    fields.stub->setText(shownNumber(rules.stub));
}

std::optional<cutting::Rules> RulesPart::read(const Fields& fields, Unit unit) {
    for (const Entry* entry : {fields.trim, fields.kerf, fields.end, fields.stub})
        if (!entry->isRight()) return std::nullopt;
    return cutting::Rules{*readExtent(fields.trim->typed(), unit), *readExtent(fields.kerf->typed(), unit),
                          *readExtent(fields.end->typed(), unit), *readExtent(fields.stub->typed(), unit)};
}

void RulesPart::show(const store::ShopSettings& settings) {
    show(toothed_, settings.toothed);
    show(ribbed_, settings.ribbed);
    mounting_->setText(shownNumber(settings.mountingCost));
    remnants_->setValue(settings.mostRemnants);
}

bool RulesPart::write(store::ShopSettings& settings) const {
    const auto toothed = read(toothed_, Unit::Micrometre);
    const auto ribbed = read(ribbed_, Unit::Rib);
    if (!toothed || !ribbed || !mounting_->isRight()) return false;
    settings.toothed = *toothed;
    settings.ribbed = *ribbed;
    settings.mountingCost = *readWidth(mounting_->typed());
    settings.mostRemnants = remnants_->value();
    return true;
}

} // namespace riband::ui
