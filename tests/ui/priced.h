#pragma once

#include "core/store/catalogue.h"

namespace riband::ui {

/// Gives the belt a price if it has none: the Counter asks about belts without one.
inline void givePrice(store::Connection& connection, const belt::Belt& belt) {
    store::Catalogue catalogue{connection};
    store::StockedBelt kept = *catalogue.find(belt);
    if (kept.price != WidthPrice::thousandths(0)) return;
    store::Transaction transaction{connection};
    kept.price = WidthPrice::thousandths(300);
    catalogue.change(kept);
    transaction.commit();
}

} // namespace riband::ui
