#pragma once

#include "core/store/error.h"

#include <string>

namespace riband::store {

/// The StoreError for a result code of SQLite (sqlite.org/rescode.html), plain or extended.
StoreError faultOf(int code, const std::string& path, const std::string& detail);

} // namespace riband::store
