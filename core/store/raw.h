#pragma once

#include <cstdint>
#include <string>

struct sqlite3;

namespace riband::store {

/// A file under SQLite itself, without Qt and without any setting of ours: to look at a file before it is
/// known to be a shop, and to hold one while it is replaced. It is SQLite that opens and closes, never a bare
/// open(): closing a file descriptor would drop the locks that another connection of this process has on it
/// (sqlite.org/howtocorrupt.html, 2.2).
class RawDatabase {
public:
    enum class How {
        HeaderOnly, ///< takes no lock, makes no file beside it; sees the file itself, not its WAL
        Look,       ///< writes nothing, and leaves a WAL as it is
        Write,
    };
    /// Throws StoreError. Waits half a second for a lock.
    RawDatabase(const std::string& path, How how);
    ~RawDatabase();
    RawDatabase(const RawDatabase&) = delete;
    RawDatabase& operator=(const RawDatabase&) = delete;

    /// The first value of the first row, 0 if there is none. Throws StoreError.
    std::int64_t number(const char* sql);
    std::string text(const char* sql);
    void run(const char* sql);
    /// False if SQLite had to open a file that can't be written.
    bool writable() const;

private:
    [[noreturn]] void fail(int code) const;
    std::string path_;
    sqlite3* database_ = nullptr;
};

} // namespace riband::store
