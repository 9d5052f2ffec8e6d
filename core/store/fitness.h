#pragma once

#include "core/store/connection.h"

#include <cstdint>
#include <string>

namespace riband::store {

/// Refuses, with the StoreError that says why, a file that can't be opened as a shop, and changes nothing of
/// it: no byte, no time, no file left beside it.
enum class OldSchema : std::uint8_t { Refused, Taken };
void refuseUnfit(const std::string& path, Connection::Mode mode, OldSchema old);

} // namespace riband::store
