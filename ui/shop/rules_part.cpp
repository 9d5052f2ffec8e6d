#include "ui/shop/rules_part.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/shop/entry.h"
#include "ui/words/words.h"

#include <QFormLayout>

namespace riband::ui {

RulesPart::RulesPart(QWidget* parent) : SettingsPart{parent} {
    auto* form = new QFormLayout{this};
    form->addRow(label(tr("Toothed belts"), "strong"));
    toothed_ = addFields(*form, Unit::Micrometre);
    form->addRow(label(tr("Ribbed belts"), "strong"));
    ribbed_ = addFields(*form, Unit::Rib);
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
}

bool RulesPart::write(store::ShopSettings& settings) const {
    const auto toothed = read(toothed_, Unit::Micrometre);
    const auto ribbed = read(ribbed_, Unit::Rib);
    if (!toothed || !ribbed) return false;
    settings.toothed = *toothed;
    settings.ribbed = *ribbed;
    return true;
}

} // namespace riband::ui
