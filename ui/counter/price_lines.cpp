#include "ui/counter/price_lines.h"

#include "core/measure/text.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QLocale>

namespace riband::ui {

namespace {

struct PriceWords {
    Q_DECLARE_TR_FUNCTIONS(PriceWords)
};

QString each(WidthPrice price, const Currency& currency) {
    return text(printWidthPrice(price, currency)).replace(QLatin1Char('.'), QLocale().decimalPoint());
}

} // namespace

std::vector<PriceLine> priceLines(const store::LinePrice& price, WidthPrice widthPrice, Extent extent,
                                  std::int64_t quantity, const store::PriceRules& rules) {
    const Currency& currency = rules.currency;
    const auto amount = [&](Money money) { return shown(money, currency); };
    if (widthPrice.inThousandths() == 0)
        return {{PriceWords::tr("This belt has no price yet: give it one on the Shop page."), {}}};
    std::vector<PriceLine> lines{{PriceWords::tr("%1 at %2", "width and its price")
                                      .arg(shown(extent * quantity), each(widthPrice, currency)),
                                  amount(price.width)}};
    if (price.cutting.inMinor() != 0)
        lines.push_back({PriceWords::tr("%n cuts at %1", nullptr, static_cast<int>(quantity))
                             .arg(amount(rules.cuttingCharge)),
                         amount(price.cutting)});
    if (price.discount.inMinor() != 0)
        lines.push_back({PriceWords::tr("for the quantity"), amount(price.discount)});
    if (price.minimum.inMinor() != 0)
        lines.push_back({PriceWords::tr("up to the least price of a line"), amount(price.minimum)});
    return lines;
}

} // namespace riband::ui
