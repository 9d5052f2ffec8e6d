#include "core/foresight/price_rule.h"

#include <limits>

namespace riband::foresight {

namespace {
constexpr float never = std::numeric_limits<float>::infinity();
}

PriceRule::PriceRule(const Setting& setting) : setting_{setting}, fill_{setting} {}

void PriceRule::begin(const WorthTable& table, const Stock& stock, const Asked& asked) {
    Size narrowest = setting_.sleeve;
    for (const auto& item : asked.items())
        narrowest = std::min(narrowest, item.width);
    fill_.prepare(table, stock.ready, narrowest);
    rest_ = fill_.worth();
}

/// What a place for one more remnant costs: on a full rack the least worth has to go.
float PriceRule::placeOnRack(const WorthTable& table, const Stock& stock) const {
    if (!setting_.hasTightRack() || stock.count == 0 || stock.count < setting_.rackLimit) return 0;
    const auto& least = stock.remnants[static_cast<std::size_t>(leastWorth(table, stock))];
    return least.fresh * table.of(least.size);
}

/// G of a rest, less the place that it takes if it is kept.
float PriceRule::afterwards(const WorthTable& table, int cell, bool shelf, float place) const {
    const float kept = table.piece[static_cast<std::size_t>(cell)];
    if (shelf && rest_[cell] > kept) return rest_[cell];
    return std::max(0.0F, kept - place);
}

/// Prices of all parts that a piece of this size can give; the others cost infinity.
void PriceRule::priceParts(const WorthTable& table, const Asked& asked, Size size, float before,
                           float place) {
    const auto& rules = setting_.rules;
    const float start = before + table.mounting;
    const auto price = [&](int part, Size left) {
        const bool all = part == wanted_ || part == asked.parts() - 1;
        price_[static_cast<std::size_t>(part)] = start - afterwards(table, table.grid.at(left), all, place);
    };
    if (asked.isSingle()) {
        const auto& item = asked.items()[0];
        const Size room = size - rules.trim - rules.reserve(item.width);
        fits_ = room < item.step ? 0 : std::min(asked.parts() - 1, room / item.step);
        for (int n = 1; n <= fits_; ++n)
            price(n, size - rules.trim - n * item.step);
        return;
    }
    fits_ = 0;
    for (int part = 1; part < asked.parts(); ++part) {
        const Size left = size - rules.trim - asked.size(part);
        const bool fits = left >= rules.reserve(asked.widest(part));
        price_[static_cast<std::size_t>(part)] = never;
        if (fits) price(part, left);
        fits_ += fits ? 1 : 0;
    }
}

void PriceRule::usePiece(const Asked& asked, int number) {
    auto& from = from_[static_cast<std::size_t>(number)];
    std::fill_n(from.begin(), asked.parts(), std::uint8_t{0});
    const auto better = [&](std::size_t whole, std::size_t part, std::size_t other) {
        const float cost = cost_[other] + price_[part];
        if (cost < cost_[whole]) {
            cost_[whole] = cost;
            from[whole] = static_cast<std::uint8_t>(part);
        }
    };
    if (asked.isSingle()) {
        for (int whole = asked.parts() - 1; whole > 0; --whole)
            for (int part = std::min(whole, fits_); part > 0; --part)
                better(static_cast<std::size_t>(whole), static_cast<std::size_t>(part),
                       static_cast<std::size_t>(whole - part));
        return;
    }
    for (const auto& pair : asked.pairs())
        better(pair.whole, pair.part, static_cast<std::size_t>(pair.whole - pair.part));
}

void PriceRule::usePieces(const WorthTable& table, const Stock& stock, const Asked& asked) {
    std::fill_n(cost_.begin(), asked.parts(), never);
    cost_[0] = 0;
    used_ = 0;
    for (int i = 0; i < stock.count; ++i) {
        const auto& remnant = stock.remnants[static_cast<std::size_t>(i)];
        priceParts(table, asked, remnant.size, remnant.fresh * table.of(remnant.size));
        if (fits_ == 0) continue;
        usePiece(asked, used_);
        order_[static_cast<std::size_t>(used_++)] = i;
    }
    priceParts(table, asked, setting_.sleeve, table.sleeve, placeOnRack(table, stock));
    useSleeves(asked);
}

/// Of several sleeves all but one are cut as far as the order goes: two rests that could each give one more
/// of its belts are hardly better than one, but the table would count on each of them (bulk orders then left
/// the rack full of alike rests). A whole may be made of many such sleeves: wholes rise, so each part of it
/// was bettered already.
void PriceRule::useSleeves(const Asked& asked) {
    usePiece(asked, used_);
    order_[static_cast<std::size_t>(used_++)] = -1;
    auto& from = from_[static_cast<std::size_t>(used_)];
    std::fill_n(from.begin(), asked.parts(), std::uint8_t{0});
    const auto better = [&](std::size_t whole, std::size_t part) {
        const float cost = cost_[whole - part] + price_[part];
        if (cost < cost_[whole]) {
            cost_[whole] = cost;
            from[whole] = static_cast<std::uint8_t>(part);
        }
    };
    if (asked.isSingle()) {
        for (int whole = 1; fits_ > 0 && whole < asked.parts(); ++whole)
            better(static_cast<std::size_t>(whole), static_cast<std::size_t>(std::min(whole, fits_)));
        return;
    }
    const auto open = linesToAdd(asked);
    const auto pairs = asked.pairs();
    for (auto pair = pairs.rbegin(); pair != pairs.rend(); ++pair)
        if ((open[pair->part] & pair->more) == 0) better(pair->whole, pair->part);
}

/// For each part the lines, as bits, of which the piece at hand could give a belt more.
std::array<std::uint8_t, mostParts> PriceRule::linesToAdd(const Asked& asked) const {
    std::array<std::uint8_t, mostParts> open{};
    for (int part = 0; part < asked.parts(); ++part)
        for (std::size_t i = 0; i < asked.items().size(); ++i) {
            const int line = static_cast<int>(i);
            if (asked.belts(part, line) == asked.items()[i].quantity) continue;
            if (price_[static_cast<std::size_t>(part + asked.stride(line))] != never)
                open[static_cast<std::size_t>(part)] |= static_cast<std::uint8_t>(1U << i);
        }
    return open;
}

std::span<const float> PriceRule::costs(const WorthTable& table, const Stock& stock, const Asked& asked,
                                        int wanted) {
    begin(table, stock, asked);
    wanted_ = wanted;
    usePieces(table, stock, asked);
    return {cost_.data(), static_cast<std::size_t>(asked.parts())};
}

bool PriceRule::takeAllReady(const Stock& stock, const Asked& asked, Way& way) const {
    bool all = true;
    for (std::size_t i = 0; i < asked.items().size(); ++i) {
        const auto& item = asked.items()[i];
        const int there = item.listed < 0 ? 0 : stock.ready[static_cast<std::size_t>(item.listed)];
        way.take[i] = std::min(there, item.quantity);
        all = all && way.take[i] == item.quantity;
    }
    return all;
}

int PriceRule::afterTaking(const Asked& asked, const std::array<int, mostLines>& take) const {
    int part = asked.parts() - 1;
    for (std::size_t i = 0; i < asked.items().size(); ++i)
        part -= take[i] * asked.stride(static_cast<int>(i));
    return part;
}

Worth PriceRule::priceOfTaking(const WorthTable& table, const Stock& stock, const Asked& asked,
                               const std::array<int, mostLines>& take) const {
    Worth price = 0;
    for (std::size_t i = 0; i < asked.items().size(); ++i) {
        if (take[i] == 0) continue;
        const auto listed = static_cast<std::size_t>(asked.items()[i].listed);
        const int there = stock.ready[listed];
        price += table.ready[listed][static_cast<std::size_t>(there)] -
                 table.ready[listed][static_cast<std::size_t>(there - take[i])];
    }
    return price;
}

void PriceRule::readBack(int part, Way& way) const {
    way.shares.clear();
    const auto& sleeves = from_[static_cast<std::size_t>(used_)];
    while (part > 0 && sleeves[static_cast<std::size_t>(part)] > 0) {
        const int taken = sleeves[static_cast<std::size_t>(part)];
        way.shares.push_back({-1, taken});
        part -= taken;
    }
    for (int number = used_ - 1; number >= 0 && part > 0; --number) {
        const int taken = from_[static_cast<std::size_t>(number)][static_cast<std::size_t>(part)];
        if (taken == 0) continue;
        way.shares.push_back({order_[static_cast<std::size_t>(number)], taken});
        part -= taken;
    }
}

void PriceRule::choose(const WorthTable& table, const Stock& stock, const Asked& asked, Way& way) {
    way.fills = true;
    way.take = {};
    way.shares.clear();
    const bool all = setting_.shelf != Shelf::None && takeAllReady(stock, asked, way);
    if (all) {
        way.cost = priceOfTaking(table, stock, asked, way.take);
        return;
    }
    const auto taken = way.take;
    const int rest = afterTaking(asked, taken);
    const auto cost = costs(table, stock, asked, rest);
    const Worth withShelf = priceOfTaking(table, stock, asked, taken) + cost[static_cast<std::size_t>(rest)];
    const Worth without = cost[static_cast<std::size_t>(asked.parts() - 1)];
    if (without < withShelf) way.take = {};
    way.cost = std::min(without, withShelf);
    readBack(without < withShelf ? asked.parts() - 1 : rest, way);
}

void PriceRule::addParts(const WorthTable& table, const Stock& stock, const Asked& asked, int remnant,
                         std::vector<Way>& ways) {
    Stock::Remnant piece{setting_.sleeve, 1, 0};
    Worth before = table.sleeve;
    Stock others = stock;
    if (remnant >= 0) {
        piece = stock.remnants[static_cast<std::size_t>(remnant)];
        before = piece.fresh * table.of(piece.size);
        others.remove(remnant); // the last one takes its place
    }
    const int all = asked.parts() - 1;
    const auto cost = costs(table, others, asked, all);
    for (int part = 1; part < all; ++part) {
        const Size left = piece.size - setting_.rules.trim - asked.size(part);
        if (left < setting_.rules.reserve(asked.widest(part))) continue;
        Way way;
        readBack(all - part, way);
        for (auto& share : way.shares)
            if (remnant >= 0 && share.remnant == remnant) share.remnant = others.count;
        way.shares.push_back({remnant, part});
        way.cost = cost[static_cast<std::size_t>(all - part)] + before + table.mounting - table.of(left);
        ways.push_back(std::move(way));
    }
}

bool PriceRule::wholeFrom(const WorthTable& table, const Stock& stock, const Asked& asked, int remnant,
                          Way& way) {
    const Size size = remnant < 0 ? setting_.sleeve : stock.remnants[static_cast<std::size_t>(remnant)].size;
    const int all = asked.parts() - 1;
    const Size left = size - setting_.rules.trim - asked.size(all);
    if (left < setting_.rules.reserve(asked.widest(all))) return false;
    begin(table, stock, asked);
    const float before =
        remnant < 0 ? table.sleeve : table.of(size) * stock.remnants[static_cast<std::size_t>(remnant)].fresh;
    way.fills = true;
    way.take = {};
    way.shares = {{remnant, all}};
    const float place = remnant < 0 ? placeOnRack(table, stock) : 0;
    way.cost = before + table.mounting - afterwards(table, table.grid.at(left), true, place);
    return true;
}

PriceRule::Done PriceRule::apply(const WorthTable& table, Stock& stock, const Asked& asked, const Way& way,
                                 std::vector<Fill::Choice>* rests) {
    for (std::size_t i = 0; i < asked.items().size(); ++i)
        if (way.take[i] > 0) stock.addReady(asked.items()[i].listed, -way.take[i]);
    Done done;
    std::array<bool, mostRemnants> gone{};
    const int before = stock.count;
    for (const auto& share : way.shares) {
        Stock::Remnant piece{setting_.sleeve, 1, 0};
        if (share.remnant < 0) {
            ++done.sleeves;
        } else {
            piece = stock.remnants[static_cast<std::size_t>(share.remnant)];
            gone[static_cast<std::size_t>(share.remnant)] = true;
        }
        const auto rest = useRest(table, stock, asked, share, piece.size, way.fills);
        ++done.mountings;
        if (rests) rests->push_back(rest);
        const bool finished = setting_.shelf == Shelf::Stub && rest.any;
        if (!finished && table.of(rest.left) > 0) stock.add({rest.left, piece.fresh, -done.mountings});
    }
    for (int i = before - 1; i >= 0; --i)
        if (gone[static_cast<std::size_t>(i)]) stock.remove(i);
    while (stock.count > std::min(setting_.rackLimit, mostRemnants)) {
        const int least = leastWorth(table, stock);
        const auto& piece = stock.remnants[static_cast<std::size_t>(least)];
        done.dropped += piece.fresh * table.of(piece.size);
        stock.remove(least);
    }
    return done;
}

Fill::Choice PriceRule::useRest(const WorthTable& table, Stock& stock, const Asked& asked, const Share& share,
                                Size size, bool fills) {
    Fill::Choice rest;
    rest.left = size - setting_.rules.trim - asked.size(share.part);
    if (setting_.shelf == Shelf::None || !fills) return rest;
    fill_.prepare(table, stock.ready, asked.widest(share.part));
    rest = fill_.choose(table, rest.left);
    for (int l = 0; l < mostReady; ++l)
        if (rest.cut[static_cast<std::size_t>(l)] > 0)
            stock.addReady(l, rest.cut[static_cast<std::size_t>(l)]);
    return rest;
}

int leastWorth(const WorthTable& table, const Stock& stock) {
    int least = 0;
    float worth = never;
    for (int i = 0; i < stock.count; ++i) {
        const auto& each = stock.remnants[static_cast<std::size_t>(i)];
        if (each.fresh * table.of(each.size) >= worth) continue;
        worth = each.fresh * table.of(each.size);
        least = i;
    }
    return least;
}

} // namespace riband::foresight
