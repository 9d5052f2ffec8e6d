#pragma once

#include <cstdint>
#include <string>

struct sqlite3;

namespace riband::store {

/// The URI that opens a file as one that nobody changes: no lock, no file beside it.
std::string frozenUri(const std::string& path);

/// True if a shop on a medium that can't be written can be looked at: SQLite has no place there for the files
/// that readers share, and none is needed while there is no log.
bool isFrozen(const std::string& path);

/// The last one to close a shop writes its log into the file. Not this one, if there is a log.
void keepLog(sqlite3* database, const std::string& path);

/// A file under SQLite itself, without Qt and without any setting of ours: to look at a file before it is
/// known to be a shop, and to hold one while it is replaced. It is SQLite that opens and closes, never a bare
/// open(): closing a file descriptor would drop the locks that another connection of this process has on it
/// (sqlite.org/howtocorrupt.html, 2.2).
class RawDatabase {
public:
    enum class How {
        Frozen, ///< takes no lock, makes no file beside it; sees the file itself, not its log
        Look,   ///< writes nothing, and leaves a log as it is
        Write,
    };
    /// Throws StoreError. Waits two seconds for a lock: as long as another counter takes to close.
    explicit RawDatabase(const std::string& path, How how = How::Write);
    ~RawDatabase();
    RawDatabase(const RawDatabase&) = delete;
    RawDatabase& operator=(const RawDatabase&) = delete;

    /// The first value of the first row, 0 if there is none. Throws StoreError.
    std::int64_t number(const char* sql);
    std::string text(const char* sql);
    void run(const char* sql);
    /// All of it as one new file, its log included.
    void copyTo(const std::string& path);

private:
    [[noreturn]] void fail(int code) const;
    std::string path_;
    sqlite3* database_ = nullptr;
};

/// Refuses (Held) a file that is open as a database anywhere, in this program or another. Whoever gets the
/// exclusive lock is alone, and writes the log into the file when closing. What is damaged or no database
/// passes.
void requireClosed(const std::string& path);

} // namespace riband::store
