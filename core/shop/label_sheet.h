#pragma once

#include "core/store/settings.h"

namespace riband::shop {

/// How many labels of that size fit on the paper of the shop, from those edges and with those gaps.
struct LabelsThatFit {
    int columns, rows;
};
LabelsThatFit labelsThatFit(const store::ShopSettings& settings);
/// All labels of the sheet are whole on the paper; a roll always fits.
bool labelsFit(const store::ShopSettings& settings);

} // namespace riband::shop
