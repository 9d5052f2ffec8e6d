#pragma once

#include "ui/desk/stock_reader.h"

namespace riband::ui {

/// "up to 380 mm here", "6 ribs ready"; "" if nothing of the belt is in the shop. Any construction counts.
QString stockHere(const belt::Belt& belt, const StockReader::Stock& stock);

} // namespace riband::ui
