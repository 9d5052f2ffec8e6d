#include "core/shop/reports/waste.h"

#include "core/shop/reports/names.h"
#include "core/store/rack_figures.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace riband::shop {

namespace {

using store::Account;
using store::Flow;

/// What a posting to an account counts in its figure: sources are booked minus.
std::int64_t signOf(Account account) {
    return account == Account::Bought || account == Account::Found ? -1 : 1;
}

template <class Amount>
void count(Balance<Amount>& balance, const Flow& flow, Amount beforeIt, Amount within) {
    const Amount sign = static_cast<Amount>(signOf(flow.account));
    balance.of(flow.account, flow.reason) += sign * within;
    balance.opening -= beforeIt; // what left the rack for the account is no longer there
    balance.closing -= beforeIt + within;
}

/// Sums the flows into rows by their group.
class Rows {
public:
    Rows(const ReportNames& names, const Period& period, GroupBy by)
        : names_{names}, period_{period}, by_{by} {}

    void add(const Flow& flow, const std::string& place) {
        const ReportBelt& belt = names_.belt(flow.belt);
        WasteRow& row = rowOf(flow, belt, place);
        count<std::int64_t>(row.width, flow, flow.before, flow.within);
        count<std::int64_t>(row.money, flow, flow.costBefore.inMinor(), flow.costWithin.inMinor());
        addArea(row, flow, belt);
        if (auto& belts = row.behind.belts; isOfBelts() && (belts.empty() || belts.back() != flow.belt))
            belts.push_back(flow.belt); // the flows of a belt come together
        if (flow.account == Account::Ready) row.shelf += flow.before + flow.within;
    }

    std::vector<WasteRow> finish() && {
        std::vector<WasteRow> rows;
        for (auto& [key, row] : rows_)
            rows.push_back(std::move(row));
        std::stable_sort(rows.begin(), rows.end(), [](const WasteRow& a, const WasteRow& b) {
            return a.money.lost() > b.money.lost();
        });
        return rows;
    }

private:
    static void addArea(WasteRow& row, const Flow& flow, const ReportBelt& belt) {
        const double first = static_cast<double>(flow.before) * belt.squareMetres;
        const double then = static_cast<double>(flow.within) * belt.squareMetres;
        count<double>(row.area, flow, first, then);
        if (belt.kilogramsPerSquareMetre)
            count<double>(row.weight, flow, first * *belt.kilogramsPerSquareMetre,
                          then * *belt.kilogramsPerSquareMetre);
        else
            row.weightKnown = false;
    }

    std::string groupOf(const Flow& flow, const ReportBelt& belt, const std::string& place) const {
        switch (by_) {
        case GroupBy::Belt:
            return belt.designation;
        case GroupBy::Profile:
            return belt.profile;
        case GroupBy::Family:
            return belt.family;
        case GroupBy::Person:
            return names_.person(flow.person);
        case GroupBy::Place:
            return place;
        case GroupBy::Cause:
            return causeOf(flow);
        case GroupBy::Cutter:
            return flow.cutter ? names_.cutter(*flow.cutter) : "";
        case GroupBy::All:
            break;
        }
        return "";
    }

    static std::string causeOf(const Flow& flow) {
        static Balance<std::int64_t> probe;
        for (const auto& figure : figures<std::int64_t>)
            if (&probe.of(flow.account, flow.reason) == &(probe.*figure.value)) return figure.name;
        return "";
    }

    /// What all flows of a row have in common; its belts are added one by one.
    store::Behind behindOf(const Flow& flow, const ReportBelt& belt, const std::string& place) const {
        store::Behind behind{period_.from, period_.until};
        behind.unit = belt.unit;
        if (by_ == GroupBy::Person) behind.person = flow.person;
        if (by_ == GroupBy::Cutter) behind.cutter = flow.cutter.value_or(store::CutterId{0});
        if (by_ == GroupBy::Place) behind.place = place;
        if (by_ == GroupBy::Cause) {
            behind.account = flow.account;
            behind.reason = flow.reason;
        }
        return behind;
    }

    bool isOfBelts() const {
        return by_ == GroupBy::Belt || by_ == GroupBy::Profile || by_ == GroupBy::Family;
    }

    WasteRow& rowOf(const Flow& flow, const ReportBelt& belt, const std::string& place) {
        const std::string group = groupOf(flow, belt, place);
        const store::CutterId cutter = flow.cutter.value_or(store::CutterId{0});
        const std::tuple key{group, belt.unit, by_ == GroupBy::Cutter ? cutter.value() : 0};
        const auto at = rows_.find(key);
        if (at != rows_.end()) return at->second;
        WasteRow row{.group = group, .unit = belt.unit};
        row.behind = behindOf(flow, belt, place);
        return rows_.emplace(key, std::move(row)).first->second;
    }

    const ReportNames& names_;
    Period period_;
    GroupBy by_;
    /// By name, unit and, since a new cutter may have the name of an old one, cutter.
    std::map<std::tuple<std::string, Unit, std::int64_t>, WasteRow> rows_;
};

} // namespace

