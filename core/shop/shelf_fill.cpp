#include "core/shop/shelf_fill.h"

#include <algorithm>

namespace riband::shop {

namespace {

using foresight::Size;

Size widestOf(const cutting::Problem& problem, const cutting::Mounting& mounting) {
    Extent widest = Extent::none(problem.rules.unit());
    for (const cutting::Cut& cut : mounting.cuts)
        widest = std::max(widest, problem.lines[cut.line].extent);
    return static_cast<Size>(widest.count());
}

double worthBefore(const foresight::Setting& setting, const foresight::WorthTable& table,
                   const cutting::Piece& piece) {
    const auto size = static_cast<Size>(piece.extent.count());
    const bool newSleeve = piece.kind == cutting::PieceKind::Sleeve && size == setting.sleeve;
    return newSleeve ? table.sleeve : table.of(size);
}

/// Puts a belt on the shelf; what the shelf is worth more by it.
double putOnShelf(const foresight::Setting& setting, const foresight::WorthTable& table,
                  foresight::Stock& stock, Extent belt) {
    const auto found = std::find(setting.listed.begin(), setting.listed.end(), belt.count());
    const auto l = static_cast<std::size_t>(found - setting.listed.begin());
    if (l >= stock.ready.size() || found == setting.listed.end()) return 0;
    const auto before = static_cast<std::size_t>(stock.ready[l]);
    if (before >= foresight::shelfLimit) return 0;
    stock.addReady(static_cast<int>(l), 1);
    return table.ready[l][before + 1] - table.ready[l][before];
}

} // namespace

foresight::Stock shelfStock(const Outlook& outlook, const cutting::Plan& plan) {
    std::map<Extent, int> shelf = outlook.shelf;
    for (const cutting::Taken& taken : plan.taken)
        --shelf[outlook.problem.pieces[taken.piece].extent];
    foresight::Stock stock;
    const auto& listed = outlook.past.setting.listed;
    for (std::size_t l = 0; l < std::min<std::size_t>(listed.size(), foresight::mostReady); ++l)
        if (const auto there = shelf.find(Extent::of(outlook.belt.unit, listed[l])); there != shelf.end())
            stock.addReady(static_cast<int>(l), std::clamp(there->second, 0, foresight::shelfLimit));
    return stock;
}

std::vector<Extent> widthsOf(const foresight::Setting& setting, const foresight::Fill::Choice& choice) {
    std::vector<Extent> widths;
    for (std::size_t l = 0; l < choice.cut.size(); ++l)
        if (choice.cut[l] > 0)
            widths.insert(widths.end(), static_cast<std::size_t>(choice.cut[l]),
                          Extent::of(setting.ribs ? Unit::Rib : Unit::Micrometre, setting.listed[l]));
    return widths;
}

void fillShelf(const Outlook& outlook, const foresight::WorthTable& table, Way& way) {
    const foresight::Setting& setting = outlook.past.setting;
    foresight::Fill fill{setting};
    foresight::Stock stock = shelfStock(outlook, way.plan);
    way.forShelf.clear();
    for (const cutting::Mounting& mounting : way.plan.mountings) {
        fill.prepare(table, stock.ready, widestOf(outlook.problem, mounting));
        const auto choice = fill.choose(table, static_cast<Size>(mounting.left.count()));
        way.forShelf.push_back(widthsOf(setting, choice));
        for (const Extent belt : way.forShelf.back())
            putOnShelf(setting, table, stock, belt);
    }
    priceWay(outlook, table, way);
}

void priceWay(const Outlook& outlook, const foresight::WorthTable& table, Way& way) {
    const foresight::Setting& setting = outlook.past.setting;
    foresight::Stock stock = shelfStock(outlook, way.plan);
    way.forShelf.resize(way.plan.mountings.size());
    way.cost = way.worthLeft = 0;
    for (std::size_t i = 0; i < way.plan.mountings.size(); ++i) {
        for (const Extent belt : way.forShelf[i])
            way.worthLeft += putOnShelf(setting, table, stock, belt);
        const bool finished = setting.shelf == foresight::Shelf::Stub && !way.forShelf[i].empty();
        const Extent left = way.left(i, outlook.problem.rules);
        if (!finished) way.worthLeft += table.of(static_cast<Size>(left.count()));
        way.cost +=
            table.mounting + worthBefore(setting, table, outlook.problem.pieces[way.plan.mountings[i].piece]);
    }
    way.cost -= way.worthLeft;
}

void declineShelf(const Outlook& outlook, Way& way) {
    if (!way.fillsShelf()) return;
    const double priced = way.cost;
    const std::optional<Future> future = futureOf(outlook.past);
    if (!future) return;
    priceWay(outlook, future->table, way);
    const double byLookAhead = priced - way.cost; // more than the table alone says
    way.forShelf.clear();
    priceWay(outlook, future->table, way);
    way.cost += byLookAhead;
}

} // namespace riband::shop
