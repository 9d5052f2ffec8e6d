#pragma once

#include "app/console.h"
#include "app/options.h"
#include "core/shop/buying/purchase.h"
#include "core/shop/reports/both_ways.h"

#include <QJsonObject>

namespace riband::app {

/// In columns, or as CSV where the options say so.
void answerWith(const Options& options, const shop::ReportTable& table);

/// `riband report overrides`: replays the period both ways; Ctrl-C stops it.
Exit reportOverrides(const Options& options, const shop::Shop& shop, const shop::Period& period,
                     shop::Sees sees);
/// `riband report buy`: the purchase list.
Exit reportBuy(const Options& options);
QJsonObject jsonOf(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook);

} // namespace riband::app
