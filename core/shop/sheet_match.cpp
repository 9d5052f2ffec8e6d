#include "core/shop/sheet.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace riband::shop {

namespace {

using Field = SheetField;

struct Name {
    std::string_view written; ///< small letters and digits alone
    Field field;
};
/// The first name of a field is that of the documented tables, less its signs. The others are ordinary words
/// that spreadsheets are headed with, English and German.
constexpr std::array names{
    Name{"belt", Field::Belt},
    Name{"designation", Field::Belt},
    Name{"article", Field::Belt},
    Name{"item", Field::Belt},
    Name{"description", Field::Belt},
    Name{"riemen", Field::Belt},
    Name{"artikel", Field::Belt},
    Name{"bezeichnung", Field::Belt},
    Name{"profile", Field::Profile},
    Name{"section", Field::Profile},
    Name{"profil", Field::Profile},
    Name{"length", Field::Length},
    Name{"lengthmm", Field::Length},
    Name{"lnge", Field::Length}, // without its umlaut
    Name{"laenge", Field::Length},
    Name{"construction", Field::Construction},
    Name{"cord", Field::Construction},
    Name{"kind", Field::Kind},
    Name{"type", Field::Kind},
    Name{"art", Field::Kind},
    Name{"widthmm", Field::Width},
    Name{"width", Field::Width},
    Name{"breite", Field::Width},
    Name{"breitemm", Field::Width},
    Name{"ribs", Field::Ribs},
    Name{"rippen", Field::Ribs},
    Name{"sleeves", Field::Sleeves},
    Name{"quantity", Field::Sleeves},
    Name{"qty", Field::Sleeves},
    Name{"count", Field::Sleeves},
    Name{"pieces", Field::Sleeves},
    Name{"menge", Field::Sleeves},
    Name{"anzahl", Field::Sleeves},
    Name{"stck", Field::Sleeves},
    Name{"received", Field::Received},
    Name{"datereceived", Field::Received},
    Name{"date", Field::Received},
    Name{"eingang", Field::Received},
    Name{"datum", Field::Received},
    Name{"made", Field::Made},
    Name{"madeon", Field::Made},
    Name{"manufactured", Field::Made},
    Name{"hergestellt", Field::Made},
    Name{"place", Field::Place},
    Name{"location", Field::Place},
    Name{"shelf", Field::Place},
    Name{"bin", Field::Place},
    Name{"lagerort", Field::Place},
    Name{"platz", Field::Place},
    Name{"fach", Field::Place},
    Name{"batch", Field::Batch},
    Name{"lot", Field::Batch},
    Name{"charge", Field::Batch},
    Name{"cost", Field::Cost},
    Name{"unitcost", Field::Cost},
    Name{"costeach", Field::Cost},
    Name{"price", Field::Cost},
    Name{"preis", Field::Cost},
    Name{"piece", Field::Piece},
    Name{"oldcode", Field::Piece},
    Name{"id", Field::Piece},
    Name{"code", Field::SupplierCode},
    Name{"barcode", Field::SupplierCode},
    Name{"ean", Field::SupplierCode},
    Name{"gtin", Field::SupplierCode},
    Name{"labelled", Field::Labelled},
    Name{"labelledmm", Field::Labelled},
};

struct Documented {
    std::string_view name;
    Field field;
};
constexpr std::array documented{
    Documented{"belt", Field::Belt},         Documented{"profile", Field::Profile},
    Documented{"length", Field::Length},     Documented{"construction", Field::Construction},
    Documented{"kind", Field::Kind},         Documented{"width_mm", Field::Width},
    Documented{"ribs", Field::Ribs},         Documented{"sleeves", Field::Sleeves},
    Documented{"received", Field::Received}, Documented{"made", Field::Made},
    Documented{"place", Field::Place},       Documented{"batch", Field::Batch},
    Documented{"cost", Field::Cost},         Documented{"piece", Field::Piece},
    Documented{"code", Field::SupplierCode}, Documented{"labelled", Field::Labelled},
};

std::string plain(std::string_view head) {
    std::string letters;
    for (const char c : head)
        if (std::isalnum(static_cast<unsigned char>(c)) != 0 && (c & 0x80) == 0)
            letters += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return letters;
}

} // namespace

std::optional<std::size_t> SheetMatch::column(SheetField field) const {
    const auto found = std::find(columns.begin(), columns.end(), field);
    if (found == columns.end()) return std::nullopt;
    return static_cast<std::size_t>(found - columns.begin());
}

SheetMatch guessMatch(const std::vector<std::string>& head) {
    SheetMatch match{std::vector<SheetField>(head.size(), Field::Ignored), SheetUnit::Millimetre};
    for (std::size_t i = 0; i < head.size(); ++i) {
        const std::string written = plain(head[i]);
        const auto known = std::find_if(names.begin(), names.end(),
                                        [&](const Name& name) { return name.written == written; });
        if (known != names.end() && !match.column(known->field)) match.columns[i] = known->field;
    }
    return match;
}

std::string_view nameOf(SheetField field) {
    for (const Documented& each : documented)
        if (each.field == field) return each.name;
    return {};
}

std::optional<SheetField> fieldNamed(std::string_view name) {
    for (const Documented& each : documented)
        if (each.name == name) return each.field;
    return std::nullopt;
}

std::optional<SheetGap> gapOf(const SheetMatch& match) {
    for (const Documented& each : documented)
        if (std::count(match.columns.begin(), match.columns.end(), each.field) > 1)
            return SheetGap::TwoOfAField;
    const bool both = match.column(Field::Profile) && match.column(Field::Length);
    if (!match.column(Field::Belt) && !both && !match.column(Field::SupplierCode)) return SheetGap::NoBelt;
    if (!match.column(Field::Width) && !match.column(Field::Ribs)) return SheetGap::NoWidth;
    return std::nullopt;
}

} // namespace riband::shop
