#include "core/store/raw.h"

#include "core/store/fault.h"
#include "core/store/files.h"

#include <sqlite3.h>

#include <filesystem>
#include <memory>

namespace riband::store {
namespace {

/// An absolute path as SQLite reads it in a URI (sqlite.org/uri.html): all but letters, digits and "/-._~" in
/// hexadecimal.
std::string uriOf(const std::string& path) {
    static constexpr char digits[] = "0123456789ABCDEF";
    std::string uri = "file://";
    for (const char c : std::filesystem::absolute(path).string()) {
        const auto byte = static_cast<unsigned char>(c);
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        if (plain || std::string_view{"/-._~"}.find(c) != std::string_view::npos)
            uri += c;
        else
            uri.append({'%', digits[byte >> 4], digits[byte & 15]});
    }
    return uri;
}

bool hasLog(const std::string& path) {
    std::error_code none;
    const auto size = std::filesystem::file_size(resolved(path) + "-wal", none);
    return !none && size > 0;
}

struct Finalize {
    void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
};
using Prepared = std::unique_ptr<sqlite3_stmt, Finalize>;

} // namespace

std::string frozenUri(const std::string& path) { return uriOf(path) + "?immutable=1"; }

bool isFrozen(const std::string& path) { return !canWriteFolderOf(path) && !hasLog(path); }

void keepLog(sqlite3* database, const std::string& path) {
    if (hasLog(path)) sqlite3_db_config(database, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
}

RawDatabase::RawDatabase(const std::string& path, How how) : path_{path} {
    const int access = how == How::Frozen ? SQLITE_OPEN_READONLY : SQLITE_OPEN_READWRITE;
    const std::string uri = how == How::Frozen ? frozenUri(path) : uriOf(path);
    const int code = sqlite3_open_v2(uri.c_str(), &database_, access | SQLITE_OPEN_URI, nullptr);
    if (code != SQLITE_OK) {
        const StoreError error = faultOf(code, path, database_ ? sqlite3_errmsg(database_) : "no memory");
        sqlite3_close(database_);
        throw error;
    }
    sqlite3_busy_timeout(database_, 2000);
    if (how == How::Look) keepLog(database_, path);
}

RawDatabase::~RawDatabase() { sqlite3_close(database_); }

void RawDatabase::fail(int code) const { throw faultOf(code, path_, sqlite3_errmsg(database_)); }

std::string RawDatabase::text(const char* sql) {
    sqlite3_stmt* made = nullptr;
    const int prepared = sqlite3_prepare_v2(database_, sql, -1, &made, nullptr);
    const Prepared statement{made};
    if (prepared != SQLITE_OK) fail(prepared);
    const int stepped = sqlite3_step(made);
    if (stepped == SQLITE_DONE) return {};
    if (stepped != SQLITE_ROW) fail(stepped);
    const auto* value = reinterpret_cast<const char*>(sqlite3_column_text(made, 0));
    return value ? value : "";
}

std::int64_t RawDatabase::number(const char* sql) {
    const std::string value = text(sql);
    return value.empty() ? 0 : std::stoll(value);
}

void RawDatabase::run(const char* sql) {
    if (const int code = sqlite3_exec(database_, sql, nullptr, nullptr, nullptr); code != SQLITE_OK)
        fail(code);
}

void RawDatabase::copyTo(const std::string& path) {
    sqlite3_stmt* made = nullptr;
    const int prepared = sqlite3_prepare_v2(database_, "VACUUM INTO ?", -1, &made, nullptr);
    const Prepared statement{made};
    if (prepared != SQLITE_OK) fail(prepared);
    sqlite3_bind_text(made, 1, path.c_str(), -1, SQLITE_TRANSIENT);
    if (const int stepped = sqlite3_step(made); stepped != SQLITE_DONE) fail(stepped);
}

void requireClosed(const std::string& path) {
    using Kind = StoreError::Kind;
    try {
        RawDatabase alone{path};
        alone.run("PRAGMA locking_mode = EXCLUSIVE");
        alone.run("BEGIN EXCLUSIVE");
        alone.run("COMMIT");
    } catch (const StoreError& error) {
        // A damaged shop is a reason to replace it; what is no database is open nowhere.
        if (error.kind() != Kind::Corrupt && error.kind() != Kind::NotAShop) throw;
    }
}

} // namespace riband::store
