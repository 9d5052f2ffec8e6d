#include "core/store/backup.h"
#include "core/store/files.h"
#include "core/store/fitness.h"
#include "core/store/raw.h"

#include <filesystem>

namespace riband::store {
namespace {

namespace fs = std::filesystem;
using Kind = StoreError::Kind;

std::string describe(const Disagreement& disagreement) {
    return disagreement.where + " (" + std::to_string(disagreement.book) + ", " +
           std::to_string(disagreement.found) + ") " + disagreement.detail;
}

/// A copy of the backup with all that its log holds, brought to the present schema and verified.
void prepare(const std::string& backup, const std::string& copy, bool evenIfItDisagrees) {
    refuseUnfit(backup, Connection::Mode::ReadOnly, OldSchema::Taken);
    RawDatabase{backup, isFrozen(backup) ? RawDatabase::How::Frozen : RawDatabase::How::Look}.copyTo(copy);
    Connection connection{copy};
    const Verification found = verify(connection);
    for (const Disagreement& disagreement : found.disagreements)
        if (!evenIfItDisagrees || disagreement.kind == Disagreement::Kind::Database)
            throw StoreError{Kind::Corrupt, backup, describe(disagreement)};
}

/// Gives the old shop a second name, so that there is no moment without a shop. Its log, if it has one still,
/// must not be taken for that of the new one.
std::string keepUnderOtherName(const std::string& target) {
    if (!fs::exists(target)) return {};
    requireClosed(target);
    const std::string kept = freeNameBeside(target, ".before");
    if (fs::exists(target + "-wal")) takeName(target + "-wal", kept + "-wal", true);
    std::error_code failed;
    fs::remove(target + "-shm", failed);
    fs::create_hard_link(target, kept, failed);
    if (failed) takeName(target, kept, false); // a file system without second names
    return kept;
}

void nameBack(const std::string& kept, const std::string& target) {
    if (kept.empty()) return;
    for (const char* ending : {"-wal", ""})
        if (fs::exists(kept + ending)) takeName(kept + ending, target + ending, true);
}

} // namespace

std::string restore(const std::string& backup, const std::string& asked, bool evenIfItDisagrees) {
    const std::string target = resolved(asked);
    if (!hasFolder(target)) throw StoreError{Kind::Missing, target, "no such folder"};
    if (!canWriteFolderOf(target)) throw StoreError{Kind::ReadOnly, target, "the folder can't be written"};
    std::error_code ignored;
    if (fs::equivalent(backup, target, ignored))
        throw StoreError{Kind::Exists, target, "this is the backup itself"};
    const UnfinishedFile copy{freeNameBeside(target, ".part")};
    prepare(backup, copy.path(), evenIfItDisagrees);
    const std::string kept = keepUnderOtherName(target);
    try {
        takeName(copy.path(), target, true);
    } catch (const StoreError&) {
        nameBack(kept, target);
        throw;
    }
    return kept;
}

} // namespace riband::store
