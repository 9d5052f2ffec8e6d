#pragma once

#include "core/belt/reader.h"
#include "core/measure/csv.h"
#include "core/measure/text.h"
#include "core/shop/receive.h"

#include <variant>

namespace riband::shop {

/// What a column of somebody's table holds. One logic for a stock that is taken over, a delivery by file, the
/// screen and the command line.
enum class SheetField : std::uint8_t {
    Ignored,
    Belt,         ///< profile and length, as people write it
    Profile,      ///< with Length beside it, instead of Belt
    Length,       ///< mm, or the code of an inch belt
    Construction, ///< word of the shop for body or cord; goes behind the belt
    Kind,         ///< sleeve, remnant or offcut, ready; without the column it is guessed (sleeve_guess.h)
    Width,        ///< of a toothed belt
    Ribs,         ///< of a ribbed belt
    Sleeves,      ///< so many like ones, 1 without the column
    Received,     ///< day it came: its age if Made is not known
    Made,
    Place,
    Batch,
    Cost,         ///< of each
    Piece,        ///< the old code
    SupplierCode, ///< on the supplier's label; a known one stands for the belt
    Labelled,     ///< width or ribs on the label, where something else was measured
};

/// In what a width without a unit is told.
enum class SheetUnit : std::uint8_t { Millimetre, Centimetre, Inch };

struct SheetMatch {
    std::vector<SheetField> columns; ///< one for each column of the table
    SheetUnit unit = SheetUnit::Millimetre;
    std::optional<std::size_t> column(SheetField field) const;
};

/// What the heads of the columns seem to say: "width_mm", "Width (mm)", "WIDTH" are all Width. A field is
/// given to the first column that seems to hold it.
SheetMatch guessMatch(const std::vector<std::string>& head);
/// The name that a field has in documented tables: "width_mm"; "" for Ignored.
std::string_view nameOf(SheetField field);
std::optional<SheetField> fieldNamed(std::string_view name);

/// What is missing before any row can be read; nothing if none is.
enum class SheetGap { NoBelt, NoWidth, TwoOfAField };
std::optional<SheetGap> gapOf(const SheetMatch& match);

/// Why a row can't be taken in.
struct SheetFault {
    enum class Problem {
        UnknownKind,
        NoDay,
        FutureDay,   ///< nothing that is here was made or came then
        CountRibs,   ///< a ribbed belt, but a width
        NoRibs,      ///< a toothed belt, but ribs
        Nothing,     ///< no width at all
        TooWide,     ///< than widestPiece
        TooDear,     ///< than dearestSleeve
        BadCount,    ///< not 1 to 500
        NoPlace,     ///< a code of the shop, too long, or more than one line
        UnknownCode, ///< no belt, and a supplier's code that is tied to none
    };
    std::size_t line;   ///< of the text, from 1
    std::size_t column; ///< from 0
    std::variant<Problem, TextFault, belt::ReadFault> why;
    std::string said; ///< the field
};

struct SheetRow {
    std::size_t line;
    Delivery delivery;
    std::string was;          ///< the old code
    bool newBelt;             ///< the shop has not kept it before
    bool kindGuessed = false; ///< by its width
};
struct Sheet {
    std::vector<SheetRow> rows;     ///< the good ones
    std::vector<SheetFault> faults; ///< by line; a row has as many as it has bad fields
    bool stopped = false;           ///< by goOn: the rest was not read
    std::vector<Delivery> deliveries() const;
};
/// Reads every row; takes in nothing. The match has no gap.
Sheet readSheet(const Shop& shop, const CsvTable& table, const SheetMatch& match, const GoOn& goOn = nullptr);

} // namespace riband::shop
