#include "core/store/connection.h"

#include "core/store/codes.h"
#include "core/store/fault.h"
#include "core/store/files.h"
#include "core/store/fitness.h"
#include "core/store/flows.h"
#include "core/store/inner.h"
#include "core/store/raw.h"
#include "core/store/schema.h"
#include "core/store/search.h"

#include <QtSql/QSqlDriver>

#include <atomic>
#include <stdexcept>

namespace riband::store {
namespace {

QString nextName() {
    static std::atomic<int> count{0};
    return QStringLiteral("riband-%1").arg(++count);
}

/// Five seconds: longer than any act of another counter, shorter than a person's patience.
QString usualOptions() { return QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000"); }

/// What holds for every connection. FULL: a commit is on the disk before it returns, in WAL mode too.
void setUp(Connection::Inner& inner) {
    for (const char* pragma :
         {"PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON", "PRAGMA trusted_schema = OFF",
          "PRAGMA cell_size_check = ON", "PRAGMA cache_size = -32768", "PRAGMA temp_store = MEMORY",
          "PRAGMA journal_size_limit = 67108864"})
        inner.once(pragma);
}

/// Opened as for writing where that is allowed, for only then SQLite clears away behind itself the files that
/// it makes beside a shop.
std::unique_ptr<Connection::Inner> toLookAt(const std::string& path) {
    if (isFrozen(path))
        return std::make_unique<Connection::Inner>(
            path, frozenUri(path),
            usualOptions() + QStringLiteral(";QSQLITE_OPEN_READONLY;QSQLITE_OPEN_URI"));
    auto inner = std::make_unique<Connection::Inner>(path, path, usualOptions());
    inner->once("PRAGMA query_only = ON");
    keepLog(inner->handle(), path);
    return inner;
}

void useWal(Connection::Inner& inner) {
    const std::string mode = inner.once("PRAGMA journal_mode = WAL");
    if (mode != "wal") throw StoreError{StoreError::Kind::Failed, inner.path, "no write-ahead log: " + mode};
}

} // namespace

Connection::Inner::Inner(std::string path_, const std::string& file, const QString& options)
    : path{std::move(path_)}, name{nextName()}, database{QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"),
                                                                                   name)} {
    database.setDatabaseName(QString::fromStdString(file));
    database.setConnectOptions(options);
    if (!database.open()) {
        const QSqlError error = database.lastError();
        database = {};
        QSqlDatabase::removeDatabase(name);
        fail(error);
    }
}

Connection::Inner::~Inner() {
    idle.clear();
    database.close();
    database = {};
    QSqlDatabase::removeDatabase(name);
}

std::unique_ptr<QSqlQuery> Connection::Inner::take(const char* sql) {
    if (auto& kept = idle[sql]; !kept.empty()) {
        auto query = std::move(kept.back());
        kept.pop_back();
        return query;
    }
    auto query = std::make_unique<QSqlQuery>(database);
    query->setForwardOnly(true);
    if (!query->prepare(QString::fromUtf8(sql))) fail(query->lastError());
    return query;
}

void Connection::Inner::giveBack(const char* sql, std::unique_ptr<QSqlQuery> query) {
    idle[sql].push_back(std::move(query));
}

std::string Connection::Inner::once(const std::string& sql) {
    QSqlQuery query{database};
    query.setForwardOnly(true);
    if (!query.exec(QString::fromStdString(sql))) fail(query.lastError());
    return query.next() ? query.value(0).toString().toStdString() : std::string{};
}

sqlite3* Connection::Inner::handle() const {
    return *static_cast<sqlite3* const*>(database.driver()->handle().constData());
}

void Connection::Inner::fail(const QSqlError& error) const {
    throw faultOf(error.nativeErrorCode().toInt(), path,
                  (error.databaseText().isEmpty() ? error.driverText() : error.databaseText()).toStdString());
}

Connection::Connection() = default;
Connection::~Connection() = default;
Connection::Connection(Connection&&) noexcept = default;
Connection& Connection::operator=(Connection&&) noexcept = default;

Connection::Connection(const std::string& path, Mode mode) {
    if (mode == Mode::Create) makeFile(path);
    refuseUnfit(path, mode, mode == Mode::ReadOnly ? OldSchema::Refused : OldSchema::Taken);
    inner_ = mode == Mode::ReadOnly ? toLookAt(path) : std::make_unique<Inner>(path, path, usualOptions());
    setUp(*inner_);
    if (mode == Mode::ReadOnly) return;
    useWal(*inner_);
    bringUp(*this, migrations());
    wordBelts(*this);
}

void Connection::makeFile(const std::string& path) {
    if (!hasFolder(path)) throw StoreError{StoreError::Kind::Missing, path, "no such folder"};
    if (!canWriteFolderOf(path))
        throw StoreError{StoreError::Kind::ReadOnly, path, "the folder can't be written"};
    const UnfinishedFile unfinished{freeNameBeside(path, ".new")};
    {
        Connection made;
        made.inner_ = std::make_unique<Inner>(unfinished.path(), unfinished.path(), usualOptions());
        setUp(*made.inner_);
        made.inner_->once("PRAGMA application_id = " + std::to_string(applicationId));
        bringUp(made, migrations());
        useWal(*made.inner_);
    }
    takeName(unfinished.path(), path, false);
}

Connection Connection::inMemory() {
    Connection connection;
    connection.inner_ = std::make_unique<Inner>(":memory:", ":memory:", usualOptions());
    setUp(*connection.inner_);
    connection.inner_->once("PRAGMA application_id = " + std::to_string(applicationId));
    bringUp(connection, migrations());
    return connection;
}

const std::string& Connection::path() const { return inner_->path; }
int Connection::schemaVersion() const { return std::stoi(inner_->once("PRAGMA user_version")); }

int Connection::newestSchema() {
    static const int newest = migrations().back().number;
    return newest;
}

Transaction::Transaction(Connection& connection) : connection_{connection} {
    auto& inner = connection_.inner();
    if (inner.inTransaction) throw std::logic_error("a transaction in a transaction");
    inner.once("BEGIN IMMEDIATE");
    inner.inTransaction = true;
    inner.spoiled = false;
    inner.waiting = {};
}

Transaction::~Transaction() {
    if (open_) rollBack();
}

void Transaction::rollBack() noexcept {
    open_ = false;
    auto& inner = connection_.inner();
    inner.inTransaction = false;
    inner.waiting = {};
    // SQLite has rolled back by itself after some errors (a full disk); then there is nothing left to do.
    QSqlQuery{inner.database}.exec(QStringLiteral("ROLLBACK"));
}

void Transaction::commit() {
    if (!open_) throw std::logic_error("this transaction is over");
    auto& inner = connection_.inner();
    if (inner.spoiled) throw std::logic_error("a part of this transaction failed: it can't be committed");
    try {
        writeFlows(connection_);
        writeCodes(connection_);
        indexWaiting(connection_);
        inner.once("COMMIT");
    } catch (...) {
        rollBack();
        throw;
    }
    open_ = false;
    inner.inTransaction = false;
}

} // namespace riband::store
