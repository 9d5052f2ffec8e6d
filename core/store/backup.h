#pragma once

#include "core/store/connection.h"
#include "core/store/verify.h"

#include <string>

namespace riband::store {

/// Copies the shop, consistent while it is in use, to a new file beside `target` that is verified and then
/// takes its name. Throws StoreError (Exists if `target` is there already and `replace` is false, or is
/// the shop itself; Held if it is open; Corrupt if SQLite finds the copy damaged); a failed copy leaves no
/// file behind and `target` as it was. A book that disagrees with itself is copied as it is: what verify
/// found is returned.
Verification backup(Connection& from, const std::string& target, bool replace = false);

/// Puts a copy of a backup, verified and brought to the present schema, in the place of `target`. An existing
/// target must not be open (else Held); it is kept beside the new one under the name that is returned ("" if
/// there was none), damaged ones too. Throws StoreError; on failure `target` is as it was. A backup that
/// disagrees with itself is refused (Corrupt, `detail` says where) unless `evenIfItDisagrees`.
std::string restore(const std::string& backup, const std::string& target, bool evenIfItDisagrees = false);

} // namespace riband::store
