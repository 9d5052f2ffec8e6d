#include "ui/review/behind.h"

#include "core/measure/text.h"
#include "ui/words/report_words.h"
#include "ui/words/words.h"

#include <QStringList>

#include <algorithm>

namespace riband::ui {

namespace {

using shop::Basis;
using shop::ReportTable;

constexpr std::size_t mostMovements = 500;

Currency currencyOf(const shop::Shop& shop) {
    return store::Settings{shop.connection}.read().prices.currency;
}

QString goes(const store::Movement& movement, Unit unit) {
    QStringList parts;
    for (const store::Posting& posting : movement.postings()) {
        if (posting.amount == 0) continue;
        const std::int64_t size = posting.amount < 0 ? -posting.amount : posting.amount;
        QString part = say(posting.account) +
                       (posting.amount < 0 ? QStringLiteral(" −") : QStringLiteral(" +")) +
                       shown(Extent::of(unit, size));
        if (posting.reason) part += QStringLiteral(" (%1)").arg(say(*posting.reason));
        parts << part;
    }
    return parts.join(QStringLiteral(", "));
}

/// The newest movements, and what all of them come to in the figure.
ReadBasis movements(const store::Behind& what, const std::string& figure) {
    return [what, figure](const shop::Shop& shop) {
        shop::Moves moves = shop::movesBehind(shop, what, figure, currencyOf(shop), mostMovements);
        const store::Catalogue catalogue{shop.connection};
        const store::People people{shop.connection};
        Basis basis = std::move(moves.basis);
        basis.lines.columns = {"at", "what", "person", "belt", "from_to"};
        const bool isSum = !basis.sum.empty();
        if (isSum) basis.lines.columns.emplace_back("counts");
        for (const auto& [recorded, counts] : moves.newest) {
            const store::Movement& movement = recorded.movement;
            const auto belt = catalogue.at(movement.about().belt);
            auto& line = basis.lines.rows.emplace_back(
                std::vector{shown(dayOf(movement.about().at)).toStdString(), say(movement).toStdString(),
                            people.at(movement.about().person).initials, belt.designation,
                            goes(movement, belt.unit).toStdString()});
            if (isSum) line.push_back(counts);
        }
        return basis;
    };
}

std::string fieldOf(const ReportTable& table, std::size_t row, const std::string& column) {
    const auto at = std::find(table.columns.begin(), table.columns.end(), column);
    return at == table.columns.end() ? ""
                                     : table.rows[row][static_cast<std::size_t>(at - table.columns.begin())];
}

/// A figure that is reckoned from others of its row: these.
ReadBasis others(const ReportTable& table, std::size_t row, const std::vector<std::string>& columns) {
    Basis basis{.lines = {{"what", "amount"}, {}}};
    for (const std::string& column : columns)
        if (const std::string field = fieldOf(table, row, column); !field.empty())
            basis.lines.rows.push_back({column, field});
    basis.all = static_cast<std::int64_t>(basis.lines.rows.size());
    if (basis.all == 0) return {};
    return [basis](const shop::Shop&) { return basis; };
}

bool isOneOf(const std::string& column, std::initializer_list<const char*> names) {
    return std::any_of(names.begin(), names.end(), [&](const char* name) { return column == name; });
}

ReadBasis ofOrder(const std::string& order, const std::string& figure) {
    return [order, figure](const shop::Shop& shop) {
        return shop::orderLinesBehind(shop, order, figure, currencyOf(shop));
    };
}

ReadBasis ofPieces(Date day, shop::StockPart part, const std::string& figure, shop::Sees sees) {
    return [=](const shop::Shop& shop) {
        return shop::piecesBehind(shop, day, part, figure, currencyOf(shop), sees);
    };
}

/// The lines of those belts.
ReadBasis ofBelts(const ReportTable& table, const std::vector<std::size_t>& rows) {
    Basis basis{.lines = {table.columns, {}}, .all = static_cast<std::int64_t>(rows.size())};
    for (const std::size_t row : rows)
        basis.lines.rows.push_back(table.rows[row]);
    basis.sum = std::to_string(rows.size());
    return [basis](const shop::Shop&) { return basis; };
}

} // namespace

Behind behindWaste(const std::vector<shop::WasteRow>& rows) {
    std::vector<store::Behind> behind;
    for (const shop::WasteRow& row : rows)
        behind.push_back(row.behind);
    return [behind](std::size_t row, const std::string& column) {
        const auto what = row < behind.size() ? shop::behindFigure(behind[row], column) : std::nullopt;
        return what ? movements(*what, column) : ReadBasis{};
    };
}

Behind behindCompared(const std::vector<shop::ComparedRow>& rows, const shop::Compared& periods) {
    std::vector<store::Behind> behind;
    for (const shop::ComparedRow& row : rows)
        behind.push_back(row.now.behind);
    return [behind, before = periods.before, lastYear = periods.yearBefore](std::size_t row,
                                                                            const std::string& column) {
        if (row >= behind.size()) return ReadBasis{};
        std::string figure = column;
        store::Behind line = behind[row];
        for (const auto& [end, then] :
             {std::pair{std::string{"_year_before"}, lastYear}, std::pair{std::string{"_before"}, before}}) {
            const auto at = figure.find(end);
            if (at == std::string::npos) continue;
            figure.erase(at, end.size());
            line.from = then.from;
            line.until = then.until;
        }
        const auto what = shop::behindFigure(line, figure);
        return what ? movements(*what, figure) : ReadBasis{};
    };
}

Behind behindMonths(std::vector<store::Behind> months, const ReportTable& table) {
    return [months = std::move(months), table](std::size_t row, const std::string& column) {
        if (row >= months.size()) return ReadBasis{};
        if (isOneOf(column, {"chance_low_percent", "chance_high_percent", "news"}))
            return others(table, row, {"lost_percent", "chance_low_percent", "chance_high_percent", "cuts"});
        const auto what = shop::behindFigure(months[row], column);
        return what ? movements(*what, column) : ReadBasis{};
    };
}

Behind behindStock(const shop::StockReport& report, Date day, const ReportTable& table, shop::Sees sees) {
    return [report, day, table, sees](std::size_t row, const std::string& column) -> ReadBasis {
        if (row < report.belts.size()) {
            if (column == "cover_days") return others(table, row, {"width", "sold_in_year"});
            if (column == "pace") return others(table, row, {"sold_in_year", "cover_days", "oldest_days"});
            const store::BeltId belt = report.belts[row].belt;
            if (column != "sold_in_year") return ofPieces(day, {.belts = {belt}}, column, sees);
            const Moment until{day + std::chrono::days{1}};
            store::Behind year{until - std::chrono::days{365}, until, {belt}};
            year.unit = report.belts[row].unit;
            return movements(*shop::behindFigure(year, "sold"), "sold");
        }
        row -= report.belts.size();
        if (row < report.ages.size()) return ofPieces(day, {.age = report.ages[row]}, column, sees);
        row -= report.ages.size();
        if (row >= report.covers.size()) return {};
        shop::StockPart part;
        std::vector<std::size_t> rows;
        for (std::size_t i = 0; i < report.belts.size(); ++i)
            if (shop::isOf(report.covers[row], report.belts[i])) {
                part.belts.insert(report.belts[i].belt);
                rows.push_back(i);
            }
        if (rows.empty()) return {};
        return column == "belts" ? ofBelts(table, rows) : ofPieces(day, part, column, sees);
    };
}

Behind behindMargin(const shop::MarginReport& report, const shop::Period& period, const ReportTable& table) {
    std::vector<shop::SalesPart> parts;
    for (const shop::MarginRow& row : report.belts)
        parts.push_back({.belt = row.name});
    for (const shop::MarginRow& row : report.customers)
        parts.push_back({.customer = row.name});
    return [parts, period, table](std::size_t row, const std::string& column) -> ReadBasis {
        if (row >= parts.size()) return ofOrder(fieldOf(table, row, "order"), column);
        if (column == "price") return {};
        if (column == "margin_percent") return others(table, row, {"margin", "revenue"});
        if (isOneOf(column, {"below_cost", "proposed_price"}))
            return others(table, row, {"price", "full_cost"});
        if (column != "full_cost")
            return [part = parts[row], period, column](const shop::Shop& shop) {
                return shop::salesBehind(shop, period, part, column, currencyOf(shop));
            };
        if (!parts[row].belt) return {};
        return [belt = *parts[row].belt, period](const shop::Shop& shop) {
            return shop::fullCostBehind(shop, period, belt, currencyOf(shop));
        };
    };
}

Behind behindDay(const shop::DayReport& report, Date day, const ReportTable& table) {
    return [=](std::size_t row, const std::string& column) -> ReadBasis {
        if (row < report.takings.size())
            return [day, kind = report.takings[row].kind, column](const shop::Shop& shop) {
                return shop::takingsBehind(shop, day, kind, column, currencyOf(shop));
            };
        if (const std::size_t made = row - report.takings.size(); made < report.made.size())
            return [day, state = report.made[made].state, column](const shop::Shop& shop) {
                return shop::ordersMadeBehind(shop, day, state, column, currencyOf(shop));
            };
        return ofOrder(fieldOf(table, row, "order"), column);
    };
}

Behind behindOverrides(const shop::Period& period, const ReportTable& table,
                       std::shared_ptr<const shop::BothWays> played, shop::Sees sees) {
    return [=](std::size_t row, const std::string& column) -> ReadBasis {
        const std::string kind = table.rows[row].front();
        if (kind == "order") {
            if (isOneOf(column, {"replayed_mm", "replayed_cost"}))
                return others(table, row, {"as_done_mm", "as_suggested_mm", "replayed_mm"});
            return ofOrder(fieldOf(table, row, "order"), column);
        }
        return [=, name = fieldOf(table, row, "group")](const shop::Shop& shop) {
            return shop::decisionsBehind(shop, period, kind, name, column, played.get(), currencyOf(shop),
                                         sees);
        };
    };
}

Behind behindReach(const std::vector<shop::BeltReach>& belts, const shop::Period& period,
                   const ReportTable& table) {
    return [=](std::size_t row, const std::string& column) -> ReadBasis {
        if (column == "yield") return others(table, row, {"sold", "used"});
        if (column == "hindsight_yield") return others(table, row, {"ordered", "least_used"});
        if (column == "beyond_hindsight")
            return others(table, row, {"used", "sold", "least_used", "ordered"});
        if (isOneOf(column, {"sold", "used"})) {
            store::Behind line{period.from, period.until, {belts[row].belt}};
            line.unit = belts[row].reach.unit;
            return movements(*shop::behindFigure(line, column), column);
        }
        return [belt = belts[row], period, column](const shop::Shop& shop) {
            return shop::ordersBehind(shop, belt, period, column);
        };
    };
}

} // namespace riband::ui
