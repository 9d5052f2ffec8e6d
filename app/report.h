#pragma once

#include "app/console.h"
#include "app/options.h"
#include "core/shop/buying/purchase.h"

#include <QJsonObject>

namespace riband::app {

/// `riband report buy`: the purchase list.
Exit reportBuy(const Options& options);
QJsonObject jsonOf(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook);

} // namespace riband::app
