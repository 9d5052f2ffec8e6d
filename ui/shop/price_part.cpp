#include "ui/shop/price_part.h"

#include "core/measure/currency.h"
#include "core/measure/text.h"
#include "core/shop/limits.h"
#include "ui/shop/entry.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QRegularExpression>
#include <QSpinBox>

namespace riband::ui {

namespace {
constexpr int CoarsestRounding = 1000;

/// 0 to 100 %.
std::optional<Permille> readsShare(const std::string& typed) {
    const auto read = readPercent(typed);
    if (!read || read->count() < 0 || read->count() > 1000) return std::nullopt;
    return *read;
}
} // namespace

std::optional<std::vector<store::QuantityStep>> readSteps(const std::string& typed) {
    std::vector<store::QuantityStep> steps;
    const QStringList parts =
        text(typed).split(QRegularExpression{QStringLiteral("[;,]\\s+|;")}, Qt::SkipEmptyParts);
    for (const QString& part : parts) {
        const QStringList sides = part.split(QLatin1Char(':'));
        bool ok = sides.size() == 2;
        const qlonglong from = ok ? sides[0].trimmed().toLongLong(&ok) : 0;
        const auto off = readsShare(sides.back().trimmed().toStdString());
        const bool rising = steps.empty() || from > steps.back().from;
        if (!ok || !off || from < 2 || !rising) return std::nullopt;
        steps.push_back({from, *off});
    }
    return steps;
}

std::string printSteps(const std::vector<store::QuantityStep>& steps) {
    std::string printed;
    for (const auto& step : steps)
        printed += (printed.empty() ? "" : ", ") + std::to_string(step.from) + ": " + printPercent(step.off);
    return printed;
}

PricePart::PricePart(Session& session, QWidget* parent)
    : SettingsPart{parent}, session_{session},
      currency_{new Entry{tr("C&urrency"), [this](const auto&) { return typedCurrency().has_value(); },
                          [this](const auto& typed) { return wrongCurrency(typed); }}},
      charge_{new Entry{tr("&Cutting charge"), [this](const auto& typed) { return readsMoney(typed); },
                        tr("Type an amount, for example 2.50.")}},
      minimum_{new Entry{tr("&Least price of a line"),
                         [this](const auto& typed) { return readsMoney(typed); },
                         tr("Type an amount, for example 6.00.")}},
      tax_{new Entry{tr("&Tax"), [](const auto& typed) { return readsShare(typed).has_value(); },
                     tr("Type a percentage from 0 to 100, for example 20.")}},
      steps_{new Entry{
          tr("Off for &quantity"), [](const auto& typed) { return readSteps(typed).has_value(); },
          tr("Type from how many belts which percentage is taken off, for example 5: 2.5, 10: 5.")}},
      round_{new QSpinBox}, included_{new QCheckBox{tr("Prices &include tax")}} {
    buildView();
}

void PricePart::buildView() {
    round_->setRange(1, CoarsestRounding);
    round_->setAccessibleName(tr("Round a total to"));
    steps_->setPlaceholderText(tr("for example 5: 2.5, 10: 5"));
    auto* form = new QFormLayout{this};
    currency_->addTo(*form);
    charge_->addTo(*form, tr("a belt"));
    minimum_->addTo(*form);
    steps_->addTo(*form, tr("from so many belts: percent"));
    tax_->addTo(*form, tr("percent"));
    form->addRow(QString{}, included_);
    form->addRow(tr("&Round a total to (smallest coins)"), round_);
    for (Entry* entry : {currency_, charge_, minimum_, tax_, steps_})
        connect(entry, &QLineEdit::textEdited, this, &SettingsPart::edited);
    connect(round_, &QSpinBox::valueChanged, this, &SettingsPart::edited);
    connect(included_, &QCheckBox::toggled, this, &SettingsPart::edited);
}

bool PricePart::readsMoney(const std::string& typed) const {
    const auto read = readMoney(typed, typedCurrency().value_or(kept_));
    return read && read->inMinor() >= 0;
}

QString PricePart::wrongCurrency(const std::string& typed) const {
    const auto named = currencyNamed(typed);
    if (!named) return tr("Type its three letters (ISO 4217), for example EUR.");
    const QString code = text(std::string{named->code()}), kept = text(std::string{kept_.code()});
    const QString decimals = named->decimals() == 0
                                 ? tr("%1 has no decimals").arg(code)
                                 : tr("%1 has %2 decimals").arg(code).arg(named->decimals());
    return tr("%1, and the amounts in this book are in %2 with %3: every one of them would mean another sum. "
              "Keep "
              "%2, type a currency with %3 decimals, or begin a new shop for %4.",
              "JPY has no decimals, EUR, 2, JPY")
        .arg(decimals, kept)
        .arg(kept_.decimals())
        .arg(code);
}

std::optional<Currency> PricePart::typedCurrency() const {
    const auto named = currencyNamed(currency_->typed());
    if (!named || *named == kept_) return named;
    const bool fits = !hasAmounts_ || named->decimals() == kept_.decimals();
    return fits ? named : std::nullopt;
}

void PricePart::show(const store::ShopSettings& settings) {
    const store::PriceRules& rules = settings.prices;
    kept_ = rules.currency;
    session_.attempt([&] { hasAmounts_ = shop::hasAmounts(session_.shop()); });
    currency_->setText(text(std::string{kept_.code()}));
    charge_->setText(shown(rules.cuttingCharge, kept_));
    minimum_->setText(shown(rules.minimumLine, kept_));
    tax_->setText(text(printPercent(rules.tax)));
    steps_->setText(text(printSteps(rules.steps)));
    round_->setValue(static_cast<int>(rules.roundTotalTo));
    included_->setChecked(rules.pricesIncludeTax);
}

bool PricePart::write(store::ShopSettings& settings) const {
    for (const Entry* entry : {currency_, charge_, minimum_, tax_, steps_})
        if (!entry->isRight()) return false;
    store::PriceRules& rules = settings.prices;
    rules.currency = *typedCurrency();
    rules.cuttingCharge = *readMoney(charge_->typed(), rules.currency);
    rules.minimumLine = *readMoney(minimum_->typed(), rules.currency);
    rules.tax = *readsShare(tax_->typed());
    rules.steps = *readSteps(steps_->typed());
    rules.roundTotalTo = round_->value();
    rules.pricesIncludeTax = included_->isChecked();
    return true;
}

} // namespace riband::ui
