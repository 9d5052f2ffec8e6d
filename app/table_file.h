#pragma once

#include "core/measure/csv.h"
#include "core/measure/text.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <string>

namespace riband::app {

/// A CSV file that a person gave, with its faults gathered, so that all bad rows are told at once. "-" is
/// standard input.
class TableFile {
public:
    /// Throws BadInput if it can't be read as a table, or a needed column is missing.
    TableFile(const QString& path, const std::vector<std::string>& needed);
    /// Throws BadInput if one of these columns is missing.
    void require(const std::vector<std::string>& needed) const;
    /// Throws BadInput if there is a column that is none of these: what is not understood is not dropped.
    void refuseOthers(const std::vector<std::string>& known) const;
    const std::vector<CsvTable::Row>& rows() const { return table_.rows(); }
    bool has(std::string_view column) const { return table_.column(column).has_value(); }
    /// The field without spaces round it, and without the apostrophe that an export puts before what a
    /// spreadsheet would run; "" if there is no such column.
    std::string field(const CsvTable::Row& row, std::string_view column) const;
    /// Notes what is wrong with a field.
    void fault(const CsvTable::Row& row, std::string_view column, const QString& why);
    /// A quantity of a field, or nothing and its fault is noted.
    template <class T, class Reader>
    std::optional<T> quantity(const CsvTable::Row& row, std::string_view column, Reader&& read) {
        const Read<T> got = read(field(row, column));
        if (got) return *got;
        fault(row, column, got.reason());
        return std::nullopt;
    }
    /// A count of things from 1 to `most`, or nothing and its fault is noted.
    std::optional<std::int64_t> count(const CsvTable::Row& row, std::string_view column, std::int64_t most);
    bool faulty() const { return !faults_.isEmpty(); }
    /// Throws BadInput with all faults noted, if there are any: a line each, the first fifty.
    void refuseFaults() const;

private:
    void fault(const CsvTable::Row& row, std::string_view column, TextFault why);
    QString name_;
    CsvTable table_;
    QStringList faults_;
};

/// A table as spreadsheets write it, in UTF-8 or Latin-1. Throws BadInput if it can't be read.
CsvTable spreadsheetOf(const QString& path);
/// How a path is named to a person.
QString shownName(const QString& path);

/// The bytes of a file or of standard input. Throws BadInput if there are none to be had or too many.
QByteArray contentOf(const QString& path);

} // namespace riband::app
