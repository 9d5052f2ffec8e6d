#pragma once

#include "core/store/statement.h"

struct sqlite3_stmt;

namespace riband::store {

/// Rows of whole numbers, read from SQLite itself: reports read some hundred thousand of them, and Qt makes
/// four allocations of a row that has a few figures. For what is read once and in bulk; all else is a
/// Statement. Throws StoreError.
class NumberRows {
public:
    template <class... Values>
    NumberRows(Connection& connection, Sql sql, const Values&... values)
        : NumberRows{Unrun{}, connection, sql} {
        [[maybe_unused]] int position = 0;
        (bind(position++, Column<Values>::bound(values)), ...);
    }
    ~NumberRows();
    NumberRows(const NumberRows&) = delete;
    NumberRows& operator=(const NumberRows&) = delete;

    /// To the first row, then to the next one; false behind the last.
    bool next();
    /// Of the present row, 0 for NULL. Columns count from 0.
    std::int64_t number(int column) const;
    Money money(int column) const { return Money::minor(number(column)); }
    Moment moment(int column) const { return Moment{std::chrono::milliseconds{number(column)}}; }
    Date date(int column) const { return Date{std::chrono::days{static_cast<int>(number(column))}}; }
    /// An extent needs the unit of its belt.
    Extent extent(int column, Unit unit) const;
    Unit unit(int column) const { return static_cast<Unit>(number(column)); }

private:
    struct Unrun {};
    NumberRows(Unrun, Connection& connection, Sql sql);
    void bind(int position, const QVariant& value);
    [[noreturn]] void fail(int code) const;

    Connection& connection_;
    sqlite3_stmt* statement_ = nullptr;
};

} // namespace riband::store
