#pragma once

#include "ui/counter/choices.h"
#include "ui/counter/evidence.h"
#include "ui/desk/stock_reader.h"

namespace riband::ui {

/// What could be sold instead of a belt that something known speaks against: the right profile's belts with
/// what of them is here (as far as `stock` has read it), and the said one all the same. `stopped`: the sale
/// waits for a choice.
Choices evidenceChoices(const belt::Reading& said, const std::vector<Evidence::Finding>& findings,
                        bool stopped, StockReader& stock, const belt::Tables& tables);

} // namespace riband::ui
