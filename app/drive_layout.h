#pragma once

#include "app/options.h"
#include "core/belt/drive/route_choices.h"

namespace riband::app {

/// The pulleys of --layout. Throws BadInput with every row that is wrong.
belt::drive::Layout layoutOf(const Options& options, const belt::Profile* profile);
/// By --move, --along and --adjust; nothing if none can be set.
std::optional<belt::drive::Mover> moverOf(const Options& options, const belt::drive::Layout& layout);

} // namespace riband::app
