#include "core/store/number_rows.h"

#include "core/store/fault.h"
#include "core/store/inner.h"

#include <sqlite3.h>

namespace riband::store {

NumberRows::NumberRows(Unrun, Connection& connection, Sql sql) : connection_{connection} {
    const int code = sqlite3_prepare_v2(connection.inner().handle(), sql.text, -1, &statement_, nullptr);
    if (code != SQLITE_OK) fail(code);
}

NumberRows::~NumberRows() { sqlite3_finalize(statement_); }

void NumberRows::bind(int position, const QVariant& value) {
    const int code = value.isNull() ? sqlite3_bind_null(statement_, position + 1)
                                    : sqlite3_bind_int64(statement_, position + 1, value.toLongLong());
    if (code != SQLITE_OK) fail(code);
}

bool NumberRows::next() {
    const int code = sqlite3_step(statement_);
    if (code != SQLITE_ROW && code != SQLITE_DONE) fail(code);
    return code == SQLITE_ROW;
}

std::int64_t NumberRows::number(int column) const { return sqlite3_column_int64(statement_, column); }

Extent NumberRows::extent(int column, Unit unit) const {
    try {
        return Extent::of(unit, number(column));
    } catch (const std::invalid_argument& broken) { // put there behind our back
        throw StoreError{StoreError::Kind::Corrupt, connection_.path(), broken.what()};
    }
}

void NumberRows::fail(int code) const {
    connection_.inner().spoiled = true;
    throw faultOf(code, connection_.path(), sqlite3_errmsg(connection_.inner().handle()));
}

} // namespace riband::store
