#include "core/store/statement.h"

#include "core/store/inner.h"

namespace riband::store {

QVariant Column<std::string>::bound(const std::string& value) { return QString::fromStdString(value); }
std::string Column<std::string>::read(const QVariant& value) { return value.toString().toStdString(); }

Statement::Statement(Unrun, Connection& connection, Sql sql)
    : connection_{connection}, sql_{sql.text}, query_{connection.inner().take(sql.text)} {}

Statement::~Statement() {
    query_->finish(); // else its snapshot of the database would stay, and the WAL would grow
    connection_.inner().giveBack(sql_, std::move(query_));
}

void Statement::bind(int position, const QVariant& value) { query_->bindValue(position, value); }

void Statement::execute() {
    if (!query_->exec()) fail();
}

bool Statement::next() {
    if (query_->next()) return true;
    if (query_->lastError().isValid()) fail();
    return false;
}

Extent Statement::extent(int column, Unit unit) const {
    return kept([&] { return Extent::of(unit, get<std::int64_t>(column)); });
}
std::int64_t Statement::rowsChanged() const { return query_->numRowsAffected(); }
std::int64_t Statement::newId() const { return query_->lastInsertId().toLongLong(); }
QVariant Statement::value(int column) const { return query_->value(column); }

void Statement::failCorrupt(const char* rule) const {
    throw StoreError{StoreError::Kind::Corrupt, connection_.path(), rule};
}

void Statement::fail() const {
    connection_.inner().spoiled = true;
    connection_.inner().fail(query_->lastError());
}

} // namespace riband::store
