#include "core/shop/once.h"

#include "core/foresight/worth_text.h"
#include "core/shop/piece_worth.h"

#include <algorithm>

namespace riband::shop {

namespace {

constexpr double guessedOrdersPerYear = 26;  // of a belt, before its own orders tell (no source)
constexpr double preCutFromTrimShare = 0.03; // below, belts cut before they are asked for gain nothing
constexpr std::size_t mostLines = 1500, mostOrders = 800;
constexpr double msPerDay = 86'400'000;

foresight::CutRules rulesOf(const cutting::Rules& rules, double mountingCost) {
    const auto size = [](Extent extent) { return static_cast<foresight::Size>(extent.count()); };
    return {size(rules.trim), size(rules.kerf), size(rules.end), size(rules.stub), mountingCost};
}

/// Widths of the listed that a sleeve can give at all.
std::vector<foresight::Size> listedOf(const store::StockedBelt& belt, const cutting::Rules& rules,
                                      Extent sleeve) {
    std::vector<foresight::Size> listed;
    for (const Extent width : belt.listed)
        if (rules.trim + width + rules.kerf + rules.reserve(width) <= sleeve)
            listed.push_back(static_cast<foresight::Size>(width.count()));
    return listed;
}

/// A setting in millimetres, in the unit of the belt.
double inUnit(const Shop& shop, const store::StockedBelt& belt, Width width) {
    const auto um = static_cast<double>(width.inMicrometres());
    if (belt.unit == Unit::Micrometre) return um;
    const belt::Profile* profile = shop.tables->profile(belt.belt.profile);
    return profile ? um * 1000 / static_cast<double>(profile->pitch.inNanometres()) : 0;
}

bool preCuts(store::PreCut preCut, const foresight::Setting& setting, const foresight::Outlook& outlook) {
    if (preCut != store::PreCut::WherePays) return preCut == store::PreCut::Always;
    const double trim = setting.rules.trim;
    return trim / (trim + outlook.meanWidthOfOrder()) > preCutFromTrimShare;
}

foresight::Shelf shelfOf(const store::StockedBelt& belt, const store::AdviceRules& advice,
                         const foresight::Setting& setting) {
    if (advice.shelfLimit == 0) return foresight::Shelf::None;
    if (setting.fault().empty() && preCuts(belt.preCut, setting, foresight::Outlook{setting}))
        return foresight::Shelf::Listed;
    return advice.finish ? foresight::Shelf::Stub : foresight::Shelf::None;
}

foresight::Setting settingOf(const Shop& shop, const store::StockedBelt& belt,
                             const store::ShopSettings& settings, Extent widest) {
    const cutting::Rules& rules = settings.rulesFor(belt.unit);
    const Extent sleeve = std::max(belt.newSleeve, widest);
    foresight::Setting setting;
    setting.sleeve = static_cast<foresight::Size>(sleeve.count());
    setting.listed = listedOf(belt, rules, sleeve);
    setting.ordersPerYear = guessedOrdersPerYear;
    setting.daysPerYear = 365.25;
    setting.rules = rulesOf(rules, inUnit(shop, belt, settings.mountingCost.width()));
    setting.rackLimit = settings.mostRemnants;
    setting.shelfRoom = settings.advice.shelfLimit;
    setting.shelfAtOnce = settings.advice.shelfAtOnce;
    setting.interest = static_cast<double>(settings.advice.interest.count()) / 1000;
    setting.holdingCost = inUnit(shop, belt, settings.advice.holding);
    setting.seed = static_cast<std::uint64_t>(belt.id.value());
    setting.ribs = belt.unit == Unit::Rib;
    setting.tidy();
    setting.shelf = shelfOf(belt, settings.advice, setting);
    return setting;
}

void addLine(foresight::Order& order, foresight::Line line) {
    const auto same = std::find_if(order.lines.begin(), order.lines.end(),
                                   [&](const auto& each) { return each.width == line.width; });
    if (same == order.lines.end())
        order.lines.push_back(line);
    else
        same->quantity += line.quantity;
}

double daysBetween(Moment from, Moment until) {
    return static_cast<double>(std::max<std::int64_t>(0, (until - from).count())) / msPerDay;
}

std::vector<foresight::Order> ordersOf(const std::vector<store::PastLine>& past) {
    std::vector<foresight::Order> orders;
    std::optional<store::OrderId> last;
    for (const store::PastLine& line : past) {
        if (last != line.order) orders.push_back({daysBetween(past.front().made, line.made), {}});
        last = line.order;
        addLine(orders.back(),
                {static_cast<foresight::Size>(line.extent.count()), static_cast<int>(line.belts)});
    }
    return orders;
}

void keepLast(std::vector<foresight::Order>& orders) {
    if (orders.size() > mostOrders)
        orders.erase(orders.begin(), orders.end() - static_cast<std::ptrdiff_t>(mostOrders));
}

/// The table that is kept, if it is one of today's setting.
WorthFault read(const Past& past, foresight::WorthTable& table) {
    if (!past.worth) return WorthFault::Missing;
    if (past.worth->form != foresight::worthTextForm) return WorthFault::OtherForm;
    if (past.worth->madeFor != foresight::print(past.setting)) return WorthFault::OutOfDate;
    auto kept = foresight::readWorthTable(past.setting, past.worth->contents);
    if (!kept) return WorthFault::OtherForm;
    table = std::move(*kept);
    return WorthFault::None;
}

} // namespace

foresight::Order possible(const foresight::Order& order, const foresight::Setting& setting) {
    foresight::Order some{order.day, {}};
    const auto& rules = setting.rules;
    for (const auto& line : order.lines)
        if (rules.trim + line.width + rules.kerf + rules.reserve(line.width) <= setting.sleeve)
            some.lines.push_back(line);
    return some;
}

Past pastOf(const Shop& shop, const store::StockedBelt& belt, const store::ShopSettings& settings,
            Extent widest) {
    Past past{settingOf(shop, belt, settings, widest), {}, 0, {}};
    const auto lines = store::Orders{shop.connection}.pastOf(belt.id, mostLines);
    past.orders = ordersOf(lines);
    if (!lines.empty()) past.today = daysBetween(lines.front().made, shop.now());
    keepLast(past.orders);
    past.worth = store::WorthTables{shop.connection}.of(belt.id);
    return past;
}

Past pastBefore(const Shop& shop, const store::StockedBelt& belt, const store::ShopSettings& settings,
                Extent widest, Moment moment) {
    Past past{settingOf(shop, belt, settings, widest), {}, 0, {}};
    constexpr std::size_t all = 1'000'000;
    auto lines = store::Orders{shop.connection}.pastOf(belt.id, all);
    std::erase_if(lines, [&](const store::PastLine& line) { return line.made >= moment; });
    past.orders = ordersOf(lines);
    if (!lines.empty()) past.today = daysBetween(lines.front().made, moment);
    keepLast(past.orders);
    return past;
}

void addToday(Past& past, const std::vector<foresight::Line>& lines) {
    foresight::Order today{past.today, {}};
    for (const auto& line : lines)
        addLine(today, line);
    past.orders.push_back(std::move(today));
    keepLast(past.orders);
}

foresight::WorthTable unlearnedTable(const foresight::Setting& setting) {
    constexpr int mostAlike = 3;
    constexpr float ofItsWidth = 0.5F; // less than any rest of use is worth: only dead ends are finished
    foresight::WorthTable table{setting};
    if (setting.shelf == foresight::Shelf::None) return table;
    const auto widths = std::min<std::size_t>(setting.listed.size(), foresight::mostReady);
    for (std::size_t l = 0; l < widths; ++l) {
        table.target[l] = std::min(mostAlike, setting.shelfRoom);
        for (int n = 1; n <= foresight::shelfLimit; ++n)
            table.ready[l][static_cast<std::size_t>(n)] =
                ofItsWidth * static_cast<float>(n * setting.listed[l]);
    }
    return table;
}

std::optional<foresight::WorthTable> currentTable(const Shop& shop, const store::StockedBelt& belt,
                                                  const store::ShopSettings& settings, Extent widest) {
    Past past{
        settingOf(shop, belt, settings, widest), {}, 0, store::WorthTables{shop.connection}.of(belt.id)};
    if (!past.worth || !past.setting.fault().empty()) return std::nullopt;
    foresight::WorthTable table{past.setting};
    if (read(past, table) != WorthFault::None) return std::nullopt;
    return table;
}

std::optional<Future> futureOf(const Past& past) {
    if (!past.setting.fault().empty()) return std::nullopt;
    Future future{foresight::Outlook{past.setting}, unlearnedTable(past.setting), WorthFault::None, 0};
    future.fault = read(past, future.table);
    if (future.fault == WorthFault::None) future.version = past.worth->version;
    for (auto order : past.orders) {
        order.day -= past.orders.front().day; // the rate is of the time that is looked at
        if (const auto some = possible(order, past.setting); !some.lines.empty()) future.outlook.learn(some);
    }
    return future;
}

} // namespace riband::shop
