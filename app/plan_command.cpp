#include "app/commands.h"
#include "app/options.h"
#include "app/plan_files.h"
#include "app/plan_json.h"
#include "app/plan_words.h"
#include "app/standard_tables.h"
#include "core/cutting/planner.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QElapsedTimer>

#include <algorithm>
#include <map>

namespace riband::app {

namespace {

using ui::Words;

Usage usage() {
    return {QStringLiteral("plan"),
            Words::tr("Plans the cuts for an order list from a stock list. “-” is standard input."),
            {},
            {{"stock", Words::tr("The pieces: piece,belt,kind,width_mm,ribs,received."), "CSV"},
             {"orders", Words::tr("The belts wanted: line,belt,width_mm,ribs,quantity."), "CSV"},
             {"trim", Words::tr("Strip lost at every mounting."), "MM"},
             {"kerf", Words::tr("Width turned to nothing by the blade at every belt."), "MM"},
             {"end", Words::tr("Ragged far edge that can't be sold."), "MM"},
             {"stub", Words::tr("Least width that can be held."), "MM"},
             {"trim-ribs", Words::tr("Ribs lost at every mounting of a ribbed piece."), "N"},
             {"mounting-cost", Words::tr("What a mounting costs, in width."), "MM"},
             {"worth", Words::tr("plain, or a table: width_mm,worth_mm or ribs,worth_ribs."), "plain|CSV"},
             {"time-limit", Words::tr("Seconds after which the best plan so far is taken."), "S"}}};
}

/// A quantity of an option, or `usual` if it was not given.
Extent extentOr(const Options& options, const char* name, Extent usual) {
    const QString option = QLatin1String(name);
    if (!options.has(option)) return usual;
    const auto extent = readExtent(options.value(option).toStdString(), usual.unit());
    if (!extent)
        throw BadInput(
            QStringLiteral("--%1 %2: %3").arg(option, options.value(option), ui::say(extent.reason())));
    return *extent;
}

cutting::Rules rulesFor(Unit unit, const Options& options) {
    cutting::Rules rules = cutting::Rules::usual(unit);
    if (unit == Unit::Rib) {
        rules.trim = extentOr(options, "trim-ribs", rules.trim);
        return rules;
    }
    rules.trim = extentOr(options, "trim", rules.trim);
    rules.kerf = extentOr(options, "kerf", rules.kerf);
    rules.end = extentOr(options, "end", rules.end);
    rules.stub = extentOr(options, "stub", rules.stub);
    return rules;
}

/// Everything of the call but the belts.
struct Setting {
    cutting::Rules toothed, ribbed;
    Extent mountingCost;
    std::optional<WorthCurve> curve;
    const cutting::Rules& rules(Unit unit) const { return unit == Unit::Rib ? ribbed : toothed; }
    std::shared_ptr<const cutting::Worth> worth(Unit unit) const {
        if (!curve || curve->unit != unit) return cutting::Worth::plain(rules(unit).stub);
        return cutting::Worth::steps(rules(unit).stub, curve->points);
    }
};

Setting settingOf(const Options& options) {
    const QString worth = options.value("worth");
    const bool plain = worth.isEmpty() || worth == QLatin1String("plain");
    return {rulesFor(Unit::Micrometre, options), rulesFor(Unit::Rib, options),
            extentOr(options, "mounting-cost", Width::millimetres(0)),
            plain ? std::nullopt : std::optional(readCurve(worth))};
}

/// Seconds: a plan of that age is the best that anybody waits for.
constexpr double usualLimit = 60;

double secondsOf(const Options& options) {
    if (!options.has("time-limit")) return usualLimit;
    bool number = false;
    const double seconds = options.value("time-limit").toDouble(&number);
    if (!number || !(seconds >= 0) || seconds > 1e6)
        throw BadInput(
            Words::tr("--time-limit %1: a number of seconds is needed.").arg(options.value("time-limit")));
    return seconds;
}

/// The clock that the planner is not to have: says when to stop.
cutting::Limits limitsOf(const Options& options) {
    QElapsedTimer timer;
    timer.start();
    const auto end = static_cast<qint64>(secondsOf(options) * 1000);
    return {[timer, end] { return timer.elapsed() >= end; }, nullptr};
}

/// The belts that are wanted, in the order in which they are first named.
std::vector<belt::Belt> beltsOf(const std::vector<OrderRow>& orders) {
    std::vector<belt::Belt> belts;
    for (const OrderRow& row : orders)
        if (std::find(belts.begin(), belts.end(), row.belt) == belts.end()) belts.push_back(row.belt);
    return belts;
}

cutting::Problem problemOf(const belt::Belt& belt, const std::vector<StockRow>& stock,
                           const std::vector<OrderRow>& orders, const Setting& setting) {
    std::vector<cutting::Piece> pieces;
    std::vector<cutting::Line> lines;
    for (const StockRow& row : stock)
        if (row.belt == belt) pieces.push_back(row.piece);
    for (const OrderRow& row : orders)
        if (row.belt == belt) lines.push_back(row.line);
    const Unit unit = lines.front().extent.unit();
    return {setting.rules(unit), pieces, lines, setting.worth(unit), setting.mountingCost};
}

std::vector<BeltPlan> planAll(const std::vector<StockRow>& stock, const std::vector<OrderRow>& orders,
                              const Setting& setting, const cutting::Limits& limits) {
    std::vector<BeltPlan> plans;
    for (const belt::Belt& belt : beltsOf(orders)) {
        const auto problem = problemOf(belt, stock, orders, setting);
        plans.push_back({belt::designation(belt), problem, cutting::plan(problem, limits)});
    }
    return plans;
}

void printWords(const std::vector<BeltPlan>& plans) {
    bool proven = true;
    for (const BeltPlan& made : plans) {
        for (const QString& line : wordsOf(made))
            print(line);
        proven = proven && made.plan.proven;
    }
    print(proven ? Words::tr("Proven: no plan does better.")
                 : Words::tr("The best found in the time; not proven."));
}

struct Tables {
    std::vector<StockRow> stock;
    std::vector<OrderRow> orders;
};

/// Reads both before it complains, so that the faults of both are mended at once.
Tables readBoth(const QString& stockPath, const QString& ordersPath, const belt::Tables& standard) {
    Tables tables;
    QStringList faults;
    const auto attempt = [&](const auto& read) {
        try {
            read();
        } catch (const BadInput& wrong) {
            faults << QString::fromUtf8(wrong.what());
        }
    };
    attempt([&] { tables.stock = readStock(stockPath, standard); });
    attempt([&] { tables.orders = readOrders(ordersPath, standard); });
    if (!faults.isEmpty()) throw BadInput(faults.join(QLatin1Char('\n')));
    return tables;
}

} // namespace

Exit plan(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const QString stockPath = options.needed("stock"), ordersPath = options.needed("orders");
    if (stockPath == QLatin1String("-") && ordersPath == stockPath)
        throw BadInput(Words::tr("Only one of --stock and --orders can come from standard input."));
    const Setting setting = settingOf(options);
    const auto limits = limitsOf(options);
    const Tables tables = readBoth(stockPath, ordersPath, *standardTables());
    const auto plans = planAll(tables.stock, tables.orders, setting, limits);
    if (options.json())
        printJson(jsonOf(plans));
    else
        printWords(plans);
    const bool served =
        std::all_of(plans.begin(), plans.end(), [](const BeltPlan& p) { return p.plan.unserved.empty(); });
    return served ? Exit::Done : Exit::No;
}

} // namespace riband::app
