#pragma once

#include "core/belt/tables.h"

#include <functional>

namespace riband::belt {

/// One field of a table, which says where it stands when it is wrong.
class Field {
public:
    Field(const std::string& file, std::size_t line, const std::string& column, const std::string& text)
        : file_{file}, line_{line}, column_{column}, text_{text} {}
    const std::string& text() const { return text_; }
    bool empty() const { return text_.empty(); }
    /// Throws the TableFault of this place.
    [[noreturn]] void fail(const std::string& what) const;

    std::int64_t whole() const;      ///< digits only
    std::int64_t millionths() const; ///< an exact decimal of at most six places
    double decimal() const;          ///< for drawing
    std::optional<double> decimalIfAny() const;
    Length length() const; ///< mm
    std::optional<Length> lengthIfAny() const;
    Width width() const; ///< mm; half a micrometre is rounded up
    std::optional<Width> widthIfAny() const;
    Confidence confidence() const;
    std::vector<std::string> words() const; ///< separated by spaces
    /// A part of this field, which fails as the field does. `text` must outlive it.
    Field part(const std::string& text) const { return {file_, line_, column_, text}; }

private:
    const std::string& file_;
    std::size_t line_;
    const std::string& column_;
    const std::string& text_;
};

/// One row of a table.
class TableRow {
public:
    TableRow(const std::string& file, const CsvTable& table, const CsvTable::Row& row)
        : file_{file}, table_{table}, row_{row} {}
    Field operator[](const std::string& column) const;
    [[noreturn]] void fail(const std::string& what) const;

private:
    const std::string& file_;
    const CsvTable& table_;
    const CsvTable::Row& row_;
};

/// Hands over each row of the table `file`. Throws TableFault if there is no such table or it is broken.
void eachRow(const TableTexts& texts, const std::string& file,
             const std::function<void(const TableRow&)>& take);

} // namespace riband::belt
