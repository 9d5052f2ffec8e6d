#include "core/store/fitness.h"

#include "core/store/files.h"
#include "core/store/raw.h"
#include "core/store/schema.h"

namespace riband::store {
namespace {

using Kind = StoreError::Kind;

/// Up to here SQLite's quick check of every page costs a few tens of milliseconds and is done at every start;
/// above, a start reads the schema and both ends of every table, and `verify` does the whole.
constexpr std::int64_t checkedWhole = 24 << 20;

void refuseStranger(const std::string& path) {
    if (!isFile(path)) throw StoreError{Kind::Missing, path, "no such file"};
    // Even the header of a shop that was never closed says whose it is: it was written before the WAL began.
    RawDatabase file{path, RawDatabase::How::Frozen};
    if (file.number("PRAGMA application_id") != applicationId)
        throw StoreError{Kind::NotAShop, path, "a database of something else"};
    const auto version = file.number("PRAGMA user_version");
    if (version > Connection::newestSchema()) throw StoreError{Kind::Newer, path, std::to_string(version)};
}

void refuseVersion(RawDatabase& file, const std::string& path, OldSchema old) {
    const auto version = file.number("PRAGMA user_version");
    if (version > Connection::newestSchema()) throw StoreError{Kind::Newer, path, std::to_string(version)};
    if (version < Connection::newestSchema() && old == OldSchema::Refused)
        throw StoreError{Kind::Older, path, std::to_string(version)};
}

void refuseDamaged(RawDatabase& file, const std::string& path) {
    const auto size = file.number("SELECT page_count * page_size FROM pragma_page_count, pragma_page_size");
    if (size <= checkedWhole) {
        const std::string found = file.text("PRAGMA quick_check(1)");
        if (found != "ok") throw StoreError{Kind::Corrupt, path, found};
        return;
    }
    // Large: the schema must parse, and the greatest tables must have both their ends.
    file.number("SELECT count(*) FROM sqlite_schema");
    for (const char* ends :
         {"SELECT max(id) FROM movement", "SELECT min(id) FROM movement", "SELECT max(id) FROM piece",
          "SELECT min(id) FROM piece", "SELECT max(id) FROM sales_order", "SELECT min(id) FROM sales_order",
          "SELECT max(movement) FROM posting", "SELECT min(movement) FROM posting"})
        file.number(ends);
}

} // namespace

void refuseUnfit(const std::string& path, Connection::Mode mode, OldSchema old) {
    refuseStranger(path);
    if (mode == Connection::Mode::Open && !(canWriteFile(path) && canWriteFolderOf(path)))
        throw StoreError{Kind::ReadOnly, path, "the file or its folder can't be written"};
    RawDatabase file{path, isFrozen(path) ? RawDatabase::How::Frozen : RawDatabase::How::Look};
    refuseVersion(file, path, old);
    refuseDamaged(file, path);
}

} // namespace riband::store
