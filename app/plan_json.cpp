#include "app/plan_json.h"

#include "app/json.h"
#include "ui/words/words.h"

#include <QJsonArray>

#include <algorithm>

namespace riband::app {

namespace {

QJsonObject cutJson(const cutting::Problem& problem, const cutting::Cut& cut) {
    const cutting::Line& line = problem.lines[cut.line];
    return {{"line", textValue(line.id)},
            {keyOf("width", problem.rules.unit()), inUnit(line.extent)},
            {"count", static_cast<qint64>(cut.count)}};
}

QJsonObject mountingJson(const BeltPlan& made, const cutting::Mounting& mounting) {
    const Unit unit = made.problem.rules.unit();
    QJsonArray cuts, stops;
    for (const cutting::Cut& cut : mounting.cuts)
        cuts << cutJson(made.problem, cut);
    for (const Extent stop : cumulativeStops(made.problem, mounting))
        stops << inUnit(stop);
    return {{"piece", textValue(made.problem.pieces[mounting.piece].code)},
            {"belt", textValue(made.belt)},
            {keyOf("trim", unit), inUnit(made.problem.rules.trim)},
            {"cuts", cuts},
            {keyOf("stops", unit), stops},
            {keyOf("left", unit), inUnit(mounting.left)},
            {"left_is", mounting.rest == cutting::Rest::Remnant ? "remnant" : "scrap"}};
}

QJsonObject takenJson(const BeltPlan& made, const cutting::Taken& taken) {
    return {{"piece", textValue(made.problem.pieces[taken.piece].code)},
            {"belt", textValue(made.belt)},
            {"line", textValue(made.problem.lines[taken.line].id)}};
}

QJsonObject unservedJson(const BeltPlan& made, const cutting::Unserved& unserved) {
    return {{"line", textValue(made.problem.lines[unserved.line].id)},
            {"count", static_cast<qint64>(unserved.count)},
            {"why", ui::say(unserved.why)}};
}

/// The figures of all belts of one unit.
struct Sums {
    Unit unit;
    std::int64_t sold = 0, trim = 0, kerf = 0, end = 0, spent = 0, bound = 0;
    void add(const cutting::Plan& plan) {
        sold += plan.sold.count();
        trim += plan.trim.count();
        kerf += plan.kerf.count();
        end += plan.scrapped.count();
        spent += plan.worthSpent;
        bound += plan.bound;
    }
    void into(QJsonObject& totals, QJsonObject& all) const {
        totals.insert(keyOf("sold", unit), inUnit(unit, sold));
        totals.insert(keyOf("trim", unit), inUnit(unit, trim));
        totals.insert(keyOf("kerf", unit), inUnit(unit, kerf));
        totals.insert(keyOf("end", unit), inUnit(unit, end));
        all.insert(keyOf("worth_spent", unit), inUnit(unit, spent));
        all.insert(keyOf("bound", unit), inUnit(unit, bound));
    }
};

bool hasUnit(const std::vector<BeltPlan>& plans, Unit unit) {
    return std::any_of(plans.begin(), plans.end(),
                       [unit](const BeltPlan& p) { return p.problem.rules.unit() == unit; });
}

Sums sumsOf(const std::vector<BeltPlan>& plans, Unit unit) {
    Sums sums{unit};
    for (const BeltPlan& made : plans)
        if (made.problem.rules.unit() == unit) sums.add(made.plan);
    return sums;
}

void insertTotals(QJsonObject& all, const std::vector<BeltPlan>& plans) {
    QJsonObject totals;
    const bool ribbed = hasUnit(plans, Unit::Rib);
    if (hasUnit(plans, Unit::Micrometre) || !ribbed) sumsOf(plans, Unit::Micrometre).into(totals, all);
    if (ribbed) sumsOf(plans, Unit::Rib).into(totals, all);
    qint64 mountings = 0, sleeves = 0;
    for (const BeltPlan& made : plans) {
        mountings += static_cast<qint64>(made.plan.mountings.size());
        sleeves += static_cast<qint64>(made.plan.newSleeves);
    }
    totals.insert("mountings", mountings);
    totals.insert("new_sleeves", sleeves);
    all.insert("totals", totals);
}

} // namespace

std::vector<Extent> cumulativeStops(const cutting::Problem& problem, const cutting::Mounting& mounting) {
    std::vector<Extent> stops;
    for (const cutting::Stop& stop : cutting::stopsOf(problem, mounting))
        stops.push_back(stop.cumulative);
    return stops;
}

QJsonObject jsonOf(const std::vector<BeltPlan>& plans) {
    QJsonArray mountings, taken, unserved;
    bool proven = true;
    for (const BeltPlan& made : plans) {
        for (const auto& mounting : made.plan.mountings)
            mountings << mountingJson(made, mounting);
        for (const auto& one : made.plan.taken)
            taken << takenJson(made, one);
        for (const auto& one : made.plan.unserved)
            unserved << unservedJson(made, one);
        proven = proven && made.plan.proven;
    }
    QJsonObject all{{"mountings", mountings}, {"taken", taken}, {"unserved", unserved}, {"proven", proven}};
    insertTotals(all, plans);
    return all;
}

} // namespace riband::app
