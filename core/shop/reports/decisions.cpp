// The decisions behind the report of overrides: what was suggested, what was taken, why, and what came of it.
#include "core/measure/text.h"
#include "core/shop/reports/basis.h"
#include "core/shop/reports/names.h"

#include <algorithm>
#include <cmath>

namespace riband::shop {

namespace {

using Played = BothWays::Decision;

/// Rounds one after the other, so that together they are their rounded sum.
class Rounding {
public:
    std::int64_t next(double exact) {
        exact_ += exact;
        const std::int64_t sum = std::llround(exact_), line = sum - told_;
        told_ = sum;
        return line;
    }
    std::int64_t told() const { return told_; }

private:
    double exact_ = 0;
    std::int64_t told_ = 0;
};

/// What one decision came to, in µm and minor units.
struct CameTo {
    const Played* played;
    std::int64_t width, money;
};

class Decisions {
public:
    Decisions(const Shop& shop, const BothWays* played, const Currency& currency, Sees sees)
        : names_{shop}, pieces_{shop.connection}, orders_{shop.connection}, played_{played},
          currency_{currency}, sees_{sees} {}

    ReportTable table(const std::vector<const store::Advice*>& advices) {
        ReportTable table{{"at", "order", "belt", "person", "reason", "words", "suggested_from", "taken_from",
                           "shelf_belts", "shelf_refused"},
                          {}};
        if (sees_ == Sees::Cost) table.columns.emplace_back("expected_cost");
        if (played_)
            table.columns.insert(table.columns.end(), {"as_suggested_mm", "as_done_mm", "replayed_mm"});
        if (played_ && sees_ == Sees::Cost) table.columns.emplace_back("replayed_cost");
        const auto cameTo = comeTo(advices);
        for (const store::Advice* advice : advices) {
            const auto at = cameTo.find(advice->id);
            table.rows.push_back(fieldsOf(*advice, at == cameTo.end() ? nullptr : &at->second));
        }
        return table;
    }

    const std::string& beltOf(const store::Advice& advice) const {
        return names_.belt(advice.belt).designation;
    }
    const std::string& personOf(const store::Advice& advice) const { return names_.person(advice.person); }
    /// Those replayed, in the order in which the report sums them.
    std::map<store::AdviceId, CameTo> comeTo(const std::vector<const store::Advice*>& advices) {
        std::map<store::AdviceId, CameTo> all;
        width_ = money_ = {};
        if (!played_) return all;
        std::set<store::AdviceId> wanted;
        for (const store::Advice* advice : advices)
            wanted.insert(advice->id);
        for (const Played& played : played_->decisions)
            if (wanted.contains(played.advice))
                all.emplace(played.advice,
                            CameTo{&played, width_.next(played.width * 1000), money_.next(played.money)});
        return all;
    }
    std::int64_t width() const { return width_.told(); }
    std::int64_t money() const { return money_.told(); }

private:
    std::string piecesOf(const store::AdvisedWay& way) const {
        std::string codes;
        for (const auto& from : way.pieces)
            codes += (codes.empty() ? "" : " + ") + pieces_.at(from.piece).code;
        return codes;
    }
    static std::string shelfOf(const store::AdvisedWay& way) {
        std::string belts;
        for (const auto& each : way.forShelf)
            belts += (belts.empty() ? "" : " + ") + std::to_string(each.belts) + " x " +
                     amountOf(each.extent.unit(), each.extent.count());
        return belts;
    }
    static std::string millimetres(double value) {
        return amountOf(Unit::Micrometre, std::llround(value * 1000));
    }

