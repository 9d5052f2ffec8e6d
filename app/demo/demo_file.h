#pragma once

#include "core/shop/shop.h"

#include <QString>

#include <functional>

namespace riband::app {

/// Makes the demo shop with `make` beside `path` and gives it that name when it is whole. An older demo shop
/// there is replaced; throws BadInput, and changes nothing, if `path` is anything else.
void writeDemoFile(const QString& path, const std::function<void(store::Connection&)>& make);

} // namespace riband::app
