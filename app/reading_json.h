#pragma once

#include "core/belt/reader.h"

#include <QJsonObject>

namespace riband::app {

/// docs/commands.md, "read".
QJsonObject jsonOf(const belt::Reading& reading, const belt::Tables& tables);
QJsonObject jsonOf(const belt::Understanding& understanding, const belt::Tables& tables);

/// The printed form by the profile's standard; the designation alone where no width was said.
QString writtenForm(const belt::Reading& reading, const belt::Tables& tables);
/// The width in mm, of a ribbed belt too; nothing if none was said.
std::optional<Width> widthOf(const belt::Reading& reading, const belt::Tables& tables);
std::optional<belt::WidthTolerance> toleranceOf(const belt::Reading& reading, const belt::Tables& tables);

} // namespace riband::app
