#include "core/shop/reports/overrides.h"

#include "core/shop/reports/names.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace riband::shop {

namespace {

/// Sums the differences of one group.
class Sum {
public:
    void add(const store::Advice& advice) {
        ++row_.suggested;
        row_.overridden += advice.overridden ? 1 : 0;
        row_.shelfOffered += advice.suggested.forShelf.empty() ? 0 : 1;
        row_.shelfRefused += advice.shelfDeclined ? 1 : 0;
        if (!departs(advice)) return;
        ++row_.departures;
        if (!isExpected(advice)) return;
        ++row_.expected;
        const Money extra = advice.taken.costMoney - advice.suggested.costMoney;
        row_.extra = row_.extra + extra;
        squares_ += static_cast<double>(extra.inMinor()) * static_cast<double>(extra.inMinor());
    }

    /// 1.96 standard errors of a sum of n like decisions: sqrt(n) times their standard deviation. One alone
    /// says nothing of its scatter: it may be all chance.
    OverrideRow finish(const std::string& name) const {
        OverrideRow row = row_;
        row.name = name;
        const double n = static_cast<double>(row.expected);
        const double sum = static_cast<double>(row.extra.inMinor());
        if (row.expected == 1) row.uncertain = Money::minor(std::llabs(row.extra.inMinor()));
        if (row.expected < 2) return row;
        const double variance = std::max(0.0, (squares_ - sum * sum / n) / (n - 1));
        row.uncertain = Money::minor(std::llround(1.96 * std::sqrt(n * variance)));
        return row;
    }

private:
    OverrideRow row_;
    double squares_ = 0;
};

std::vector<OverrideRow> rowsOf(const std::map<std::string, Sum>& sums) {
    std::vector<OverrideRow> rows;
    for (const auto& [name, sum] : sums)
        rows.push_back(sum.finish(name));
    std::stable_sort(rows.begin(), rows.end(),
                     [](const OverrideRow& a, const OverrideRow& b) { return a.extra > b.extra; });
    return rows;
}

} // namespace

const char* wordFor(store::OverrideKey key) {
    const char* const words[] = {"older first",       "nearer to hand",    "customer saw it",
                                 "damaged or unsafe", "kept for somebody", "other"};
    return words[static_cast<std::size_t>(key)];
}

bool departs(const store::Advice& advice) { return advice.overridden || advice.shelfDeclined; }

bool isExpected(const store::Advice& advice) { return advice.suggested.cost != 0 || advice.taken.cost != 0; }

std::string reasonOf(const store::Advice& advice) {
    if (!advice.overridden && advice.shelfDeclined) return "shelf not wanted";
    return advice.overrideKey ? wordFor(*advice.overrideKey) : "";
}

bool OverrideRow::told() const { return std::llabs(extra.inMinor()) > uncertain.inMinor(); }

OverrideReport overridesOf(const std::vector<store::Advice>& advices,
                           const std::function<std::string(store::PersonId)>& initials) {
    OverrideReport report;
    Sum all;
    std::map<std::string, Sum> people, reasons;
    for (const store::Advice& advice : advices) {
        all.add(advice);
        people[initials(advice.person)].add(advice);
        if (!departs(advice)) continue;
        reasons[reasonOf(advice)].add(advice);
        report.departures.push_back(advice);
    }
    report.all = all.finish("");
    report.people = rowsOf(people);
    report.reasons = rowsOf(reasons);
    return report;
}

OverrideReport overrides(const Shop& shop, const Period& period) {
    const ReportNames names{shop};
    return overridesOf(store::Advices{shop.connection}.between(period.from, period.until),
                       [&names](store::PersonId person) { return names.person(person); });
}

} // namespace riband::shop
