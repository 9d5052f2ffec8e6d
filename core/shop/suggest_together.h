#pragma once

#include "core/shop/suggest.h"

namespace riband::shop {

/// Pure. As `suggest`, for what several orders wait for: the exact plan of the batch is weighed beside what
/// look-ahead would choose, both by the same futures; docs/foresight.md, "In the program". No others.
Suggestion suggestTogether(const Outlook& outlook, const cutting::Limits& limits = {});

} // namespace riband::shop
