#pragma once

#include "core/store/error.h"

#include <memory>
#include <string>

namespace riband::store {

/// One shop file, open: WAL, synchronous=FULL, foreign keys on. One connection a thread.
class Connection {
public:
    enum class Mode {
        Open,     ///< an existing shop, brought to the present schema
        Create,   ///< a new file; Exists if there is one
        ReadOnly, ///< looks only; refuses an older schema too
    };
    /// Throws StoreError; a file that is refused is left exactly as it was. The folder must exist.
    explicit Connection(const std::string& path, Mode mode = Mode::Open);
    /// In memory, for tests.
    static Connection inMemory();
    ~Connection();
    Connection(Connection&&) noexcept;
    Connection& operator=(Connection&&) noexcept;

    const std::string& path() const;
    int schemaVersion() const;
    /// The number of the newest migration that this program knows.
    static int newestSchema();

    struct Inner; ///< Qt's side, seen by core/store/*.cpp only
    Inner& inner() { return *inner_; }

private:
    Connection();
    static void makeFile(const std::string& path);
    std::unique_ptr<Inner> inner_;
};

/// Begins when made (BEGIN IMMEDIATE), rolls back unless committed. Not nested: throws std::logic_error.
class Transaction {
public:
    explicit Transaction(Connection& connection);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    /// Durable when it returns. Throws StoreError and rolls back if it can't be. Throws std::logic_error if a
    /// statement of it failed: half an act is never kept.
    void commit();

private:
    void rollBack() noexcept;
    Connection& connection_;
    bool open_ = true;
};

} // namespace riband::store
