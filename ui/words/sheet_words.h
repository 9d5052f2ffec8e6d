#pragma once

#include "core/shop/sheet.h"

#include <QString>

namespace riband::ui {

/// "line 3, column 5 (made): …"; `head` is that of the table.
QString say(const shop::SheetFault& fault, const std::vector<std::string>& head, const belt::Tables& tables);
/// The reason alone.
QString sayWhy(const shop::SheetFault& fault, const belt::Tables& tables);
QString say(shop::SheetGap gap);
/// What a column holds, for the person who matches them.
QString say(shop::SheetField field);

} // namespace riband::ui
