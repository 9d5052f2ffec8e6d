#include "core/store/settings.h"

#include "core/store/cutters.h"
#include "core/store/measuring.h"
#include "core/store/statement.h"

#include <cmath>
#include <map>

namespace riband::store {
namespace {

/// The table `setting` as a whole. A name that is not there leaves what the program brings.
class Values {
public:
    explicit Values(Connection& connection) {
        Statement rows{connection, "SELECT name, value FROM setting"};
        while (rows.next())
            values_.emplace(rows.get<std::string>(0), rows.get<std::string>(1));
    }
    void into(const char* name, std::string& text) const {
        if (const auto found = values_.find(name); found != values_.end()) text = found->second;
    }
    std::int64_t number(const char* name, std::int64_t usual) const {
        const auto found = values_.find(name);
        return found == values_.end() ? usual : std::stoll(found->second);
    }
    void into(const char* name, bool& flag) const { flag = number(name, flag ? 1 : 0) != 0; }
    void into(const char* name, Extent& extent) const {
        extent = Extent::of(extent.unit(), number(name, extent.count()));
    }
    void into(const char* name, Money& money) const { money = Money::minor(number(name, money.inMinor())); }

private:
    std::map<std::string, std::string, std::less<>> values_;
};

void set(Connection& connection, const char* name, const std::string& value) {
    change(connection,
           "INSERT INTO setting (name, value) VALUES (?, ?)"
           " ON CONFLICT (name) DO UPDATE SET value = excluded.value",
           std::string{name}, value);
}
void set(Connection& connection, const char* name, std::int64_t value) {
    set(connection, name, std::to_string(value));
}

void readAdvice(const Values& values, AdviceRules& advice) {
    values.into("advice.finish", advice.finish);
    advice.shelfLimit = static_cast<int>(values.number("advice.shelf_limit", advice.shelfLimit));
    advice.shelfAtOnce = static_cast<int>(values.number("advice.shelf_at_once", advice.shelfAtOnce));
    advice.interest = Permille{values.number("advice.interest_permille", advice.interest.count())};
    advice.holding = Width::micrometres(values.number("advice.holding_um", advice.holding.inMicrometres()));
}

void writeAdvice(Connection& connection, const AdviceRules& advice) {
    set(connection, "advice.finish", advice.finish ? 1 : 0);
    set(connection, "advice.shelf_limit", advice.shelfLimit);
    set(connection, "advice.shelf_at_once", advice.shelfAtOnce);
    set(connection, "advice.interest_permille", advice.interest.count());
    set(connection, "advice.holding_um", advice.holding.inMicrometres());
}

struct RuleNames {
    const char *trim, *kerf, *end, *stub;
};
constexpr RuleNames toothedNames{"toothed.trim", "toothed.kerf", "toothed.end", "toothed.stub"};
constexpr RuleNames ribbedNames{"ribbed.trim", "ribbed.kerf", "ribbed.end", "ribbed.stub"};

void readRules(const Values& values, const RuleNames& names, cutting::Rules& rules) {
    values.into(names.trim, rules.trim);
    values.into(names.kerf, rules.kerf);
    values.into(names.end, rules.end);
    values.into(names.stub, rules.stub);
}

void writeRules(Connection& connection, const RuleNames& names, const cutting::Rules& rules) {
    set(connection, names.trim, rules.trim.count());
    set(connection, names.kerf, rules.kerf.count());
    set(connection, names.end, rules.end.count());
    set(connection, names.stub, rules.stub.count());
}

void readPrices(const Values& values, PriceRules& prices) {
    std::string currency{prices.currency.code()};
    values.into("currency", currency);
    prices.currency =
        Currency{currency, static_cast<int>(values.number("currency.decimals", prices.currency.decimals()))};
    values.into("price.cutting", prices.cuttingCharge);
    values.into("price.minimum_line", prices.minimumLine);
    prices.tax = Permille{values.number("price.tax_permille", prices.tax.count())};
    prices.roundTotalTo = values.number("price.round_to", prices.roundTotalTo);
    values.into("price.includes_tax", prices.pricesIncludeTax);
}

void writePrices(Connection& connection, const PriceRules& prices) {
    set(connection, "currency", std::string{prices.currency.code()});
    set(connection, "currency.decimals", prices.currency.decimals());
    set(connection, "price.cutting", prices.cuttingCharge.inMinor());
    set(connection, "price.minimum_line", prices.minimumLine.inMinor());
    set(connection, "price.tax_permille", prices.tax.count());
    set(connection, "price.round_to", prices.roundTotalTo);
    set(connection, "price.includes_tax", prices.pricesIncludeTax ? 1 : 0);
    change(connection, "DELETE FROM price_step");
    for (const QuantityStep& step : prices.steps)
        change(connection, "INSERT INTO price_step (from_belts, off_permille) VALUES (?, ?)", step.from,
               step.off.count());
}

std::vector<QuantityStep> readSteps(Connection& connection) {
    std::vector<QuantityStep> steps;
    Statement rows{connection, "SELECT from_belts, off_permille FROM price_step ORDER BY from_belts"};
    while (rows.next())
        steps.push_back({rows.get<std::int64_t>(0), Permille{rows.get<std::int64_t>(1)}});
    return steps;
}

void readBuying(const Values& values, BuyingRules& buying) {
    buying.service = Permille{values.number("buying.service_permille", buying.service.count())};
    buying.deliveryDays = static_cast<int>(values.number("buying.delivery_days", buying.deliveryDays));
    buying.reviewDays = static_cast<int>(values.number("buying.review_days", buying.reviewDays));
    values.into("buying.order_cost", buying.orderCost);
}

void writeBuying(Connection& connection, const BuyingRules& buying) {
    set(connection, "buying.service_permille", buying.service.count());
    set(connection, "buying.delivery_days", buying.deliveryDays);
    set(connection, "buying.review_days", buying.reviewDays);
    set(connection, "buying.order_cost", buying.orderCost.inMinor());
}

void readCounting(const Values& values, CountRules& counting) {
    values.into("count.calliper", counting.calliper);
    values.into("count.tape", counting.tape);
    values.into("count.eye", counting.eye);
    values.into("count.approve_over", counting.approveOver);
    const auto whole = [&](const char* name, int& number) {
        number = static_cast<int>(values.number(name, number));
    };
    whole("count.minutes_a_day", counting.minutesADay);
    whole("count.days_a", counting.daysA);
    whole("count.days_b", counting.daysB);
    whole("count.days_c", counting.daysC);
}

void writeCounting(Connection& connection, const CountRules& counting) {
    set(connection, "count.calliper", counting.calliper.count());
    set(connection, "count.tape", counting.tape.count());
    set(connection, "count.eye", counting.eye.count());
    set(connection, "count.approve_over", counting.approveOver.inMinor());
    set(connection, "count.minutes_a_day", counting.minutesADay);
    set(connection, "count.days_a", counting.daysA);
    set(connection, "count.days_b", counting.daysB);
    set(connection, "count.days_c", counting.daysC);
}

void readLabels(const Values& values, LabelStock& labels) {
    const auto width = [&](const char* name, Width& into) {
        into = Width::micrometres(values.number(name, into.inMicrometres()));
    };
    width("label.width", labels.width);
    width("label.height", labels.height);
    labels.columns = static_cast<int>(values.number("label.columns", labels.columns));
    labels.rows = static_cast<int>(values.number("label.rows", labels.rows));
    width("label.left", labels.left);
    width("label.top", labels.top);
    width("label.across", labels.across);
    width("label.down", labels.down);
    values.into("label.sheet", labels.sheet);
}

void writeLabels(Connection& connection, const LabelStock& labels) {
    set(connection, "label.width", labels.width.inMicrometres());
    set(connection, "label.height", labels.height.inMicrometres());
    set(connection, "label.columns", labels.columns);
    set(connection, "label.rows", labels.rows);
    set(connection, "label.left", labels.left.inMicrometres());
    set(connection, "label.top", labels.top.inMicrometres());
    set(connection, "label.across", labels.across.inMicrometres());
    set(connection, "label.down", labels.down.inMicrometres());
    set(connection, "label.sheet", labels.sheet ? 1 : 0);
}

ShopSettings readAll(Connection& connection) {
    const Values values{connection};
    ShopSettings settings;
    values.into("name", settings.name);
    values.into("address", settings.address);
    values.into("paper", settings.paper);
    readLabels(values, settings.labels);
    readPrices(values, settings.prices);
    settings.prices.steps = readSteps(connection);
    readRules(values, toothedNames, settings.toothed);
    readRules(values, ribbedNames, settings.ribbed);
    values.into("mounting_cost", settings.mountingCost);
    settings.mostRemnants = static_cast<int>(values.number("most_remnants", settings.mostRemnants));
    readAdvice(values, settings.advice);
    readCounting(values, settings.counting);
    readBuying(values, settings.buying);
    settings.cutters = Cutters{connection}.present();
    return settings;
}

} // namespace

const ShopCutter& ShopSettings::cutterOf(CutterId id) const {
    for (const ShopCutter& each : cutters)
        if (each.id == id) return each;
    return cutters.front();
}

ShopSettings Settings::read() const {
    try {
        return readAll(connection_);
    } catch (const std::logic_error& broken) { // no number, no currency: put there behind our back
        throw StoreError{StoreError::Kind::Corrupt, connection_.path(), broken.what()};
    }
}

void Settings::write(const ShopSettings& settings) {
    set(connection_, "name", settings.name);
    set(connection_, "address", settings.address);
    set(connection_, "paper", settings.paper);
    writeLabels(connection_, settings.labels);
    writePrices(connection_, settings.prices);
    writeRules(connection_, toothedNames, settings.toothed);
    writeRules(connection_, ribbedNames, settings.ribbed);
    set(connection_, "mounting_cost", settings.mountingCost.count());
    set(connection_, "most_remnants", settings.mostRemnants);
    writeAdvice(connection_, settings.advice);
    writeCounting(connection_, settings.counting);
    writeBuying(connection_, settings.buying);
    Cutters{connection_}.write(settings.cutters);
}

namespace {

/// Name in the table, beside the figure: read and written alike.
struct NamedError {
    const char* name;
    double belt::identify::Instruments::*figure;
};
constexpr NamedError namedErrors[] = {{"measuring.calliper_um", &belt::identify::Instruments::calliper},
                                      {"measuring.rule_um", &belt::identify::Instruments::rule},
                                      {"measuring.tape_um", &belt::identify::Instruments::tape},
                                      {"measuring.worn_um", &belt::identify::Instruments::worn}};

} // namespace

belt::identify::Instruments readMeasuring(Connection& connection) {
    belt::identify::Instruments measuring;
    try {
        const Values values{connection};
        for (const auto& [name, figure] : namedErrors)
            measuring.*figure =
                static_cast<double>(values.number(name, std::llround(measuring.*figure * 1000))) / 1000;
    } catch (const std::logic_error& broken) {
        throw StoreError{StoreError::Kind::Corrupt, connection.path(), broken.what()};
    }
    return measuring;
}

void writeMeasuring(Connection& connection, const belt::identify::Instruments& measuring) {
    for (const auto& [name, figure] : namedErrors)
        set(connection, name, std::llround(measuring.*figure * 1000));
}

} // namespace riband::store
