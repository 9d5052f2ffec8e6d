#pragma once

#include "core/store/orders.h"
#include "core/store/settings.h"

#include <QString>

#include <vector>

namespace riband::ui {

/// How a line's net price came about, one row each: "90 mm at 0.51", "45.90".
struct PriceLine {
    QString what;
    QString amount;
};
std::vector<PriceLine> priceLines(const store::LinePrice& price, WidthPrice widthPrice, Extent extent,
                                  std::int64_t quantity, const store::PriceRules& rules);

} // namespace riband::ui
