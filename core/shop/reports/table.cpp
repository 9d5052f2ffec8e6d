#include "core/shop/reports/table.h"

#include "core/measure/csv.h"
#include "core/measure/text.h"
#include "core/shop/reports/both_ways.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace riband::shop {

namespace {

std::string decimals(double value, int places) {
    char text[64]; // the figures of a report are far shorter
    const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::fixed, places).ptr;
    return {text, end};
}

std::string shareOf(std::optional<Permille> share) { return share ? printPercent(*share) : ""; }

std::string count(std::int64_t value) { return std::to_string(value); }

std::string priceOf(const std::optional<WidthPrice>& price, const Currency& currency) {
    return price ? printWidthPrice(*price, currency) : "";
}

std::vector<std::string> wasteColumns(Sees sees) {
    std::vector<std::string> columns{"group", "unit"};
    for (const auto& figure : figures<std::int64_t>)
        columns.emplace_back(figure.name);
    for (const char* more : {"yield_percent", "shelf", "used_m2", "lost_m2", "lost_kg", "lost_share_percent"})
        columns.emplace_back(more);
    if (sees == Sees::WidthOnly) return columns;
    for (const auto& figure : figures<std::int64_t>)
        columns.push_back(std::string{"cost_"} + figure.name);
    columns.emplace_back("cost_lost");
    return columns;
}

/// `lost` is what all rows of its unit lost.
std::vector<std::string> wasteFields(const WasteRow& row, std::int64_t lost, const Currency& currency,
                                     Sees sees) {
    std::vector<std::string> fields{row.group, wordFor(row.unit)};
    for (const auto& figure : figures<std::int64_t>)
        fields.push_back(amountOf(row.unit, row.width.*figure.value));
    const auto yield = row.width.yield();
    fields.push_back(yield ? percentOf(*yield) : "");
    fields.push_back(amountOf(row.unit, row.shelf));
    fields.push_back(decimals(row.area.used(), 3));
    fields.push_back(decimals(row.area.lost(), 3));
    fields.push_back(row.weightKnown ? decimals(row.weight.lost(), 3) : "");
    fields.push_back(lost > 0 ? percentOf(static_cast<double>(row.width.lost()) / static_cast<double>(lost))
                              : "");
    if (sees == Sees::WidthOnly) return fields;
    for (const auto& figure : figures<std::int64_t>)
        fields.push_back(printMoney(Money::minor(row.money.*figure.value), currency));
    fields.push_back(printMoney(Money::minor(row.money.lost()), currency));
    return fields;
}

} // namespace

Sees seenBy(const Shop& shop) {
    const store::Person person = store::People{shop.connection}.at(shop.person);
    return person.role == store::Role::Owner ? Sees::Cost : Sees::WidthOnly;
}

const char* wordFor(Unit unit) { return unit == Unit::Rib ? "ribs" : "mm"; }

std::string amountOf(Unit unit, std::int64_t value) {
    return unit == Unit::Rib ? std::to_string(value) : printMillimetres(value);
}

std::string percentOf(double share) { return decimals(100 * share, 1); }

const char* wordFor(store::Payment kind) {
    const char* const words[] = {"cash", "card", "transfer", "invoice"};
    return words[static_cast<std::size_t>(kind)];
}

const char* wordFor(StockRow::Pace pace) {
    const char* const words[] = {"moving", "slow", "dead", "new"};
    return words[static_cast<std::size_t>(pace)];
}

const char* wordFor(store::OrderState state) {
    const char* const words[] = {"parked", "quoted", "open", "ready", "handed over", "cancelled"};
    return words[static_cast<std::size_t>(state)];
}

ReportTable tableOf(const std::vector<WasteRow>& rows, const Currency& currency, Sees sees) {
    ReportTable table{wasteColumns(sees), {}};
    std::map<Unit, std::int64_t> lost;
    for (const WasteRow& row : rows)
        lost[row.unit] += row.width.lost();
    for (const WasteRow& row : rows)
        table.rows.push_back(wasteFields(row, lost[row.unit], currency, sees));
    return table;
}

ReportTable tableOf(const StockReport& report, const Currency& currency, Sees sees) {
    ReportTable table{
        {"belt", "unit", "pieces", "width", "sold_in_year", "cover_days", "oldest_days", "pace"}, {}};
    if (sees == Sees::Cost) table.columns.insert(table.columns.end(), {"cost", "worth", "without_cost"});
    for (const StockRow& row : report.belts) {
        table.rows.push_back({row.designation, wordFor(row.unit), count(row.pieces),
                              amountOf(row.unit, row.width), amountOf(row.unit, row.soldInYear),
                              row.coverDays ? count(*row.coverDays) : "", count(row.oldestDays),
                              wordFor(row.pace)});
        if (sees == Sees::WidthOnly) continue;
        table.rows.back().push_back(printMoney(row.cost, currency));
        table.rows.back().push_back(row.worth ? printMoney(*row.worth, currency) : "");
        table.rows.back().push_back(count(row.uncosted));
    }
    return table;
}

