#include "core/store/backup.h"

#include "core/store/files.h"
#include "core/store/inner.h"
#include "core/store/raw.h"
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

/// What is at the target must not be open: a shop would go on in a file without a name, and its log would be
/// taken for that of the copy.
void makeWay(Connection& from, const std::string& target, bool replace) {
    if (!hasFolder(target)) throw StoreError{Kind::Missing, target, "no such folder"};
    if (!canWriteFolderOf(target)) throw StoreError{Kind::ReadOnly, target, "the folder can't be written"};
    if (!std::filesystem::exists(target)) return;
    std::error_code ignored;
    if (!replace || std::filesystem::equivalent(from.path(), target, ignored))
        throw StoreError{Kind::Exists, target, "there is such a file already"};
    requireClosed(target);
}

} // namespace

Verification backup(Connection& from, const std::string& asked, bool replace) {
    if (from.inner().inTransaction) throw std::logic_error("a shop is copied between acts");
    const std::string target = resolved(asked);
    makeWay(from, target, replace);
    const UnfinishedFile unfinished{freeNameBeside(target, ".part")};
    copy(from, unfinished.path(), target);
    Verification found = verified(unfinished.path());
    std::error_code ignored;
    std::filesystem::remove(target + "-wal", ignored); // of a damaged shop that is replaced
    takeName(unfinished.path(), target, replace);
    return found;
}

} // namespace riband::store
