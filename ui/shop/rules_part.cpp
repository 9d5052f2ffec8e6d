#include "ui/shop/rules_part.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/shop/entry.h"
#include "ui/words/words.h"

#include <QFormLayout>

namespace riband::ui {

namespace {
// More would leave nothing of a sleeve to sell (common practice, no source).
constexpr Width MostLost = Width::millimetres(100);
constexpr std::int64_t MostRibs = 20;
} // namespace

RulesPart::RulesPart(QWidget* parent) : SettingsPart{parent} {
    auto* form = new QFormLayout{this};
    form->addRow(label(tr("Toothed belts"), "strong"));
    toothed_ = addFields(*form, Unit::Micrometre);
    form->addRow(label(tr("Ribbed belts"), "strong"));
    ribbed_ = addFields(*form, Unit::Rib);
}

RulesPart::Fields RulesPart::addFields(QFormLayout& form, Unit unit) {
    const Extent most = unit == Unit::Rib ? Extent{Ribs{MostRibs}} : Extent{MostLost};
    const auto reads = [unit, most](const std::string& typed) {
        const auto read = readExtent(typed, unit);
        return read && *read <= most;
    };
    const QString expected =
        unit == Unit::Rib
            ? tr("Type a whole number of ribs, at most %1.").arg(MostRibs)
            : tr("Type a width in mm from 0 to %1, for example 2.5.").arg(shownNumber(MostLost));
    const QString shownUnit = unit == Unit::Rib ? tr("ribs") : tr("mm");
    const Fields fields{new Entry{tr("Trim, lost at every mounting"), reads, expected},
                        new Entry{tr("Kerf, lost at every belt"), reads, expected},
                        new Entry{tr("End, left beyond the last cut"), reads, expected},
                        new Entry{tr("Stub, least that can be held"), reads, expected}};
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