ReportTable agesOf(const StockReport& report, const Currency& currency, Sees sees) {
    ReportTable table{{"from_days", "below_days", "pieces"}, {}};
    if (sees == Sees::Cost) table.columns.emplace_back("cost");
    for (const AgeRow& row : report.ages) {
        table.rows.push_back(
            {count(row.fromDays), row.belowDays ? count(*row.belowDays) : "", count(row.pieces)});
        if (sees == Sees::Cost) table.rows.back().push_back(printMoney(row.cost, currency));
    }
    return table;
}

ReportTable coversOf(const StockReport& report, const Currency& currency, Sees sees) {
    ReportTable table{{"from_days", "below_days", "belts", "pieces"}, {}};
    if (sees == Sees::Cost) table.columns.insert(table.columns.end(), {"cost", "worth"});
    for (const CoverRow& row : report.covers) {
        table.rows.push_back({row.fromDays ? count(*row.fromDays) : "",
                              row.belowDays ? count(*row.belowDays) : "", count(row.belts),
                              count(row.pieces)});
        if (sees == Sees::WidthOnly) continue;
        table.rows.back().push_back(printMoney(row.cost, currency));
        table.rows.back().push_back(printMoney(row.worth, currency));
    }
    return table;
}

ReportTable tableOf(const std::vector<MarginRow>& rows, Permille aim, const Currency& currency) {
    ReportTable table{{"name", "unit", "lines", "width", "revenue", "cost", "margin", "margin_percent",
                       "price", "full_cost", "below_cost", "proposed_price", "revenue_without_cost"},
                      {}};
    for (const MarginRow& row : rows)
        table.rows.push_back({row.name, row.unit ? wordFor(*row.unit) : "", count(row.sale.lines),
                              row.unit ? amountOf(*row.unit, row.sale.width) : "",
                              printMoney(row.sale.revenue, currency), printMoney(row.sale.cost, currency),
                              row.sale.costKnown() ? printMoney(row.margin(), currency) : "",
                              shareOf(row.share()), row.unit ? printWidthPrice(row.price, currency) : "",
                              priceOf(row.fullCost, currency), row.listBelowCost() ? "yes" : "",
                              priceOf(row.proposed(aim, currency), currency),
                              printMoney(row.sale.uncosted, currency)});
    return table;
}

ReportTable tableOf(const std::vector<store::BelowCost>& lines, const Shop& shop, const Currency& currency) {
    ReportTable table{{"order", "at", "belt", "customer", "revenue", "cost"}, {}};
    const store::Catalogue catalogue{shop.connection};
    for (const store::BelowCost& line : lines)
        table.rows.push_back({line.order, printMoment(line.at), catalogue.at(line.belt).designation,
                              line.customer, printMoney(line.revenue, currency),
                              printMoney(line.cost, currency)});
    return table;
}

ReportTable tableOf(const std::vector<TrendPoint>& points, Unit unit) {
    ReportTable table{{"month", "unit", "cuts", "sold", "lost", "lost_percent", "chance_low_percent",
                       "chance_high_percent", "news"},
                      {}};
    for (const TrendPoint& point : points)
        table.rows.push_back({printDate(dayOf(point.month.from)).substr(0, 7), wordFor(unit),
                              count(point.scatter.movements), amountOf(unit, point.scatter.sold),
                              amountOf(unit, point.scatter.lost), point.lost ? percentOf(*point.lost) : "",
                              point.hasBand() ? percentOf(point.low) : "",
                              point.hasBand() ? percentOf(point.high) : "", point.news() ? "yes" : ""});
    return table;
}

ReportTable takingsOf(const DayReport& report, const Currency& currency) {
    ReportTable table{{"payment", "orders", "amount"}, {}};
    for (const DayReport::Paid& paid : report.takings)
        table.rows.push_back({wordFor(paid.kind), count(paid.orders), printMoney(paid.amount, currency)});
    return table;
}

ReportTable madeOf(const DayReport& report, const Currency& currency) {
    ReportTable table{{"state", "orders", "amount"}, {}};
    for (const store::OrdersMade& made : report.made)
        table.rows.push_back({wordFor(made.state), count(made.orders), printMoney(made.total, currency)});
    return table;
}

