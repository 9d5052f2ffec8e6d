#include "core/shop/price.h"

namespace riband::shop {

namespace {

/// What the highest quantity step reached takes off.
Permille offFor(const store::PriceRules& rules, std::int64_t quantity) {
    Permille off{0};
    for (const store::QuantityStep& step : rules.steps)
        if (quantity >= step.from) off = step.off;
    return off;
}

/// The tax that is contained in a price which includes it.
Money taxWithin(Money gross, Permille tax) {
    return Money::minor(roundedQuotient(gross.inMinor() * tax.count(), 1000 + tax.count()));
}

void addTax(store::LinePrice& price, const store::PriceRules& rules, Money sum) {
    if (rules.pricesIncludeTax) {
        price.total = roundedTo(sum, rules.roundTotalTo);
        price.tax = taxWithin(price.total, rules.tax);
        price.net = price.total - price.tax;
    } else {
        price.net = sum;
        price.tax = sum * rules.tax;
        price.total = roundedTo(price.net + price.tax, rules.roundTotalTo);
    }
}

constexpr store::LinePrice nothing{Money::minor(0), Money::minor(0), Money::minor(0), Money::minor(0),
                                   Money::minor(0), Money::minor(0), Money::minor(0)};

} // namespace

store::LinePrice priceOf(const store::PriceRules& rules, WidthPrice price, Extent extent,
                         std::int64_t quantity) {
    store::LinePrice line = nothing;
    if (quantity == 0) return line;
    line.width = price * (extent * quantity);
    line.discount = -(line.width * offFor(rules, quantity));
    line.cutting = rules.cuttingCharge * quantity;
    const Money sum = line.width + line.discount + line.cutting;
    line.minimum = sum < rules.minimumLine ? rules.minimumLine - sum : Money::minor(0);
    addTax(line, rules, sum + line.minimum);
    return line;
}

store::LinePrice sumOf(const std::vector<store::LinePrice>& lines) {
    store::LinePrice sum = nothing;
    for (const store::LinePrice& line : lines) {
        sum.width = sum.width + line.width;
        sum.cutting = sum.cutting + line.cutting;
        sum.discount = sum.discount + line.discount;
        sum.minimum = sum.minimum + line.minimum;
        sum.net = sum.net + line.net;
        sum.tax = sum.tax + line.tax;
        sum.total = sum.total + line.total;
    }
    return sum;
}

} // namespace riband::shop
