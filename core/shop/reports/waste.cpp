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
            behind.accounts = {flow.account};
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

namespace {

bool isOfEach(GroupBy by) { return by == GroupBy::Person || by == GroupBy::Cutter; }

std::vector<std::vector<WasteRow>> rowsBy(const Shop& shop, const Period& period,
                                          const std::vector<GroupBy>& groups, const std::vector<Flow>& sums) {
    std::vector<std::vector<WasteRow>> all;
    const ReportNames names{shop};
    for (const GroupBy by : groups) {
        Rows rows{names, period, by};
        if (by == GroupBy::Place)
            for (const store::PlaceFlow& flow :
                 store::Flows{shop.connection}.byPlace(period.from, period.until))
                rows.add(flow.flow, flow.place);
        else
            for (const Flow& flow : sums)
                rows.add(flow, "");
        all.push_back(std::move(rows).finish());
    }
    return all;
}

/// No sums are needed for places alone.
bool needsSums(const std::vector<GroupBy>& groups) {
    return std::any_of(groups.begin(), groups.end(), [](GroupBy by) { return by != GroupBy::Place; });
}

} // namespace

std::vector<std::vector<WasteRow>> waste(const Shop& shop, const Period& period,
                                         const std::vector<GroupBy>& groups) {
    const store::Flows flows{shop.connection};
    std::vector<Flow> sums;
    if (std::any_of(groups.begin(), groups.end(), isOfEach))
        sums = flows.sums(period.from, period.until);
    else if (needsSums(groups))
        sums = flows.sumsOfAll(period.from, period.until);
    return rowsBy(shop, period, groups, sums);
}

std::vector<std::vector<WasteRow>> moved(const Shop& shop, const Period& period,
                                         const std::vector<GroupBy>& groups) {
    const store::Flows flows{shop.connection};
    std::vector<Flow> sums;
    if (std::any_of(groups.begin(), groups.end(), isOfEach))
        sums = flows.withinOfEach(period.from, period.until);
    else if (needsSums(groups))
        sums = flows.within(period.from, period.until);
    return rowsBy(shop, period, groups, sums);
}

std::vector<WasteRow> waste(const Shop& shop, const Period& period, GroupBy by) {
    return std::move(waste(shop, period, std::vector{by}).front());
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

WasteRow rowOf(const Shop& shop, Unit unit, const std::vector<Flow>& flows) {
    const ReportNames names{shop};
    Rows sum{names, {}, GroupBy::All};
    for (const Flow& flow : flows)
        sum.add(flow, "");
    const auto rows = std::move(sum).finish();
    return rows.empty() ? WasteRow{.group = "", .unit = unit} : rows.front();
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

} // namespace riband::shop
