#include "core/store/worth_tables.h"

#include "core/store/statement.h"

namespace riband::store {

std::optional<StoredWorth> WorthTables::of(BeltId belt) const {
    Statement row{connection_,
                  "SELECT form, version, made_ms, orders, made_for, contents FROM worth_table WHERE belt = ?",
                  belt};
    if (!row.next()) return std::nullopt;
    return StoredWorth{row.get<int>(0),          row.get<int>(1),         row.get<Moment>(2),
                       row.get<std::int64_t>(3), row.get<std::string>(4), row.get<std::string>(5)};
}

int WorthTables::put(BeltId belt, const StoredWorth& table) {
    const int version =
        only<int>(connection_, "SELECT version FROM worth_table WHERE belt = ?", belt).value_or(0) + 1;
    change(connection_,
           "INSERT INTO worth_table (belt, form, version, made_ms, orders, made_for, contents)"
           " VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (belt) DO UPDATE SET form = excluded.form,"
           " version = excluded.version, made_ms = excluded.made_ms, orders = excluded.orders,"
           " made_for = excluded.made_for, contents = excluded.contents",
           belt, table.form, version, table.made, table.orders, table.madeFor, table.contents);
    return version;
}

} // namespace riband::store
