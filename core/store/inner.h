#pragma once

#include "core/measure/code.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <QtSql/QSqlDatabase>
#include <QtSql/QSqlError>
#include <QtSql/QSqlQuery>

#include <array>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <unordered_map>
#include <vector>

struct sqlite3;

namespace riband::store {

/// Qt's side of a connection: a database under a name of its own, and the statements that were prepared on it
/// and are not in use.
struct Connection::Inner {
    /// `file` is what SQLite opens: the path, or a URI of it.
    Inner(std::string path, const std::string& file, const QString& options);
    ~Inner();
    Inner(const Inner&) = delete;
    Inner& operator=(const Inner&) = delete;

    /// Keyed by the address of the literal.
    std::unique_ptr<QSqlQuery> take(const char* sql);
    void giveBack(const char* sql, std::unique_ptr<QSqlQuery> query);
    /// One statement that is not kept (PRAGMA, BEGIN, steps of the schema); the first value of its first row.
    std::string once(const std::string& sql);
    [[noreturn]] void fail(const QSqlError& error) const;

    /// SQLite's own handle; Debian's Qt and we use one and the same library.
    sqlite3* handle() const;

    std::string path;
    QString name;
    QSqlDatabase database;
    std::unordered_map<const char*, std::vector<std::unique_ptr<QSqlQuery>>> idle;
    bool inTransaction = false;
    bool spoiled = false; ///< a statement of the present transaction failed
    /// What follows from the present transaction's acts and is written before it is committed, once each,
    /// however often it changed: a stock of 20,000 pieces is taken over in one.
    struct Waiting {
        std::set<PieceId> words; ///< of pieces, for the index (core/store/search)
        /// Level, span, belt, person, cutter, account, reason: amount, cost (core/store/flows).
        std::map<std::array<std::int64_t, 7>, std::array<std::int64_t, 2>> flows;
        std::map<CodeKind, std::int64_t> nextCodes; ///< core/store/codes
    };
    Waiting waiting;
};

} // namespace riband::store
