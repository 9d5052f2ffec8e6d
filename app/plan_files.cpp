#include "app/plan_files.h"

#include "app/console.h"
#include "core/belt/reader.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <map>

namespace riband::app {

namespace {

using ui::Words;

/// A piece of unknown age is taken after those of known age.
constexpr Date unknownAge = std::chrono::year{9999} / 12 / 31;
constexpr std::int64_t mostBelts = 100'000;

Unit unitOf(const belt::Belt& belt, const belt::Tables& tables) {
    const belt::Profile* profile = tables.profile(belt.profile);
    return profile ? profile->unit() : Unit::Micrometre;
}

/// Names that may stand once only.
class Once {
public:
    std::optional<std::string> name(TableFile& file, const CsvTable::Row& row, std::string_view column) {
        const std::string name = file.field(row, column);
        const auto [at, fresh] = seen_.emplace(name, row.line);
        if (name.empty()) file.fault(row, column, Words::tr("A name is needed."));
        if (!name.empty() && fresh) return name;
        if (!fresh)
            file.fault(row, column,
                       Words::tr("“%1” stands in line %2 already.").arg(ui::text(name)).arg(at->second));
        return std::nullopt;
    }

private:
    std::map<std::string, std::size_t> seen_;
};

std::optional<StockRow> stockRow(TableFile& file, const CsvTable::Row& row, const belt::Tables& tables,
                                 Once& codes) {
    const auto code = codes.name(file, row, "piece");
    const auto kind = kindOf(file, row);
    const auto belt = beltOf(file, row, tables);
    const auto born = dateOf(file, row, "received");
    const auto extent = belt ? pieceExtentOf(file, row, *belt, tables) : std::nullopt;
    if (!code || !kind || !extent) return std::nullopt;
    return StockRow{*belt, {*code, *kind, *extent, born.value_or(unknownAge)}};
}

std::optional<OrderRow> orderRow(TableFile& file, const CsvTable::Row& row, const belt::Tables& tables,
                                 Once& ids) {
    const auto id = ids.name(file, row, "line");
    const auto quantity = file.count(row, "quantity", mostBelts);
    const auto belt = beltOf(file, row, tables);
    const auto extent = belt ? extentOf(file, row, *belt, tables) : std::nullopt;
    if (!id || !quantity || !extent) return std::nullopt;
    return OrderRow{*belt, {*id, *extent, *quantity}};
}

std::optional<cutting::Worth::Point> pointOf(TableFile& file, const CsvTable::Row& row, Unit unit) {
    const bool ribs = unit == Unit::Rib;
    const auto read = [unit](const std::string& text) { return readExtent(text, unit); };
    const auto extent = file.quantity<Extent>(row, ribs ? "ribs" : "width_mm", read);
    const auto worth = file.quantity<Extent>(row, ribs ? "worth_ribs" : "worth_mm", read);
    if (!extent || !worth) return std::nullopt;
    return cutting::Worth::Point{extent->count(), worth->count()};
}

void refuseFalling(TableFile& file, const CsvTable::Row& row, const WorthCurve& curve,
                   cutting::Worth::Point next) {
    if (curve.points.empty()) return;
    if (next.extent <= curve.points.back().extent)
        file.fault(row, curve.unit == Unit::Rib ? "ribs" : "width_mm",
                   Words::tr("The widths must rise from row to row."));
    if (next.worth < curve.points.back().worth)
        file.fault(row, curve.unit == Unit::Rib ? "worth_ribs" : "worth_mm",
                   Words::tr("The worth must not fall."));
}

} // namespace

std::optional<belt::Belt> beltOf(TableFile& file, const CsvTable::Row& row, const belt::Tables& tables) {
    const auto belt = belt::readBelt(file.field(row, "belt"), tables);
    if (belt) return *belt;
    file.fault(row, "belt", ui::say(belt.reason(), tables));
    return std::nullopt;
}

std::optional<Extent> extentOf(TableFile& file, const CsvTable::Row& row, const belt::Belt& belt,
                               const belt::Tables& tables) {
    const Unit unit = unitOf(belt, tables);
    const char* asked = unit == Unit::Rib ? "ribs" : "width_mm";
    const char* other = unit == Unit::Rib ? "width_mm" : "ribs";
    if (!file.field(row, other).empty()) {
        file.fault(row, other,
                   unit == Unit::Rib ? Words::tr("A ribbed belt is counted in ribs; leave its width empty.")
                                     : Words::tr("A toothed belt has no ribs; leave this empty."));
        return std::nullopt;
    }
    const auto extent =
        file.quantity<Extent>(row, asked, [unit](const std::string& text) { return readExtent(text, unit); });
    if (!extent || !extent->isNone()) return extent;
    file.fault(row, asked, Words::tr("It must be more than nothing."));
    return std::nullopt;
}

std::optional<Extent> pieceExtentOf(TableFile& file, const CsvTable::Row& row, const belt::Belt& belt,
                                    const belt::Tables& tables) {
    const auto extent = extentOf(file, row, belt, tables);
    if (!extent) return std::nullopt;
    const bool ribbed = extent->unit() == Unit::Rib;
    const Extent widest = ribbed ? Extent{Ribs{10'000}} : Extent{Width::millimetres(5'000)};
    if (*extent <= widest) return extent;
    file.fault(row, ribbed ? "ribs" : "width_mm",
               Words::tr("No cutter takes a piece over %1.").arg(ui::shown(widest)));
    return std::nullopt;
}

std::optional<cutting::PieceKind> kindOf(TableFile& file, const CsvTable::Row& row) {
    const std::string kind = file.field(row, "kind");
    if (kind == "sleeve") return cutting::PieceKind::Sleeve;
    if (kind == "remnant") return cutting::PieceKind::Remnant;
    if (kind == "ready") return cutting::PieceKind::Ready;
    file.fault(row, "kind", Words::tr("“%1” is none of sleeve, remnant, ready.").arg(ui::text(kind)));
    return std::nullopt;
}

std::optional<Date> dateOf(TableFile& file, const CsvTable::Row& row, std::string_view column) {
    const std::string day = file.field(row, column);
    if (day.empty()) return std::nullopt;
    const auto date = readDate(day);
    if (!date) file.fault(row, column, Words::tr("“%1” is no day; write 2026-03-31.").arg(ui::text(day)));
    return date;
}

std::vector<StockRow> readStock(const QString& path, const belt::Tables& tables) {
    TableFile file(path, {"piece", "belt", "kind", "width_mm", "ribs", "received"});
    std::vector<StockRow> stock;
    Once codes;
    for (const auto& row : file.rows())
        if (auto read = stockRow(file, row, tables, codes)) stock.push_back(std::move(*read));
    file.refuseFaults();
    return stock;
}

std::vector<OrderRow> readOrders(const QString& path, const belt::Tables& tables) {
    TableFile file(path, {"line", "belt", "width_mm", "ribs", "quantity"});
    std::vector<OrderRow> orders;
    Once ids;
    for (const auto& row : file.rows())
        if (auto read = orderRow(file, row, tables, ids)) orders.push_back(std::move(*read));
    file.refuseFaults();
    return orders;
}

WorthCurve readCurve(const QString& path) {
    TableFile file(path, {});
    const bool ribs = file.has("ribs");
    file.require({ribs ? "ribs" : "width_mm", ribs ? "worth_ribs" : "worth_mm"});
    WorthCurve curve{ribs ? Unit::Rib : Unit::Micrometre, {}};
    for (const auto& row : file.rows())
        if (const auto point = pointOf(file, row, curve.unit)) {
            refuseFalling(file, row, curve, *point);
            curve.points.push_back(*point);
        }
    file.refuseFaults();
    return curve;
}

} // namespace riband::app
