#include "app/commands.h"
#include "app/options.h"
#include "app/scenario_file.h"
#include "core/foresight/advisor.h"
#include "core/foresight/best_fit.h"
#include "core/foresight/contest.h"
#include "core/foresight/parallel.h"
#include "ui/words/tr.h"

#include <QJsonArray>
#include <QJsonObject>

#include <cmath>

namespace riband::app {

namespace {

using namespace foresight;
using ui::Words;

constexpr int mostSeeds = 1000;

Usage usage() {
    return {QStringLiteral("simulate"),
            Words::tr("Plays invented shops by a policy, against the smallest that fits and hindsight."),
            {},
            {{"scenario", Words::tr("practice, the name of one shop, “drawn N”, or a file."), "NAME|FILE"},
             {"seeds", Words::tr("Runs of each shop; 3 if not said."), "N"},
             {"policy", Words::tr("fit, worth, lookahead, finish, precut or together."), "NAME"}}};
}

struct Policy {
    const char* name;
    Shelf shelf;
    Layer layer;
    bool isReference;
    bool together = false; ///< the orders of a day wait till closing time
};
constexpr Policy policies[] = {
    {"fit", Shelf::None, Layer::Price, true},
    {"worth", Shelf::None, Layer::Price, false},
    {"lookahead", Shelf::None, Layer::LookAhead, false},
    {"finish", Shelf::Stub, Layer::LookAhead, false},
    {"precut", Shelf::Listed, Layer::LookAhead, false},
    {"together", Shelf::None, Layer::LookAhead, false, true},
};

const Policy& policyNamed(const QString& name) {
    for (const auto& policy : policies)
        if (name == QLatin1String(policy.name)) return policy;
    throw BadInput(
        Words::tr("There is no policy “%1”: fit, worth, lookahead, finish, precut or together.").arg(name));
}

struct Pair {
    Outcome reference, player;
};

/// Belts of one day share their trims, so hindsight has to be that of whole days: the player is held to it,
/// and the gap is told against the hindsight of single orders, which it may pass.
Pair playTogether(Scenario shop, const std::vector<Order>& orders, const Advisor::Knobs& knobs, Pair pair) {
    const auto days = atClosingTime(orders);
    shop.setting.ordersPerYear = std::min(shop.setting.ordersPerYear, shop.setting.daysPerYear);
    const Hindsight hindsight{shop.setting, days, 200};
    Advisor advisor{shop.setting, knobs};
    pair.player = play(shop.setting, days, advisor, hindsight);
    pair.player.bound = pair.reference.bound;
    pair.player.tally.orders = pair.reference.tally.orders;
    return pair;
}

Pair playPair(Scenario shop, const Policy& policy, std::size_t number, int seed) {
    const auto orders = ordersOf(shop, Dice::of(1000 + static_cast<std::uint64_t>(seed), number));
    const Hindsight hindsight{shop.setting, orders, 200};
    BestFit reference{shop.setting};
    Pair pair;
    pair.reference = play(shop.setting, orders, reference, hindsight);
    pair.player = pair.reference;
    if (policy.isReference) return pair;
    shop.setting.shelf = policy.shelf;
    shop.setting.seed = static_cast<std::uint64_t>(seed);
    Advisor::Knobs knobs;
    knobs.layer = policy.layer;
    if (policy.together) return playTogether(shop, orders, knobs, pair);
    Advisor advisor{shop.setting, knobs};
    pair.player = play(shop.setting, orders, advisor, hindsight);
    return pair;
}

/// Mean and half the width of its 95 % interval.
struct Mean {
    double mean = 0, doubt = 0;
};
Mean meanOf(const std::vector<Pair>& pairs, double (*figure)(const Pair&)) {
    Mean result;
    for (const auto& pair : pairs)
        result.mean += figure(pair) / static_cast<double>(pairs.size());
    double squares = 0;
    for (const auto& pair : pairs)
        squares += std::pow(figure(pair) - result.mean, 2);
    const auto n = static_cast<double>(pairs.size());
    if (n > 1) result.doubt = 1.96 * std::sqrt(squares / (n - 1) / n);
    return result;
}

struct Column {
    const char* name; ///< of the JSON field
    const char* head;
    double (*figure)(const Pair&);
    int places;
};
double perOrder(const Pair& p, double amount) { return amount / static_cast<double>(p.player.tally.orders); }
constexpr Column columns[] = {
    {"gap_closed_percent", "gap %", [](const Pair& p) { return gapClosed(p.reference, p.player); }, 1},
    {"waste_percent", "waste %", [](const Pair& p) { return p.player.waste(); }, 2},
    {"raw_waste_percent", "raw %", [](const Pair& p) { return p.player.rawWaste(); }, 2},
    {"fit_waste_percent", "fit %", [](const Pair& p) { return p.reference.waste(); }, 2},
    {"hindsight_waste_percent", "hind %", [](const Pair& p) { return p.player.boundWaste(); }, 2},
    {"sleeves", "sleeves", [](const Pair& p) { return static_cast<double>(p.player.tally.sleeves); }, 1},
    {"mountings_per_order", "mount",
     [](const Pair& p) { return perOrder(p, static_cast<double>(p.player.tally.mountings)); }, 2},
    {"remnants_held", "rack", [](const Pair& p) { return p.player.tally.remnantDays / p.player.tally.days; },
     1},
    {"ready_held", "ready", [](const Pair& p) { return p.player.tally.readyDays / p.player.tally.days; }, 1},
};

QJsonObject shopJson(const Scenario& shop, const std::vector<Pair>& pairs) {
    QJsonObject object{{"scenario", QString::fromStdString(shop.name)},
                       {"seeds", static_cast<int>(pairs.size())}};
    for (const auto& column : columns) {
        const auto mean = meanOf(pairs, column.figure);
        object[QLatin1String(column.name)] = QJsonObject{{"mean", mean.mean}, {"doubt", mean.doubt}};
    }
    int worse = 0;
    for (const auto& pair : pairs)
        worse += pair.player.net() > pair.reference.net() ? 1 : 0;
    object["seeds_worse_than_fit"] = worse;
    return object;
}

QString shopLine(const QString& name, const std::vector<Pair>& pairs) {
    QString line = name.leftJustified(28, QLatin1Char(' '), true);
    for (const auto& column : columns)
        line += QString::number(meanOf(pairs, column.figure).mean, 'f', column.places).rightJustified(9);
    return line + QStringLiteral("  ±%1").arg(meanOf(pairs, columns[0].figure).doubt, 0, 'f', 1);
}

/// All pairs on all cores, each run by its own number so that the threads don't matter.
std::vector<std::vector<Pair>> playAll(const std::vector<Scenario>& shops, const Policy& policy, int seeds) {
    const auto each = static_cast<std::size_t>(seeds);
    const std::size_t runs = shops.size() * each;
    std::vector<std::vector<Pair>> pairs(shops.size(), std::vector<Pair>(each));
    std::size_t ended = 0;
    Work work;
    const std::size_t tellEvery = std::max<std::size_t>(1, runs / 20);
    work.told = [&](double) {
        if (++ended % tellEvery == 0 && runs > 1) complain(Words::tr("%1 of %2 runs").arg(ended).arg(runs));
    };
    onAllCores(
        runs,
        [&](std::size_t run) {
            pairs[run / each][run % each] =
                playPair(shops[run / each], policy, run / each, static_cast<int>(run % each) + 1);
        },
        work);
    return pairs;
}

int seedsOf(const Options& options) {
    if (!options.has(QStringLiteral("seeds"))) return 3;
    bool isNumber = false;
    const int seeds = options.value(QStringLiteral("seeds")).toInt(&isNumber);
    if (!isNumber || seeds < 1 || seeds > mostSeeds)
        throw BadInput(Words::tr("--seeds must be a whole number from 1 to %1.").arg(mostSeeds));
    return seeds;
}

} // namespace

Exit simulate(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const auto shops = scenariosNamed(options.needed(QStringLiteral("scenario")));
    const auto& policy = policyNamed(options.needed(QStringLiteral("policy")));
    const auto pairs = playAll(shops, policy, seedsOf(options));
    std::vector<Pair> all;
    for (const auto& of : pairs)
        all.insert(all.end(), of.begin(), of.end());
    if (options.json()) {
        QJsonArray list;
        for (std::size_t i = 0; i < shops.size(); ++i)
            list.append(shopJson(shops[i], pairs[i]));
        Scenario together;
        together.name = "all";
        printJson(QJsonObject{
            {"policy", QLatin1String(policy.name)}, {"scenarios", list}, {"all", shopJson(together, all)}});
        return Exit::Done;
    }
    QString head = Words::tr("shop").leftJustified(28);
    for (const auto& column : columns)
        head += QString(QLatin1String(column.head)).rightJustified(9);
    print(head);
    for (std::size_t i = 0; i < shops.size(); ++i)
        print(shopLine(QString::fromStdString(shops[i].name), pairs[i]));
    if (shops.size() > 1) print(shopLine(Words::tr("mean"), all));
    return Exit::Done;
}

} // namespace riband::app
