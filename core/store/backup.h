#pragma once

#include "core/store/connection.h"
#include "core/store/verify.h"

#include <string>

namespace riband::store {

/// Copies the shop, consistent while it is in use, to a new file beside `target` that is verified and then
/// takes its name. Throws StoreError (Exists if `target` is there already and `replace` is false); a failed
/// copy leaves no file behind.
Verification backup(Connection& from, const std::string& target, bool replace = false);

/// Puts a verified backup in the place of `target`. An existing target must not be open; it is kept beside
/// the new one under the name that is returned ("" if there was none). Throws StoreError; on failure `target`
/// is as it was.
std::string restore(const std::string& backup, const std::string& target);

} // namespace riband::store
