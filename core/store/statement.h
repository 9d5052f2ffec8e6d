#pragma once

#include "core/measure/date.h"
#include "core/measure/extent.h"
#include "core/measure/length.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <QtCore/QString>
#include <QtCore/QVariant>

#include <concepts>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <type_traits>

class QSqlQuery;

namespace riband::store {

/// The text of a statement: a literal and nothing else, so that no value can ever be glued into it.
struct Sql {
    consteval Sql(const char* literal) : text{literal} {} // NOLINT: a literal is what it is
    const char* text;
};

// How each type of the store stands in a column. Enumerations by their value, dates as days, moments as
// milliseconds, extents as their count.
template <class T>
struct Column;
template <std::integral T>
struct Column<T> {
    static QVariant bound(T value) { return static_cast<qlonglong>(value); }
    static T read(const QVariant& value) { return static_cast<T>(value.toLongLong()); }
};
template <class T>
requires std::is_enum_v<T>
struct Column<T> {
    static QVariant bound(T value) { return static_cast<qlonglong>(value); }
    static T read(const QVariant& value) { return static_cast<T>(value.toLongLong()); }
};
template <class Row>
struct Column<Id<Row>> {
    static QVariant bound(Id<Row> id) { return static_cast<qlonglong>(id.value()); }
    static Id<Row> read(const QVariant& value) { return Id<Row>{value.toLongLong()}; }
};
template <>
struct Column<bool> {
    static QVariant bound(bool value) { return static_cast<qlonglong>(value ? 1 : 0); }
    static bool read(const QVariant& value) { return value.toLongLong() != 0; }
};
template <>
struct Column<double> {
    static QVariant bound(double value) { return value; }
    static double read(const QVariant& value) { return value.toDouble(); }
};
template <>
struct Column<std::string> {
    static QVariant bound(const std::string& value);
    static std::string read(const QVariant& value);
};
template <>
struct Column<Money> {
    static QVariant bound(Money money) { return static_cast<qlonglong>(money.inMinor()); }
    static Money read(const QVariant& value) { return Money::minor(value.toLongLong()); }
};
template <>
struct Column<WidthPrice> {
    static QVariant bound(WidthPrice price) { return static_cast<qlonglong>(price.inThousandths()); }
    static WidthPrice read(const QVariant& value) { return WidthPrice::thousandths(value.toLongLong()); }
};
template <>
struct Column<Length> {
    static QVariant bound(Length length) { return static_cast<qlonglong>(length.inNanometres()); }
    static Length read(const QVariant& value) { return Length::nanometres(value.toLongLong()); }
};
template <>
struct Column<Teeth> {
    static QVariant bound(Teeth teeth) { return static_cast<qlonglong>(teeth.count()); }
    static Teeth read(const QVariant& value) { return Teeth{value.toLongLong()}; }
};
template <>
struct Column<Extent> {
    static QVariant bound(Extent extent) { return static_cast<qlonglong>(extent.count()); }
};
template <>
struct Column<Date> {
    static QVariant bound(Date date) { return static_cast<qlonglong>(date.time_since_epoch().count()); }
    static Date read(const QVariant& value) {
        return Date{std::chrono::days{static_cast<int>(value.toLongLong())}};
    }
};
template <>
struct Column<Moment> {
    static QVariant bound(Moment moment) { return static_cast<qlonglong>(moment.time_since_epoch().count()); }
    static Moment read(const QVariant& value) {
        return Moment{std::chrono::milliseconds{value.toLongLong()}};
    }
};
template <class T>
struct Column<std::optional<T>> {
    static QVariant bound(const std::optional<T>& value) {
        return value ? Column<T>::bound(*value) : QVariant{};
    }
    static std::optional<T> read(const QVariant& value) {
        if (value.isNull()) return std::nullopt;
        return Column<T>::read(value);
    }
};

/// A statement prepared once for each connection and used again; values are bound, in the order of the
/// question marks. Throws StoreError.
class Statement {
public:
    template <class... Values>
    Statement(Connection& connection, Sql sql, const Values&... values)
        : Statement{Unrun{}, connection, sql} {
        [[maybe_unused]] int position = 0;
        (bind(position++, Column<Values>::bound(values)), ...);
        execute();
    }
    ~Statement();
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    /// To the first row, then to the next one; false behind the last.
    bool next();
    /// Of the present row. Columns count from 0.
    template <class T>
    T get(int column) const {
        return kept([&] { return Column<T>::read(value(column)); });
    }
    /// An extent needs the unit of its belt.
    Extent extent(int column, Unit unit) const;
    std::int64_t rowsChanged() const;
    std::int64_t newId() const;

private:
    /// A value that breaks the rule of its type was put there behind our back.
    template <class Read>
    auto kept(Read read) const {
        try {
            return read();
        } catch (const std::invalid_argument& broken) {
            failCorrupt(broken.what());
        }
    }
    [[noreturn]] void failCorrupt(const char* rule) const;
    struct Unrun {};
    Statement(Unrun, Connection& connection, Sql sql);
    void bind(int position, const QVariant& value);
    void execute();
    QVariant value(int column) const;
    [[noreturn]] void fail() const;

    Connection& connection_;
    const char* sql_;
    std::unique_ptr<QSqlQuery> query_;
};

/// Runs a statement that gives no rows; how many rows it changed.
template <class... Values>
std::int64_t change(Connection& connection, Sql sql, const Values&... values) {
    return Statement{connection, sql, values...}.rowsChanged();
}

/// Inserts one row; its key.
template <class Key, class... Values>
Key insert(Connection& connection, Sql sql, const Values&... values) {
    return Key{Statement{connection, sql, values...}.newId()};
}

/// The first column of the only row, if there is one.
template <class T, class... Values>
std::optional<T> only(Connection& connection, Sql sql, const Values&... values) {
    Statement statement{connection, sql, values...};
    if (!statement.next()) return std::nullopt;
    return statement.get<T>(0);
}

} // namespace riband::store
