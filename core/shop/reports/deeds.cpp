// What the book kept of each order, for the replay of overrides.
#include "core/shop/once.h"
#include "core/shop/reports/both_ways.h"
#include "core/store/past_rack.h"

#include <algorithm>
#include <map>

namespace riband::shop {

namespace {

/// Millimetres of one unit of width.
double millimetresOf(const Shop& shop, const store::StockedBelt& belt) {
    const belt::Profile* profile = shop.tables->profile(belt.belt.profile);
    if (belt.unit == Unit::Micrometre || !profile) return 1e-3;
    return static_cast<double>(profile->pitch.inNanometres()) / 1e6;
}

void addWish(std::vector<Wish>& wishes, Extent extent, std::int64_t belts) {
    const auto same =
        std::find_if(wishes.begin(), wishes.end(), [&](const Wish& wish) { return wish.extent == extent; });
    if (same == wishes.end())
        wishes.push_back({extent, belts});
    else
        same->quantity += belts;
}

class Reader {
public:
    explicit Reader(const Shop& shop) : shop_{shop}, settings_{store::Settings{shop.connection}.read()} {}

    std::vector<BeltDeeds> read(const Period& period) {
        std::map<store::BeltId, std::vector<store::Advice>> byBelt;
        for (store::Advice& advice : store::Advices{shop_.connection}.between(period.from, period.until)) {
            auto& ofBelt = byBelt[advice.belt];
            if (departs(advice) || !ofBelt.empty()) ofBelt.push_back(std::move(advice));
        }
        std::vector<BeltDeeds> belts;
        for (auto& [belt, advices] : byBelt)
            if (!advices.empty()) addBelt(belt, std::move(advices), belts);
        return belts;
    }

private:
    void addBelt(store::BeltId id, std::vector<store::Advice> advices, std::vector<BeltDeeds>& belts) {
        const store::StockedBelt belt = store::Catalogue{shop_.connection}.at(id);
        std::vector<Deed> deeds;
        Extent widest = Extent::none(belt.unit);
        for (store::Advice& advice : advices) {
            if (auto deed = deedOf(belt, std::move(advice))) {
                for (const store::StockPiece& piece : deed->rack)
                    widest = std::max(widest, piece.extent);
                deeds.push_back(std::move(*deed));
            }
        }
        const auto first =
            std::find_if(deeds.begin(), deeds.end(), [](const Deed& deed) { return departs(deed.advice); });
        deeds.erase(deeds.begin(), first);
        if (deeds.empty()) return;
        Past past = pastBefore(shop_, belt, settings_, widest, deeds.front().advice.at);
        const double millimetres = millimetresOf(shop_, belt);
        belts.push_back({belt, settings_, std::move(past), millimetres, std::move(deeds)});
    }

    /// What was ordered and taken back is no demand.
    std::optional<Deed> deedOf(const store::StockedBelt& belt, store::Advice advice) const {
        const store::Order order = store::Orders{shop_.connection}.at(advice.order);
        if (order.state == store::OrderState::Cancelled) return std::nullopt;
        Deed deed{std::move(advice), {}, {}, {}, {}};
        const auto tickets = store::Tickets{shop_.connection}.ofOrder(order.id);
        if (!tickets.empty()) addTicket(belt, order, tickets.front(), deed);
        markSleeves(deed);
        if (deed.wishes.empty()) return std::nullopt;
        if (departs(deed.advice)) deed.rack = store::PastRack{shop_.connection}.before(belt, deed.advice.at);
        return deed;
    }

    /// The ticket that was made with the order; later ones plan the same belts again.
    static void addTicket(const store::StockedBelt& belt, const store::Order& order,
                          const store::Ticket& ticket, Deed& deed) {
        const auto isOfBelt = [&](store::PieceId piece) {
            return std::any_of(deed.advice.taken.pieces.begin(), deed.advice.taken.pieces.end(),
                               [&](const auto& from) { return from.piece == piece; });
        };
        for (const store::TicketMounting& mounting : ticket.mountings) {
            if (mounting.trim.unit() != belt.unit || !isOfBelt(mounting.piece)) continue;
            Extent used = mounting.trim;
            for (const store::TicketCut& cut : mounting.cuts) {
                used = used + (cut.extent + mounting.kerf) * cut.count;
                if (cut.line)
                    addWish(deed.wishes, cut.extent, cut.count);
                else
                    deed.forShelf.insert(deed.forShelf.end(), static_cast<std::size_t>(cut.count),
                                         cut.extent);
            }
            deed.mountings.push_back({mounting.piece, mounting.left + used, mounting.left, false});
        }
        for (const auto& [piece, id] : ticket.taken)
            for (const store::OrderLine& line : order.lines)
                if (line.id == id && line.belt == belt.id) {
                    deed.fromShelf.push_back(line.extent);
                    addWish(deed.wishes, line.extent, 1);
                }
    }

    /// The book keeps how many were opened: they were the widest.
    static void markSleeves(Deed& deed) {
        std::stable_sort(deed.mountings.begin(), deed.mountings.end(),
                         [](const auto& a, const auto& b) { return a.before > b.before; });
        const auto opened = std::min<std::size_t>(deed.mountings.size(),
                                                  static_cast<std::size_t>(deed.advice.taken.sleevesOpened));
        for (std::size_t i = 0; i < opened; ++i)
            deed.mountings[i].opensSleeve = true;
    }

    const Shop& shop_;
    store::ShopSettings settings_;
};

} // namespace

std::vector<BeltDeeds> deedsOf(const Shop& shop, const Period& period) { return Reader{shop}.read(period); }

} // namespace riband::shop