    std::vector<std::string> fieldsOf(const store::Advice& advice, const CameTo* cameTo) const {
        std::vector<std::string> fields{printMoment(advice.at),
                                        orders_.at(advice.order).code,
                                        beltOf(advice),
                                        personOf(advice),
                                        departs(advice) ? reasonOf(advice) : "",
                                        advice.overrideWords,
                                        piecesOf(advice.suggested),
                                        piecesOf(advice.taken),
                                        shelfOf(advice.suggested),
                                        advice.shelfDeclined ? "yes" : ""};
        if (sees_ == Sees::Cost)
            fields.push_back(departs(advice) && isExpected(advice)
                                 ? printMoney(advice.taken.costMoney - advice.suggested.costMoney, currency_)
                                 : "");
        if (!played_) return fields;
        if (cameTo)
            fields.insert(fields.end(),
                          {millimetres(cameTo->played->asSuggested), millimetres(cameTo->played->asDone),
                           amountOf(Unit::Micrometre, cameTo->width)});
        else
            fields.resize(fields.size() + 3);
        if (sees_ == Sees::Cost)
            fields.push_back(cameTo ? printMoney(Money::minor(cameTo->money), currency_) : "");
        return fields;
    }

    ReportNames names_;
    store::Pieces pieces_;
    store::Orders orders_;
    const BothWays* played_;
    const Currency& currency_;
    Sees sees_;
    Rounding width_, money_;
};

/// Whether a decision counts in a figure.
bool counts(const store::Advice& advice, const std::string& figure) {
    if (figure == "suggested") return true;
    if (figure == "overridden") return advice.overridden;
    if (figure == "shelf_offered") return !advice.suggested.forShelf.empty();
    if (figure == "shelf_refused") return advice.shelfDeclined;
    if (figure.starts_with("expected")) return departs(advice) && isExpected(advice);
    return departs(advice);
}

} // namespace

ReportTable decisionsOf(const Shop& shop, const std::vector<store::Advice>& advices, const BothWays* played,
                        const Currency& currency, Sees sees) {
    std::vector<const store::Advice*> all;
    for (const store::Advice& advice : advices)
        all.push_back(&advice);
    return Decisions{shop, played, currency, sees}.table(all);
}

Basis decisionsBehind(const Shop& shop, const Period& period, const std::string& kind,
                      const std::string& name, const std::string& figure, const BothWays* played,
                      const Currency& currency, Sees sees) {
    Decisions decisions{shop, played, currency, sees};
    const bool isReplayed = figure == "replayed" || figure == "replayed_mm" || figure == "replayed_cost" ||
                            figure == "doubt_mm" || figure == "doubt_cost" || figure == "told";
    const auto isOf = [&](const store::Advice& advice) {
        if (kind == "person") return decisions.personOf(advice) == name;
        if (kind == "belt") return decisions.beltOf(advice) == name;
        return kind == "reason" ? departs(advice) && reasonOf(advice) == name : true;
    };
    const auto advices = store::Advices{shop.connection}.between(period.from, period.until);
    std::vector<const store::Advice*> mine;
    for (const store::Advice& advice : advices)
        if (isOf(advice) && counts(advice, figure)) mine.push_back(&advice);
    if (isReplayed) {
        const auto cameTo = decisions.comeTo(mine);
        std::erase_if(mine, [&](const store::Advice* advice) { return !cameTo.contains(advice->id); });
    }
    Basis basis{.lines = decisions.table(mine), .all = static_cast<std::int64_t>(mine.size())};
    if (figure == "replayed_mm") {
        basis.sum = amountOf(Unit::Micrometre, decisions.width());
        basis.unit = "mm";
    } else if (figure == "replayed_cost" && sees == Sees::Cost) {
        basis.sum = printMoney(Money::minor(decisions.money()), currency);
        basis.unit = std::string{currency.code()};
    } else if (figure == "expected_cost" && sees == Sees::Cost) {
        Money sum = Money::minor(0);
        for (const store::Advice* advice : mine)
            sum = sum + (advice->taken.costMoney - advice->suggested.costMoney);
        basis.sum = printMoney(sum, currency);
        basis.unit = std::string{currency.code()};
    } else if (figure == "suggested" || figure == "overridden" || figure == "shelf_offered" ||
               figure == "shelf_refused" || figure == "replayed") {
        basis.sum = std::to_string(mine.size());
    }
    return basis;
}

} // namespace riband::shop
