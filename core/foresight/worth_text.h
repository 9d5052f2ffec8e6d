#pragma once

#include "core/foresight/worth.h"

#include <optional>
#include <string>

namespace riband::foresight {

/// The form that `print` writes. It changes whenever what stands in it, or how a table is fitted, changes.
inline constexpr int worthTextForm = 2;

/// A worth table as text, to be kept: every figure comes back exactly.
std::string print(const WorthTable& table);
/// Nothing if the text is not such a table of this setting.
std::optional<WorthTable> readWorthTable(const Setting& setting, const std::string& text);

/// All of a setting that a worth table depends on but the guessed rate, which orders soon outweigh. Tables of
/// settings with the same words can take each other's place.
std::string print(const Setting& setting);

} // namespace riband::foresight
