#pragma once

#include "core/store/ledger.h"
#include "core/store/pieces.h"

#include <string>

namespace riband::app {

// The fixed words of tables: part of their documented form, so neither translated nor changed.
std::string wordFor(cutting::PieceKind kind);
std::string wordFor(store::Act act);
std::string wordFor(store::Account account);
std::string wordFor(store::ScrapReason reason);

} // namespace riband::app
