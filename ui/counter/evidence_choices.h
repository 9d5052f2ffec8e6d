#pragma once

#include "ui/counter/choices.h"
#include "ui/counter/evidence.h"

namespace riband::ui {

/// What could be sold instead of a belt that something known speaks against: the right profile's belts with
/// what of them is here, and the said one all the same. `stopped`: the sale waits for a choice. Reads the
/// store.
Choices evidenceChoices(const belt::Reading& said, const std::vector<Evidence::Finding>& findings,
                        bool stopped, const Session& session);

} // namespace riband::ui