ReportTable uncollectedOf(const DayReport& report, Date today, const Currency& currency) {
    ReportTable table{{"order", "customer", "made", "days", "total"}, {}};
    for (const store::Order& order : report.uncollected) {
        Money total = Money::minor(0);
        for (const store::OrderLine& line : order.lines)
            if (line.cancelled < line.quantity) total = total + line.price.total;
        const Date made = dayOf(order.made);
        table.rows.push_back({order.code, order.customerName, printDate(made), count((today - made).count()),
                              printMoney(total, currency)});
    }
    return table;
}

ReportTable tableOf(const OverrideReport& report, const Currency& currency, Sees sees) {
    ReportTable table{{"kind", "group", "suggested", "overridden", "shelf_offered", "shelf_refused"}, {}};
    if (sees == Sees::Cost) table.columns.insert(table.columns.end(), {"expected_cost", "expected_doubt"});
    const auto add = [&](const char* kind, const OverrideRow& row) {
        table.rows.push_back({kind, row.name, count(row.suggested), count(row.overridden),
                              count(row.shelfOffered), count(row.shelfRefused)});
        if (sees == Sees::WidthOnly) return;
        const bool isKnown = row.expected == row.departures || row.expected > 0;
        table.rows.back().push_back(isKnown ? printMoney(row.extra, currency) : "");
        table.rows.back().push_back(isKnown ? printMoney(row.uncertain, currency) : "");
    };
    add("all", report.all);
    for (const OverrideRow& row : report.people)
        add("person", row);
    for (const OverrideRow& row : report.reasons)
        add("reason", row);
    return table;
}

ReportTable tableOf(const OverrideReport& report, const BothWays& played, const Currency& currency,
                    Sees sees) {
    ReportTable table = tableOf(report, currency, sees);
    const std::size_t before = table.columns.size();
    table.columns.insert(table.columns.end(), {"replayed", "replayed_mm", "doubt_mm"});
    if (sees == Sees::Cost) table.columns.insert(table.columns.end(), {"replayed_cost", "doubt_cost"});
    table.columns.push_back("told");
    const auto add = [&](std::vector<std::string>& row, const BothWaysRow& replayed) {
        row.push_back(count(replayed.departures));
        for (const double millimetres : {replayed.width, replayed.widthDoubt})
            row.push_back(amountOf(Unit::Micrometre, std::llround(millimetres * 1000)));
        if (sees == Sees::Cost)
            for (const double money : {replayed.money, replayed.moneyDoubt})
                row.push_back(printMoney(Money::minor(std::llround(money)), currency));
        row.push_back(replayed.told() ? "yes" : "");
    };
    for (auto& row : table.rows) {
        const auto& rows = row[0] == "person" ? played.people : played.reasons;
        const auto found = std::find_if(rows.begin(), rows.end(),
                                        [&](const BothWaysRow& each) { return each.name == row[1]; });
        if (row[0] == "all")
            add(row, played.all);
        else if (found != rows.end())
            add(row, *found);
        row.resize(table.columns.size());
    }
    for (const BothWaysRow& belt : played.belts) {
        auto& row = table.rows.emplace_back(std::vector<std::string>{"belt", belt.name});
        row.resize(before);
        add(row, belt);
    }
    return table;
}

ReportTable joined(const std::vector<std::pair<std::string, ReportTable>>& tables) {
    ReportTable all{{"kind"}, {}};
    const auto columnOf = [&all](const std::string& name) {
        const auto at = std::find(all.columns.begin(), all.columns.end(), name);
        if (at == all.columns.end()) {
            all.columns.push_back(name);
            return all.columns.size() - 1;
        }
        return static_cast<std::size_t>(at - all.columns.begin());
    };
    for (const auto& [kind, table] : tables)
        for (const auto& row : table.rows) {
            auto& line = all.rows.emplace_back(std::vector<std::string>{kind});
            for (std::size_t i = 0; i < row.size(); ++i) {
                const std::size_t at = columnOf(table.columns[i]);
                line.resize(std::max(line.size(), at + 1));
                line[at] = row[i];
            }
        }
    for (auto& row : all.rows)
        row.resize(all.columns.size());
    return all;
}

std::string csvOf(const ReportTable& table) {
    std::string text;
    const auto addRow = [&text](const std::vector<std::string>& fields) {
        for (std::size_t i = 0; i < fields.size(); ++i)
            text += (i == 0 ? "" : ",") + csvField(fields[i]);
        text += "\r\n";
    };
    addRow(table.columns);
    for (const auto& row : table.rows)
        addRow(row);
    return text;
}

} // namespace riband::shop
