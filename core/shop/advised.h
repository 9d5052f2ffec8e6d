#pragma once

#include "core/shop/suggest.h"

namespace riband::shop {

/// A way as it is kept for the owner.
store::AdvisedWay advisedWay(const Outlook& outlook, const Way& way);
/// Two ways for parts of the same order, one after the other.
store::AdvisedWay sumOf(store::AdvisedWay one, const store::AdvisedWay& other);
/// Whether other pieces are cut.
bool otherPieces(const store::AdvisedWay& one, const store::AdvisedWay& other);

} // namespace riband::shop
