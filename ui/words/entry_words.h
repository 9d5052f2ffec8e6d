#pragma once

#include "core/measure/date.h"
#include "core/measure/text.h"

#include <QString>

#include <optional>

/// What is expected of a field, a sentence with an example, if what was typed is not it; else empty.
namespace riband::ui {

/// A width or ribs of more than nothing, and of no more than `most`.
QString wrongExtent(const QString& typed, Unit unit, std::optional<Extent> most = std::nullopt);
/// A width or ribs that were measured of what is left: nothing may be, but no more than `most`.
QString wrongRest(const QString& typed, Unit unit, Extent most);
/// An amount of money from nothing to `most`.
QString wrongAmount(const QString& typed, const Currency& currency, Money most);
/// A day; `last`: none after it.
QString wrongDay(const QString& typed, Date today, std::optional<Date> last = std::nullopt);
/// What was given as the name of a place, and can't be one.
QString wrongPlace(const std::string& said);
/// A whole number of these bounds.
QString wrongWhole(const QString& typed, std::int64_t least, std::int64_t most);

} // namespace riband::ui
