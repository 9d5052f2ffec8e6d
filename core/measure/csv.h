#pragma once

#include "core/measure/outcome.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace riband {

/// Where and why a table in text form can't be read. Lines and columns count from 1; column 0: the whole
/// line.
struct CsvFault {
    enum class Kind {
        TooLarge,    ///< the text is over the limit
        LineTooLong, ///< one row over 64 KiB
        NulCharacter,
        NotUtf8,
        OpenQuote,     ///< a quote that is never closed, or text behind a closed one
        WrongFields,   ///< a row with more or fewer fields than the head
        MissingColumn, ///< `name` is not in the head
        DoubleColumn,  ///< `name` stands twice in the head
        NoHead,
    };
    Kind kind;
    std::size_t line = 0;
    std::size_t column = 0;
    std::string name;
};

/// A table (RFC 4180) with a head line, separated by what the head line has most of: commas, semicolons, tabs
/// or upright bars. Immutable. A UTF-8 byte order mark is skipped. Columns may be without a name.
class CsvTable {
public:
    struct Row {
        std::size_t line; ///< where the row begins
        std::vector<std::string> fields;
    };
    static Outcome<CsvTable, CsvFault> read(std::string_view text, std::size_t limit = 64u << 20);

    const std::vector<std::string>& head() const { return head_; }
    const std::vector<Row>& rows() const { return rows_; }
    /// The index of a column by its name, exactly as written.
    std::optional<std::size_t> column(std::string_view name) const;

private:
    std::vector<std::string> head_;
    std::vector<Row> rows_;
};

/// A text of a spreadsheet as UTF-8: as it is if it is that, else taken for ISO 8859-1 (Latin-1).
std::string asUtf8(std::string_view bytes);

/// The text of a field without spaces round it, and without the apostrophe that csvField puts before what a
/// spreadsheet would run.
std::string csvValue(std::string_view field);

/// One field quoted where needed. A field that a spreadsheet would run as a formula (= + - @ at its start,
/// and not a plain number) is written with an apostrophe before it.
std::string csvField(std::string_view text);

} // namespace riband
