#pragma once

#include "core/shop/buying/purchase.h"

class QPagedPaintDevice;

namespace riband::ui {

/// The purchase list: what is bought and why, then belts that should not be kept. Cost prices: for the owner.
/// Returns the pages.
int paintPurchaseList(QPagedPaintDevice& device, const shop::PurchaseList& list,
                      const shop::BuyingOutlook& outlook);

} // namespace riband::ui
