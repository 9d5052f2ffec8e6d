#pragma once

#include "core/shop/suggest.h"

namespace riband::shop {

// What would have been suggested once, for histories that are gone through again.

/// What was known of a belt before a moment: what was asked for later is not, and there is no table.
Past pastBefore(const Shop& shop, const store::StockedBelt& belt, const store::ShopSettings& settings,
                Extent widest, Moment moment);

/// The lines that a sleeve can give; of others nothing is learned.
foresight::Order possible(const foresight::Order& order, const foresight::Setting& setting);

/// The suggestion by a future that somebody else keeps; none where the belt can't be weighed. Pure, and the
/// one that the counter gets.
Suggestion suggestBy(const Outlook& outlook, const Future* future, const cutting::Limits& limits = {});

} // namespace riband::shop
