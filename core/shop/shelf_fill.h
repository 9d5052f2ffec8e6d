#pragma once

#include "core/foresight/fill.h"
#include "core/shop/suggest.h"

namespace riband::shop {

/// Ready belts of each listed width that lie there, less those that the plan takes; at most what foresight
/// counts.
foresight::Stock shelfStock(const Outlook& outlook, const cutting::Plan& plan);
/// The widths of a choice, narrow first.
std::vector<Extent> widthsOf(const foresight::Setting& setting, const foresight::Fill::Choice& choice);
/// Adds to each mounting of the way what should be cut for the shelf from its rest, by the same G that weighs
/// a rest anywhere else, and prices it.
void fillShelf(const Outlook& outlook, const foresight::WorthTable& table, Way& way);
/// Sets what the way costs by the table, and the worth of what it leaves.
void priceWay(const Outlook& outlook, const foresight::WorthTable& table, Way& way);

} // namespace riband::shop
