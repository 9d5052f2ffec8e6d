#include "app/demo/bulk.h"
#include "app/demo/demo_shop.h"
#include "app/demo/dice.h"
#include "core/shop/kept.h"
#include "core/shop/order.h"

#include <algorithm>
#include <deque>
#include <set>
#include <utility>

// Years of business in a minute: the same rows that the shop's verbs would write, through the same ledger,
// but many acts to a transaction and with a simple rule for the piece: the smallest that fits.
//
// Each belt has a number of pieces that the shop keeps of it; they add up to the number of live pieces
// wanted. Only goods in add pieces and only a cut that uses a piece up takes one away. A belt that lacks
// pieces waits in `bare_` for one delivery of all that it lacks. So the run ends exactly when the movements
// that are left are the deliveries that wait.

namespace riband::app {

namespace {

constexpr std::int64_t actsInTransaction = 20'000;
constexpr std::int64_t linesOfOrder = 3;
constexpr int openOrders = 40;

/// The belts that most makers list come first: those a shop would keep.
std::vector<belt::Belt> beltsToKeep(const belt::Tables& tables, std::int64_t most) {
    struct Made {
        belt::Belt belt;
        int makers;
    };
    std::vector<Made> all;
    for (const belt::Profile& profile : tables.profiles())
        for (const belt::MadeLength& length : tables.lengths(profile.name))
            all.push_back({{profile.name, length.teeth, length.length, ""}, length.makers});
    std::stable_sort(all.begin(), all.end(),
                     [](const Made& a, const Made& b) { return a.makers > b.makers; });
    std::vector<belt::Belt> belts;
    for (const Made& made : all)
        if (std::cmp_less(belts.size(), most)) belts.push_back(made.belt);
    return belts;
}

class Years {
public:
    Years(store::Connection& connection, std::shared_ptr<const belt::Tables> tables, Moment now,
          std::uint64_t seed, const LargeShop& size)
        : connection_{connection}, tables_{std::move(tables)}, bulk_{connection, seed}, size_{size},
          dice_{seed + 1}, start_{now - std::chrono::days{365 * size.years}}, step_{(now - start_) /
                                                                                    (size.movements + 1)} {}

    void run(const std::function<void(double)>& told) {
        keepBelts();
        while (left() > 0) {
            store::Transaction transaction{connection_};
            for (const std::int64_t end = std::min(bulk_.movements() + actsInTransaction, size_.movements);
                 bulk_.movements() < end;)
                act();
            transaction.commit();
            if (told) told(static_cast<double>(bulk_.movements()) / static_cast<double>(size_.movements));
        }
        leaveOpenOrders();
    }

private:
    Moment now() const { return start_ + step_ * bulk_.movements(); }
    std::int64_t left() const { return size_.movements - bulk_.movements(); }
    /// Movements that are not needed for the deliveries that wait.
    std::int64_t spare() const { return left() - static_cast<std::int64_t>(bare_.size()); }

    void keepBelts() {
        store::Transaction transaction{connection_};
        for (const belt::Belt& belt : beltsToKeep(*tables_, size_.belts))
            shelves_.push_back({kept(belt), 0, {}});
        for (std::int64_t piece = 0; piece < size_.pieces; ++piece)
            ++shelves_[keeper(static_cast<std::size_t>(piece))].kept;
        for (std::size_t shelf = 0; shelf < shelves_.size(); ++shelf)
            bare_.push_back(shelf);
        transaction.commit();
    }

    /// Every belt twice, then more of those that are asked for most.
    std::size_t keeper(std::size_t piece) {
        return piece < 2 * shelves_.size() ? piece % shelves_.size() : asked();
    }
    std::size_t asked() { return dice_.below(1 + dice_.below(shelves_.size())); }

    store::StockedBelt kept(const belt::Belt& belt) {
        store::Catalogue catalogue{connection_};
        if (const auto known = catalogue.find(belt)) return *known;
        store::StockedBelt entry = shop::usualEntry(*tables_, belt);
        entry.price = WidthPrice::thousandths(static_cast<std::int64_t>(15'000 + dice_.below(80'000)));
        entry.sleeveCost = Money::minor(static_cast<std::int64_t>(1'500 + dice_.below(8'000)));
        entry.deliveryDays = 3;
        entry.id = catalogue.add(entry);
        return entry;
    }

    /// A sale of some lines may use up as many pieces, each of which wants a delivery: twice the movements.
    void act() {
        const bool delivering = !bare_.empty() && (spare() == 0 || dice_.oneIn(2));
        if (delivering) return deliver();
        if (spare() >= 2 * linesOfOrder && sell(linesOfOrder)) return;
        if (spare() >= 2 && sell(1)) return;
        bare_.empty() ? bulk_.trimEdge(shelves_[asked()], now()) : deliver();
    }

    void deliver() {
        bulk_.deliver(shelves_[bare_.front()], now());
        bare_.pop_front();
    }

    bool sell(std::int64_t lines) {
        std::set<std::size_t> chosen;
        for (int tries = 0; tries < 50 && std::cmp_less(chosen.size(), lines); ++tries)
            if (const std::size_t shelf = asked(); !shelves_[shelf].pieces.empty()) chosen.insert(shelf);
        std::vector<Shelf*> shelves;
        for (const std::size_t shelf : chosen)
            shelves.push_back(&shelves_[shelf]);
        const bool sold = bulk_.sell(shelves, now());
        for (const std::size_t shelf : chosen)
            if (shelves_[shelf].justLost) bare_.push_back(shelf);
        for (Shelf* shelf : shelves)
            shelf->justLost = false;
        return sold;
    }

    /// What waits at the bench this morning, by the shop's own verb.
    void leaveOpenOrders() {
        const Moment end = start_ + step_ * (size_.movements + 1);
        const shop::Shop shop{connection_, tables_, bulk_.someone(), [end] { return end; }};
        for (int i = 0; i < openOrders; ++i) {
            const store::StockedBelt& belt = shelves_[asked()].belt;
            if (belt.listed.empty()) continue;
            const Extent width = belt.listed.front();
            try {
                shop::order(shop, {.lines = {{belt.belt, width, 1, belt.designation, std::nullopt, {}}},
                                   .customer = "",
                                   .phone = "",
                                   .due = std::nullopt,
                                   .note = ""});
            } catch (const shop::Refusal&) {
                continue; // that belt has just run out; the next customer wants another
            }
        }
    }

    store::Connection& connection_;
    std::shared_ptr<const belt::Tables> tables_;
    Bulk bulk_;
    LargeShop size_;
    Dice dice_;
    Moment start_;
    std::chrono::milliseconds step_;
    std::vector<Shelf> shelves_;
    std::deque<std::size_t> bare_; ///< shelves that wait for a delivery, each once
};

} // namespace

void makeLargeShop(store::Connection& connection, const std::shared_ptr<const belt::Tables>& tables,
                   Moment now, std::uint64_t seed, const LargeShop& size,
                   const std::function<void(double)>& told) {
    furnish(connection);
    Years{connection, tables, now, seed, size}.run(told);
}

} // namespace riband::app
