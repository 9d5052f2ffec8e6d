#include "core/shop/reports/compared.h"

#include "core/measure/text.h"

#include <tuple>

namespace riband::shop {

namespace {

using Then = ComparedRow::Then;
/// Cutters may share a name.
using Key = std::tuple<std::string, Unit, std::int64_t>;

Key keyOf(const WasteRow& row) {
    return {row.group, row.unit, row.behind.cutter.value_or(store::CutterId{0}).value()};
}

std::vector<std::map<Key, Then>> thenOf(const Shop& shop, const Period& period,
                                        const std::vector<GroupBy>& groups) {
    std::vector<std::map<Key, Then>> all;
    for (const auto& rows : moved(shop, period, groups)) {
        auto& then = all.emplace_back();
        for (const WasteRow& row : rows)
            then.emplace(keyOf(row), Then{row.width, row.money});
    }
    return all;
}

std::optional<Then> of(const std::vector<std::map<Key, Then>>& all, std::size_t group, const WasteRow& row,
                       Told told) {
    if (told == Told::Nothing) return std::nullopt;
    const auto at = all[group].find(keyOf(row));
    return at == all[group].end() ? Then{} : at->second;
}

void addColumns(ReportTable& table, Sees sees) {
    for (const char* when : {"before", "year_before"}) {
        const std::string end = std::string{"_"} + when;
        table.columns.insert(table.columns.end(), {"sold" + end, "lost" + end, "yield" + end + "_percent"});
        if (sees == Sees::Cost) table.columns.push_back("cost_lost" + end);
    }
}

void addFields(std::vector<std::string>& fields, Unit unit, const std::optional<Then>& then,
               const Currency& currency, Sees sees) {
    const std::size_t more = sees == Sees::Cost ? 4 : 3;
    if (!then) return fields.resize(fields.size() + more);
    const auto yield = then->width.yield();
    fields.insert(fields.end(), {amountOf(unit, then->width.sold), amountOf(unit, then->width.lost()),
                                 yield ? percentOf(*yield) : ""});
    if (sees == Sees::Cost) fields.push_back(printMoney(Money::minor(then->money.lost()), currency));
}

void addThen(ReportTable& table, const std::vector<ComparedRow>& rows, const Currency& currency, Sees sees) {
    addColumns(table, sees);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        addFields(table.rows[i], rows[i].now.unit, rows[i].before, currency, sees);
        addFields(table.rows[i], rows[i].now.unit, rows[i].yearBefore, currency, sees);
    }
}

} // namespace

Told toldOf(const Shop& shop, const Period& period) {
    const auto first = store::Flows{shop.connection}.firstMovement();
    if (!first || *first >= period.until) return Told::Nothing;
    return *first > period.from ? Told::Part : Told::Whole;
}

Compared compared(const Shop& shop, const Period& period, const std::vector<GroupBy>& groups,
                  const std::vector<std::vector<WasteRow>>& rows) {
    Compared all{period, before(period), yearBefore(period)};
    all.beforeTold = toldOf(shop, all.before);
    all.yearBeforeTold = toldOf(shop, all.yearBefore);
    const auto read = [&](const Period& then, Told told) {
        return told == Told::Nothing ? std::vector<std::map<Key, Then>>{} : thenOf(shop, then, groups);
    };
    const auto earlier = read(all.before, all.beforeTold);
    const auto lastYear = read(all.yearBefore, all.yearBeforeTold);
    for (std::size_t group = 0; group < groups.size(); ++group) {
        auto& lines = all.groups.emplace_back();
        for (const WasteRow& row : rows[group])
            lines.push_back(
                {row, of(earlier, group, row, all.beforeTold), of(lastYear, group, row, all.yearBeforeTold)});
    }
    return all;
}

ReportTable tableOf(const std::vector<ComparedRow>& rows, const Currency& currency, Sees sees) {
    std::vector<WasteRow> now;
    for (const ComparedRow& row : rows)
        now.push_back(row.now);
    ReportTable table = tableOf(now, currency, sees);
    addThen(table, rows, currency, sees);
    return table;
}

ReportTable shortTableOf(const std::vector<ComparedRow>& rows, const Currency& currency, Sees sees) {
    ReportTable table{{"group", "unit", "sold", "lost", "yield_percent"}, {}};
    if (sees == Sees::Cost) table.columns.emplace_back("cost_lost");
    for (const ComparedRow& row : rows) {
        auto& fields =
            table.rows.emplace_back(std::vector<std::string>{row.now.group, wordFor(row.now.unit)});
        addFields(fields, row.now.unit, Then{row.now.width, row.now.money}, currency, sees);
    }
    addThen(table, rows, currency, sees);
    return table;
}

} // namespace riband::shop
