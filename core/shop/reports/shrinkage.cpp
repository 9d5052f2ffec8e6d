#include "core/shop/reports/shrinkage.h"

#include "core/measure/text.h"
#include "core/shop/reports/names.h"

#include <algorithm>
#include <map>
#include <set>

namespace riband::shop {

namespace {

using store::Account;
using store::Explanation;

bool isOnTheRack(Account account) { return account == Account::Rack || account == Account::Ready; }

/// Ready belts that a cut made are its work, as what it sold.
void add(ShrinkageRow& row, const store::Movement& movement) {
    const bool cut = movement.about().act == store::Act::Cut;
    for (const store::Posting& posting : movement.postings()) {
        if (posting.account == Account::Sold || (cut && posting.account == Account::Ready)) {
            row.sold += posting.amount;
        } else if (isOnTheRack(posting.account)) {
            (posting.amount < 0 ? row.less : row.more) += std::abs(posting.amount);
        } else {
            row.lost += posting.amount;
            row.cost = row.cost + posting.cost;
        }
    }
}

/// Each settlement that stands, with its movement once, though two may share it.
class Rows {
public:
    Rows(const Shop& shop, ShrinkageBy by)
        : shop_{shop}, counts_{shop.connection}, ledger_{shop.connection}, names_{shop}, by_{by} {}

    std::vector<ShrinkageRow> read(const Period& period) {
        const std::vector<store::Settlement> all = counts_.settlements();
        std::set<store::SettlementId> countered;
        for (const store::Settlement& settled : all)
            if (settled.undoes) countered.insert(*settled.undoes);
        for (const store::Settlement& settled : all)
            if (!settled.undoes && !countered.contains(settled.id) && settled.at >= period.from &&
                settled.at < period.until)
                take(settled);
        std::vector<ShrinkageRow> rows;
        for (auto& [key, row] : rows_)
            rows.push_back(std::move(row));
        std::stable_sort(rows.begin(), rows.end(), [](const ShrinkageRow& a, const ShrinkageRow& b) {
            return std::pair{a.cost, a.lost} > std::pair{b.cost, b.lost};
        });
        return rows;
    }

private:
    void take(const store::Settlement& settled) {
        const ReportBelt& belt = names_.belt(beltOf(settled));
        const std::pair key{groupOf(settled, belt), belt.unit};
        ShrinkageRow& row =
            rows_.try_emplace(key, ShrinkageRow{.group = key.first, .unit = key.second}).first->second;
        ++row.settled;
        if (settled.movement && booked_.insert(*settled.movement).second)
            add(row, ledger_.at(*settled.movement).movement);
    }

    store::BeltId beltOf(const store::Settlement& settled) const {
        return settled.scan ? counts_.scan(*settled.scan)->belt
                            : store::Pieces{shop_.connection}.at(*settled.piece).belt;
    }

    std::string groupOf(const store::Settlement& settled, const ReportBelt& belt) const {
        switch (by_) {
        case ShrinkageBy::Belt:
            return belt.designation;
        case ShrinkageBy::Place:
            return counts_.find(settled.count)->place;
        case ShrinkageBy::Cause:
            break;
        }
        return causeOf(settled.explanation);
    }

    const Shop& shop_;
    store::Counts counts_;
    store::Ledger ledger_;
    ReportNames names_;
    ShrinkageBy by_;
    std::map<std::pair<std::string, Unit>, ShrinkageRow> rows_;
    std::set<store::MovementId> booked_;
};

} // namespace

std::vector<ShrinkageRow> shrinkage(const Shop& shop, const Period& period, ShrinkageBy by) {
    return Rows{shop, by}.read(period);
}

ShrinkageRow totalOf(const std::vector<ShrinkageRow>& rows, Unit unit) {
    ShrinkageRow total{.group = "", .unit = unit};
    for (const ShrinkageRow& row : rows) {
        if (row.unit != unit) continue;
        total.settled += row.settled;
        total.less += row.less;
        total.more += row.more;
        total.sold += row.sold;
        total.lost += row.lost;
        total.cost = total.cost + row.cost;
    }
    return total;
}

const char* causeOf(Explanation explanation) {
    switch (explanation) {
    case Explanation::Measuring:
        return "measuring";
    case Explanation::CutNotRecorded:
    case Explanation::LineNotTicketed:
    case Explanation::SaleWithoutOrder:
        return "unrecorded cut";
    case Explanation::CutFromOther:
    case Explanation::Swapped:
        return "wrong piece taken";
    case Explanation::LostLabel:
        return "label lost";
    case Explanation::Transposed:
        return "digits in the wrong order";
    case Explanation::TrimForgotten:
    case Explanation::EdgeWaste:
        return "edge waste";
    case Explanation::BookedLate:
        return "booked late";
    case Explanation::Found:
        return "found";
    case Explanation::Unexplained:
        break;
    }
    return "unexplained";
}

ReportTable tableOf(const std::vector<ShrinkageRow>& rows, const Currency& currency, Sees sees) {
    ReportTable table{{"group", "unit", "settled", "less", "more", "sold", "lost"}, {}};
    if (sees == Sees::Cost) table.columns.emplace_back("cost_lost");
    for (const ShrinkageRow& row : rows) {
        table.rows.push_back({row.group, row.unit == Unit::Rib ? "ribs" : "mm", std::to_string(row.settled),
                              amountOf(row.unit, row.less), amountOf(row.unit, row.more),
                              amountOf(row.unit, row.sold), amountOf(row.unit, row.lost)});
        if (sees == Sees::Cost) table.rows.back().push_back(printMoney(row.cost, currency));
    }
    return table;
}

} // namespace riband::shop
