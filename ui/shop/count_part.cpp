#include "ui/shop/count_part.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/shop/entry.h"
#include "ui/words/words.h"

#include <QFormLayout>
#include <QSpinBox>

namespace riband::ui {

namespace {

constexpr int leastMinutes = 5, mostMinutes = 8 * 60, mostDays = 3'650;
constexpr std::int64_t coarsest = 50'000; ///< µm: beyond it every piece would agree

bool readsTolerance(const std::string& typed) {
    const auto read = readWidth(typed);
    return read && read->inMicrometres() <= coarsest;
}

QString expectedTolerance() {
    return CountPart::tr("Type a width in mm from 0 to %1, for example 0.3.")
        .arg(shownNumber(Width::micrometres(coarsest)));
}

} // namespace

CountPart::CountPart(QWidget* parent)
    : SettingsPart{parent}, calliper_{new Entry{tr("By &calliper"), readsTolerance, expectedTolerance()}},
      tape_{new Entry{tr("By &tape"), readsTolerance, expectedTolerance()}},
      eye_{new Entry{tr("By &eye"), readsTolerance, expectedTolerance()}},
      approve_{new Entry{tr("&Approval above"),
                         [this](const auto& typed) {
                             const auto read = readMoney(typed, currency_);
                             return read && read->inMinor() >= 0;
                         },
                         tr("Type an amount, for example 50.00.")}},
      minutes_{new QSpinBox}, daysA_{new QSpinBox}, daysB_{new QSpinBox}, daysC_{new QSpinBox} {
    auto* form = new QFormLayout{this};
    auto* words =
        label(tr("A width measured this near to the book corrects it without questions, but not by eye; "
                 "what is further off is measured twice and settled. Ribs are counted and have no "
                 "tolerance."),
              "remark");
    words->setWordWrap(true);
    form->addRow(words);
    form->addRow(label(tr("What measuring can't tell"), "strong"));
    for (Entry* entry : {calliper_, tape_, eye_})
        entry->addTo(*form, tr("mm"));
    form->addRow(label(tr("Settling"), "strong"));
    approve_->addTo(*form, tr("value of a difference; beyond it the owner must approve"));
    form->addRow(label(tr("The day's plan"), "strong"));
    minutes_->setObjectName(QStringLiteral("minutesADay"));
    addNumber(*form, tr("&Minutes a day"), minutes_, leastMinutes, mostMinutes);
    addNumber(*form, tr("Days between counts, class A (dearest and most sold)"), daysA_, 1, mostDays);
    addNumber(*form, tr("Days between counts, class B"), daysB_, 1, mostDays);
    addNumber(*form, tr("Days between counts, class C"), daysC_, 1, mostDays);
    for (Entry* entry : {calliper_, tape_, eye_, approve_})
        connect(entry, &QLineEdit::textEdited, this, &SettingsPart::edited);
}

void CountPart::addNumber(QFormLayout& form, const QString& name, QSpinBox* field, int least, int most) {
    field->setRange(least, most);
    field->setAccessibleName(QString{name}.remove('&'));
    form.addRow(name, field);
    connect(field, &QSpinBox::valueChanged, this, &SettingsPart::edited);
}

void CountPart::show(const store::ShopSettings& settings) {
    const store::CountRules& rules = settings.counting;
    currency_ = settings.prices.currency;
    calliper_->setText(shownNumber(rules.calliper));
    tape_->setText(shownNumber(rules.tape));
    eye_->setText(shownNumber(rules.eye));
    approve_->setText(shown(rules.approveOver, currency_));
    minutes_->setValue(rules.minutesADay);
    daysA_->setValue(rules.daysA);
    daysB_->setValue(rules.daysB);
    daysC_->setValue(rules.daysC);
}

bool CountPart::write(store::ShopSettings& settings) const {
    for (const Entry* entry : {calliper_, tape_, eye_, approve_})
        if (!entry->isRight()) return false;
    store::CountRules& rules = settings.counting;
    rules.calliper = *readWidth(calliper_->typed());
    rules.tape = *readWidth(tape_->typed());
    rules.eye = *readWidth(eye_->typed());
    rules.approveOver = *readMoney(approve_->typed(), currency_);
    rules.minutesADay = minutes_->value();
    rules.daysA = daysA_->value();
    rules.daysB = daysB_->value();
    rules.daysC = daysC_->value();
    return true;
}

} // namespace riband::ui
