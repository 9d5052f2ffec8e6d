#include "core/shop/ageing.h"

#include "core/shop/offers.h"
#include "core/shop/promises.h"

#include <algorithm>

namespace riband::shop {

namespace {

constexpr std::int64_t longest = 10; ///< years
constexpr std::chrono::days lookedBack{730};

/// What is read once for all remnants.
struct Around {
    store::ShopSettings settings;
    std::map<store::BeltId, store::StockedBelt> belts;
    std::map<store::BeltId, std::int64_t> soldInAYear;
    std::map<store::BeltId, std::vector<store::WidthAsked>> asked;
    std::map<store::BeltId, std::int64_t> onRack; ///< width of all pieces of the belt
};

Around around(const Shop& shop, const std::vector<store::StockPiece>& pieces) {
    const Date today = dayOf(shop.now());
    const store::Sales sales{shop.connection};
    Around all{store::Settings{shop.connection}.read(),
               {},
               sales.soldSince(Moment{today - std::chrono::days{365}}),
               sales.widthsSince(Moment{today - lookedBack}),
               {}};
    for (const store::StockedBelt& belt : store::Catalogue{shop.connection}.all())
        all.belts.emplace(belt.id, belt);
    for (const store::StockPiece& piece : pieces)
        all.onRack[piece.belt] += piece.extent.count();
    return all;
}

/// So long the belt's whole stock would last: a piece among it lies half of that on average, rounded up.
std::int64_t yearsToLie(const Around& all, store::BeltId belt) {
    const auto found = all.soldInAYear.find(belt);
    const std::int64_t sold = found == all.soldInAYear.end() ? 0 : found->second;
    if (sold <= 0) return longest;
    return std::clamp<std::int64_t>((all.onRack.at(belt) + 2 * sold - 1) / (2 * sold), 1, longest);
}

/// Belts of a width that one mounting of the piece can give, its trim and kerfs paid.
std::int64_t beltsFrom(Extent piece, Extent width, const cutting::Rules& rules) {
    const std::int64_t room = piece.count() - rules.trim.count() - rules.reserve(width).count();
    return std::max<std::int64_t>(0, room / (width + rules.kerf).count());
}

/// The width that is asked for most and fits; else the widest listed one.
std::optional<Extent> likeliest(const Around& all, const store::StockPiece& piece,
                                const store::StockedBelt& belt, const cutting::Rules& rules) {
    if (const auto found = all.asked.find(piece.belt); found != all.asked.end())
        for (const store::WidthAsked& width : found->second)
            if (beltsFrom(piece.extent, width.extent, rules) > 0) return width.extent;
    std::vector<Extent> listed = belt.listed;
    std::sort(listed.rbegin(), listed.rend());
    for (const Extent width : listed)
        if (beltsFrom(piece.extent, width, rules) > 0) return width;
    return std::nullopt;
}

std::optional<Burden> burdenOf(const Around& all, const store::StockPiece& piece) {
    const store::StockedBelt& belt = all.belts.at(piece.belt);
    const cutting::Rules& rules = all.settings.rulesFor(belt.unit);
    const std::int64_t years = yearsToLie(all, piece.belt);
    // Ribs are 1.6 to 9.4 mm wide (ISO 9982:1998, profiles.csv): one rib a year is the least that can be
    // counted.
    const std::int64_t perYear = belt.unit == Unit::Rib ? 1 : all.settings.advice.holding.inMicrometres();
    const Extent keeping = Extent::of(belt.unit, perYear * years);
    const bool useless = usableWorth(rules, belt.listed)->of(piece.extent.count()) == 0;
    if (!useless && piece.extent > keeping) return std::nullopt;
    const std::optional<Extent> width = likeliest(all, piece, belt, rules);
    return Burden{.piece = piece,
                  .belt = belt.designation,
                  .advice = width ? Burden::Advice::Offer : Burden::Advice::Scrap,
                  .width = width,
                  .belts = width ? beltsFrom(piece.extent, *width, rules) : 0,
                  .years = years,
                  .keeping = keeping};
}

} // namespace

std::vector<Burden> burdens(const Shop& shop) {
    const std::vector<store::StockPiece> pieces = store::Pieces{shop.connection}.all();
    const Around all = around(shop, pieces);
    std::vector<Burden> rows;
    for (const store::StockPiece& piece : pieces) {
        if (piece.kind != cutting::PieceKind::Remnant || !piece.reserved.isNone()) continue;
        if (auto burden = burdenOf(all, piece)) rows.push_back(std::move(*burden));
    }
    std::sort(rows.begin(), rows.end(), [](const Burden& a, const Burden& b) {
        return std::tuple{a.belt, -a.piece.extent.count(), a.piece.code} <
               std::tuple{b.belt, -b.piece.extent.count(), b.piece.code};
    });
    return rows;
}

} // namespace riband::shop
