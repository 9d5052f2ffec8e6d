#include "core/store/backup.h"

#include "core/store/files.h"
#include "core/store/inner.h"
#include "core/store/statement.h"

#include <algorithm>
#include <filesystem>
#include <stdexcept>

namespace riband::store {
namespace {

using Kind = StoreError::Kind;

/// One view of the shop; others go on writing. What fails is the target, not the shop.
void copy(Connection& from, const std::string& to, const std::string& target) {
    try {
        change(from, "VACUUM INTO ?", to);
    } catch (const StoreError& error) {
        throw StoreError{error.kind(), target, error.detail()};
    }
}

Verification verified(const std::string& path) {
    Connection copy{path, Connection::Mode::ReadOnly};
    Verification found = verify(copy);
    const auto damaged =
        std::ranges::find(found.disagreements, Disagreement::Kind::Database, &Disagreement::kind);
    if (damaged != found.disagreements.end()) throw StoreError{Kind::Corrupt, path, damaged->where};
    return found;
}

} // namespace

Verification backup(Connection& from, const std::string& target, bool replace) {
    if (from.inner().inTransaction) throw std::logic_error("a shop is copied between acts");
    if (!hasFolder(target)) throw StoreError{Kind::Missing, target, "no such folder"};
    if (!replace && std::filesystem::exists(target))
        throw StoreError{Kind::Exists, target, "there is such a file already"};
    if (!canWriteFolderOf(target)) throw StoreError{Kind::ReadOnly, target, "the folder can't be written"};
    const UnfinishedFile unfinished{freeNameBeside(target, ".part")};
    copy(from, unfinished.path(), target);
    Verification found = verified(unfinished.path());
    takeName(unfinished.path(), target, replace);
    return found;
}

} // namespace riband::store