std::vector<std::vector<WasteRow>> waste(const Shop& shop, const Period& period,
                                         std::initializer_list<GroupBy> groups) {
    const store::Flows flows{shop.connection};
    const auto asked = [&](GroupBy by) { return std::count(groups.begin(), groups.end(), by) > 0; };
    std::vector<Flow> sums;
    if (asked(GroupBy::Person) || asked(GroupBy::Cutter))
        sums = flows.sums(period.from, period.until);
    else if (std::any_of(groups.begin(), groups.end(), [](GroupBy by) { return by != GroupBy::Place; }))
        sums = flows.sumsOfAll(period.from, period.until);
    std::vector<std::vector<WasteRow>> all;
    const ReportNames names{shop};
    for (const GroupBy by : groups) {
        Rows rows{names, period, by};
        if (by == GroupBy::Place)
            for (const store::PlaceFlow& flow : flows.byPlace(period.from, period.until))
                rows.add(flow.flow, flow.place);
        else
            for (const Flow& flow : sums)
                rows.add(flow, "");
        all.push_back(std::move(rows).finish());
    }
    return all;
}

std::vector<WasteRow> waste(const Shop& shop, const Period& period, GroupBy by) {
    return std::move(waste(shop, period, {by}).front());
}

std::map<store::BeltId, Balance<std::int64_t>> movedByBelt(const Shop& shop, const Period& period) {
    std::map<store::BeltId, Balance<std::int64_t>> moved;
    for (const Flow& flow : store::Flows{shop.connection}.within(period.from, period.until))
        moved[flow.belt].of(flow.account, flow.reason) += signOf(flow.account) * flow.within;
    return moved;
}

std::map<Unit, Moved> movedByUnit(const Shop& shop, const Period& period) {
    std::map<Unit, Moved> moved;
    const auto units = store::unitsOfBelts(shop.connection);
    for (const Flow& flow : store::Flows{shop.connection}.within(period.from, period.until)) {
        Moved& sum = moved[units.at(flow.belt)];
        const std::int64_t sign = signOf(flow.account);
        sum.width.of(flow.account, flow.reason) += sign * flow.within;
        sum.money.of(flow.account, flow.reason) += sign * flow.costWithin.inMinor();
    }
    return moved;
}

WasteRow totalOf(const std::vector<WasteRow>& rows, Unit unit) {
    WasteRow total{.group = "", .unit = unit};
    for (const WasteRow& row : rows) {
        if (row.unit != unit) continue;
        total.width += row.width;
        total.money += row.money;
        total.area += row.area;
        total.weight += row.weight;
        total.weightKnown = total.weightKnown && row.weightKnown;
        total.shelf += row.shelf;
    }
    return total;
}

std::optional<store::Behind> behindFigure(const store::Behind& row, const std::string& name) {
    const std::string figure = name.starts_with("cost_") ? name.substr(5) : name;
    store::Behind behind = row;
    if (figure == "opening" || figure == "closing") {
        if (row.account) return std::nullopt; // a cause has no rack
        behind.until = figure == "opening" ? row.from : row.until;
        behind.from = Moment{};
        if (!row.place) behind.account = Account::Rack; // pieces lie elsewhere now
        return behind;
    }
    const struct {
        const char* name;
        Account account;
        std::optional<store::ScrapReason> reason{};
    } accounts[] = {{"bought", Account::Bought},
                    {"found", Account::Found},
                    {"sold", Account::Sold},
                    {"ready", Account::Ready},
                    {"trim", Account::Trim},
                    {"kerf", Account::Kerf},
                    {"end", Account::End},
                    {"stub", Account::Scrap, store::ScrapReason::Stub},
                    {"miscut", Account::Scrap, store::ScrapReason::Miscut},
                    {"damaged", Account::Scrap, store::ScrapReason::Damaged},
                    {"aged", Account::Scrap, store::ScrapReason::Aged},
                    {"difference", Account::Difference}};
    for (const auto& each : accounts) {
        if (figure != each.name) continue;
        if (row.account && (row.account != each.account || row.reason != each.reason)) return std::nullopt;
        behind.account = each.account;
        behind.reason = each.reason;
    }
    return behind;
}

std::optional<std::int64_t> sumOf(const std::vector<store::RecordedMovement>& movements,
                                  const store::Behind& what) {
    if (!what.account || what.place) return std::nullopt;
    std::int64_t sum = 0;
    for (const store::RecordedMovement& recorded : movements)
        for (const store::Posting& posting : recorded.movement.postings())
            if (posting.account == *what.account && (!what.reason || posting.reason == what.reason))
                sum += signOf(posting.account) * posting.amount;
    return sum;
}

std::vector<store::RecordedMovement> behind(const Shop& shop, const store::Behind& what, std::size_t most) {
    std::vector<store::RecordedMovement> movements;
    const store::Ledger ledger{shop.connection};
    for (const store::MovementId id : store::Flows{shop.connection}.behind(what, most))
        movements.push_back(ledger.at(id));
    return movements;
}

} // namespace riband::shop
