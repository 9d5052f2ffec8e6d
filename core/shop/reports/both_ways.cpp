#include "core/shop/reports/both_ways.h"

#include "core/foresight/hindsight.h"
#include "core/shop/learn.h"
#include "core/shop/offers.h"
#include "core/shop/once.h"
#include "core/shop/reports/names.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <mutex>
#include <numeric>

namespace riband::shop {

namespace {

using cutting::PieceKind;
using foresight::Size;

constexpr int seeds = 3;          ///< of look-ahead's dice
constexpr int pricings = 60;      ///< as for how far one could have come
constexpr int planSteps = 20'000; ///< looks of the planner at its limit: no clock, so that the same is found

Size sizeOf(Extent extent) { return static_cast<Size>(extent.count()); }

double daysBetween(Moment from, Moment until) {
    return std::chrono::duration<double, std::ratio<86400>>(until - from).count();
}

std::vector<foresight::Line> linesOf(const Deed& deed) {
    std::vector<foresight::Line> lines;
    for (const Wish& wish : deed.wishes)
        lines.push_back({sizeOf(wish.extent), static_cast<int>(wish.quantity)});
    return lines;
}

/// What width is worth to who knew all orders of the belt: not by the table that the suggestions go by, which
/// would be a judge in its own cause.
class Prices {
public:
    explicit Prices(const BeltDeeds& belt) : setting_{belt.past.setting}, hindsight_{of(belt)} {}

    double ofPiece(Extent extent, PieceKind kind) const {
        if (kind == PieceKind::Sleeve) return static_cast<double>(extent.count());
        if (sizeOf(extent) < setting_.rules.stub) return 0;
        return std::min(hindsight_.worthOfRemnant(sizeOf(extent)), static_cast<double>(extent.count()));
    }
    double ofReady(Extent extent) const { return hindsight_.worthOfReady({{sizeOf(extent), 1}}); }
    double mounting() const { return setting_.rules.mountingCost; }

private:
    static foresight::Hindsight of(const BeltDeeds& belt) {
        std::vector<foresight::Order> orders;
        const auto add = [&](const foresight::Order& order) {
            auto some = possible(order, belt.past.setting);
            if (!some.lines.empty()) orders.push_back(std::move(some));
        };
        for (const foresight::Order& order : belt.past.orders)
            add(order);
        for (const Deed& deed : belt.deeds)
            add({0, linesOf(deed)});
        return {belt.past.setting, orders, pricings};
    }

    foresight::Setting setting_;
    foresight::Hindsight hindsight_;
};

/// A belt's rack in a history that never was.
class World {
public:
    World(const BeltDeeds& belt, const Prices& prices, std::vector<store::StockPiece> rack)
        : belt_{belt}, prices_{prices}, pieces_{std::move(rack)} {}

    /// Does what was suggested for an order. False, and nothing of use is left, if the rack does not bear it.
    bool follow(const Deed& deed) {
        const store::AdvisedWay& way = deed.advice.suggested;
        for (const auto& from : way.pieces)
            if (!cut(from.piece, from.left)) return false;
        for (const auto& belts : way.forShelf)
            for (std::int64_t i = 0; i < belts.belts; ++i)
                shelve(belts.extent, dayOf(deed.advice.at));
        std::int64_t ready = way.fromShelf;
        for (const Wish& wish : deed.wishes)
            for (std::int64_t i = 0; i < wish.quantity && ready > 0 && unshelve(wish.extent); ++i)
                --ready;
        return ready == 0;
    }

    /// Does what would have been suggested from this rack.
    void decide(const Deed& deed, const Past& past, const Future* future) {
        const Date today = dayOf(deed.advice.at);
        bringSleeves(deed.wishes, today);
        const Outlook outlook = outlookFor(deed.wishes, today, past);
        cutting::Limits limits;
        limits.stop = [looks = 0]() mutable { return ++looks > planSteps; };
        const Way way = suggestBy(outlook, future, limits).best;
        for (const cutting::Taken& taken : way.plan.taken)
            unshelve(outlook.pieces[taken.piece].extent);
        for (std::size_t i = 0; i < way.plan.mountings.size(); ++i) {
            cut(outlook.pieces[way.plan.mountings[i].piece].id, way.left(i, outlook.problem.rules));
            if (i < way.forShelf.size())
                for (const Extent belt : way.forShelf[i])
                    shelve(belt, today);
        }
    }

    double cost() const { return cost_; }

    /// Widths of the remnants and ready belts: what two racks differ in. Sleeves are there when needed.
    std::multimap<PieceKind, Extent> contents() const { return contentsOf(pieces_); }
    static std::multimap<PieceKind, Extent> contentsOf(std::vector<store::StockPiece> pieces) {
        std::sort(pieces.begin(), pieces.end(),
                  [](const auto& a, const auto& b) { return a.extent < b.extent; });
        std::multimap<PieceKind, Extent> contents;
        for (const store::StockPiece& piece : pieces)
            if (piece.kind != PieceKind::Sleeve) contents.emplace(piece.kind, piece.extent);
        return contents;
    }

private:
    const cutting::Rules& rules() const { return belt_.settings.rulesFor(belt_.belt.unit); }

    bool cut(store::PieceId id, Extent left) {
        const auto piece =
            std::find_if(pieces_.begin(), pieces_.end(), [&](const auto& each) { return each.id == id; });
        if (piece == pieces_.end() || piece->extent <= left) return false;
        cost_ += prices_.ofPiece(piece->extent, piece->kind) - prices_.ofPiece(left, PieceKind::Remnant) +
                 prices_.mounting();
        piece->kind = PieceKind::Remnant;
        piece->extent = left;
        if (left < rules().stub) pieces_.erase(piece);
        return true;
    }

    void shelve(Extent extent, Date today) {
        cost_ -= prices_.ofReady(extent);
        pieces_.push_back(made(PieceKind::Ready, extent, today));
    }

    bool unshelve(Extent extent) {
        const auto ready = std::find_if(pieces_.begin(), pieces_.end(), [&](const auto& piece) {
            return piece.kind == PieceKind::Ready && piece.extent == extent;
        });
        if (ready == pieces_.end()) return false;
        cost_ += prices_.ofReady(extent);
        pieces_.erase(ready);
        return true;
    }

    /// The shop bought what it needed: in another history it would have as well.
    void bringSleeves(const std::vector<Wish>& wishes, Date today) {
        const Extent sleeve = belt_.belt.newSleeve;
        std::int64_t wanted = sleeve.count(), there = 0;
        for (const Wish& wish : wishes)
            wanted += 2 * wish.quantity * (wish.extent + rules().kerf).count();
        for (const store::StockPiece& piece : pieces_)
            if (piece.kind == PieceKind::Sleeve) there += piece.extent.count();
        for (; there < wanted; there += sleeve.count())
            pieces_.push_back(made(PieceKind::Sleeve, sleeve, today));
    }

    store::StockPiece made(PieceKind kind, Extent extent, Date today) {
        const std::int64_t number = ++made_;
        return {.id = store::PieceId{-number},
                .code = "+" + std::to_string(number),
                .belt = belt_.belt.id,
                .kind = kind,
                .extent = extent,
                .reserved = Extent::none(extent.unit()),
                .cost = Money::minor(0),
                .parent = std::nullopt,
                .place = "",
                .received = today,
                .made = std::nullopt,
                .batch = ""};
    }

    Outlook outlookFor(const std::vector<Wish>& wishes, Date today, const Past& past) const {
        std::vector<cutting::Line> lines;
        std::vector<Extent> asked;
        for (const Wish& wish : wishes) {
            lines.push_back({std::to_string(lines.size() + 1), wish.extent, wish.quantity});
            asked.push_back(wish.extent);
        }
        const std::vector<Offer> offers = offersOf(pieces_, Promises::none(), rules(), asked);
        std::vector<store::StockPiece> offered;
        std::map<Extent, int> shelf;
        for (const Offer& offer : offers)
            offered.push_back(offer.piece);
        for (const store::StockPiece& piece : pieces_)
            if (piece.kind == PieceKind::Ready) ++shelf[piece.extent];
        return {belt_.belt,
                std::move(offered),
                problemOf(belt_.belt, belt_.settings, offers, std::move(lines)),
                today,
                past,
                shelf};
    }

    const BeltDeeds& belt_;
    const Prices& prices_;
    std::vector<store::StockPiece> pieces_;
    std::int64_t made_ = 0;
    double cost_ = 0;
};

/// One belt's histories. In the belt's unit.
class BeltReplay {
public:
    BeltReplay(const BeltDeeds& belt, const std::function<void()>& breathe)
        : belt_{belt}, breathe_{breathe}, prices_{belt}, past_{belt.past} {
        const bool looksAhead = std::any_of(belt.deeds.begin(), belt.deeds.end(), byTable);
        seeds_ = looksAhead ? seeds : 1;
        plain_ = futureOf(past_);
        if (looksAhead) learnTable();
        learned_ = futureOf(past_);
    }

    struct Term {
        const Deed* deed;
        std::vector<double> extra; ///< for each seed
    };
    struct Result {
        std::vector<Term> terms;
        std::int64_t left = 0;
        double asDone = 0, asSuggested = 0; ///< means over the seeds
    };

    Result play() {
        Result result;
        const std::size_t n = belt_.deeds.size();
        std::vector<double> done(n + 1, 0); // from each order on
        for (std::size_t k = n; k-- > 0;)
            done[k] = done[k + 1] + costOf(belt_.deeds[k]);
        std::vector<double> rest(static_cast<std::size_t>(seeds_),
                                 0); // of the history that follows from k on
        std::size_t next = n;        // the override after k, or the end: until then all was followed
        for (std::size_t k = n; k-- > 0;) {
            const Deed& deed = belt_.deeds[k];
            if (!deed.advice.overridden) continue;
            std::vector<double> followed;
            for (int seed = 0; seed < seeds_; ++seed)
                if (const auto cost = playFrom(k, seed)) followed.push_back(*cost);
            if (static_cast<int>(followed.size()) < seeds_) {
                ++result.left;
                continue;
            }
            Term term{&deed, {}};
            for (std::size_t seed = 0; seed < followed.size(); ++seed) {
                const double otherwise = done[k] - done[next] + rest[seed];
                term.extra.push_back(otherwise - followed[seed]);
                rest[seed] = followed[seed];
            }
            remember(k, followed);
            next = k;
            result.terms.push_back(std::move(term));
        }
        result.asDone = done[0];
        result.asSuggested = done[0] - done[next] +
                             std::accumulate(rest.begin(), rest.end(), 0.0) / static_cast<double>(seeds_);
        return result;
    }

private:
    static bool byTable(const Deed& deed) { return deed.advice.basis == store::AdviceBasis::LookAhead; }

    void learnTable() {
        const Lesson lesson{belt_.belt.id, past_, belt_.deeds.front().advice.at};
        past_.worth = learn(lesson, [this](double) {
            breathe_();
            return true;
        });
    }

    double costOf(const Deed& deed) const {
        double cost = 0;
        for (const Deed::Mounting& mounting : deed.mountings)
            cost += prices_.ofPiece(mounting.before,
                                    mounting.opensSleeve ? PieceKind::Sleeve : PieceKind::Remnant) -
                    prices_.ofPiece(mounting.left, PieceKind::Remnant) + prices_.mounting();
        for (const Extent belt : deed.fromShelf)
            cost += prices_.ofReady(belt);
        for (const Extent belt : deed.forShelf)
            cost -= prices_.ofReady(belt);
        return cost;
    }

    /// Follows the suggestion for order k, and from there on.
    std::optional<double> playFrom(std::size_t k, int seed) const {
        World world{belt_, prices_, belt_.deeds[k].rack};
        if (!world.follow(belt_.deeds[k])) return std::nullopt;
        Past past = past_;
        past.setting.seed += static_cast<std::uint64_t>(seed) * 1'000'003;
        std::optional<Future> learned = learned_, plain = plain_;
        for (std::size_t j = 0; j < belt_.deeds.size(); ++j) {
            const Deed& deed = belt_.deeds[j];
            takeIn(deed, past, learned, plain);
            if (j <= k) continue;
            if (const auto known = known_.find(j);
                known != known_.end() && known->second.rack == world.contents())
                return world.cost() + known->second.rest[static_cast<std::size_t>(seed)];
            breathe_();
            const auto& future = byTable(deed) ? learned : plain;
            world.decide(deed, past, future ? &*future : nullptr);
        }
        return world.cost();
    }

    void takeIn(const Deed& deed, Past& past, std::optional<Future>& learned,
                std::optional<Future>& plain) const {
        foresight::Order order{past_.today + daysBetween(belt_.deeds.front().advice.at, deed.advice.at),
                               linesOf(deed)};
        past.today = order.day;
        past.orders.push_back(order);
        order.day -= past.orders.front().day; // the rate is of the time that is looked at
        const foresight::Order some = possible(order, past.setting);
        if (some.lines.empty()) return;
        if (learned) learned->outlook.learn(some);
        if (plain) plain->outlook.learn(some);
    }

    /// A history that comes to the rack that was really there before a later override goes on as the one that
    /// follows from there.
    void remember(std::size_t k, const std::vector<double>& rest) {
        known_.insert_or_assign(k, Known{World::contentsOf(belt_.deeds[k].rack), rest});
    }

    struct Known {
        std::multimap<PieceKind, Extent> rack;
        std::vector<double> rest;
    };
    const BeltDeeds& belt_;
    const std::function<void()>& breathe_;
    Prices prices_;
    Past past_;
    int seeds_ = 1;
    std::optional<Future> learned_, plain_;
    std::map<std::size_t, Known> known_;
};

/// Sums the overrides of one group, in mm and in minor units.
class Sum {
public:
    void add(const BeltReplay::Term& term, double millimetres, double money) {
        const auto n = static_cast<double>(term.extra.size());
        const double mean = std::accumulate(term.extra.begin(), term.extra.end(), 0.0) / n;
        double dice = 0;
        for (const double extra : term.extra)
            dice += (extra - mean) * (extra - mean) / std::max(1.0, n - 1) / n;
        ++row_.overridden;
        width_.add(mean * millimetres, dice * millimetres * millimetres);
        money_.add(mean * money, dice * money * money);
    }
    BothWaysRow finish(const std::string& name) const {
        BothWaysRow row = row_;
        row.name = name;
        const auto n = static_cast<double>(row.overridden);
        row.width = width_.sum;
        row.widthDoubt = width_.doubt(n);
        row.money = money_.sum;
        row.moneyDoubt = money_.doubt(n);
        return row;
    }

private:
    struct Figure {
        double sum = 0, squares = 0, dice = 0;
        void add(double mean, double variance) {
            sum += mean;
            squares += mean * mean;
            dice += variance;
        }
        /// How much like decisions differ, and the dice. One decision tells nothing of the first: it may be
        /// all chance.
        double doubt(double n) const {
            if (n < 1) return 0;
            if (n < 2) return std::max(std::abs(sum), 1.96 * std::sqrt(dice));
            const double variance = std::max(0.0, (squares - sum * sum / n) / (n - 1));
            return 1.96 * std::sqrt(n * variance + dice);
        }
    };
    BothWaysRow row_;
    Figure width_, money_;
};

std::vector<BothWaysRow> rowsOf(const std::map<std::string, Sum>& sums) {
    std::vector<BothWaysRow> rows;
    for (const auto& [name, sum] : sums)
        rows.push_back(sum.finish(name));
    std::stable_sort(rows.begin(), rows.end(), [](const BothWaysRow& a, const BothWaysRow& b) {
        return a.money != b.money ? a.money > b.money : a.width > b.width;
    });
    return rows;
}

/// Minor units for one unit of width.
double priceOf(const store::StockedBelt& belt) {
    if (belt.newSleeve.isNone()) return 0;
    return static_cast<double>(belt.sleeveCost.inMinor()) / static_cast<double>(belt.newSleeve.count());
}

BothWays summed(const std::vector<BeltDeeds>& belts, const std::vector<BeltReplay::Result>& results,
                const std::function<std::string(store::PersonId)>& initials) {
    BothWays both;
    Sum all;
    std::map<std::string, Sum> people, reasons, byBelt;
    for (std::size_t i = 0; i < belts.size(); ++i) {
        const double millimetres = belts[i].millimetres, money = priceOf(belts[i].belt);
        for (const auto& term : results[i].terms) {
            const store::Advice& advice = term.deed->advice;
            const std::string reason = advice.overrideKey ? wordFor(*advice.overrideKey) : "";
            for (Sum* sum : {&all, &people[initials(advice.person)], &reasons[reason],
                             &byBelt[belts[i].belt.designation]})
                sum->add(term, millimetres, money);
        }
        both.left += results[i].left;
        both.asDone += results[i].asDone * millimetres;
        both.asSuggested += results[i].asSuggested * millimetres;
    }
    both.all = all.finish("");
    both.people = rowsOf(people);
    both.reasons = rowsOf(reasons);
    both.belts = rowsOf(byBelt);
    return both;
}

} // namespace

bool BothWaysRow::told() const { return std::abs(width) > widthDoubt; }

BothWays bothWays(const std::vector<BeltDeeds>& belts,
                  const std::function<std::string(store::PersonId)>& initials, const foresight::Work& work) {
    std::mutex guard;
    const auto stopped = [&guard, &work] {
        const std::lock_guard lock{guard};
        return work.stopped && work.stopped();
    };
    const std::function<void()> breathe = [&stopped] {
        if (stopped()) throw foresight::Stopped{};
    };
    const foresight::Work guarded{[&guard, &work](double done) {
                                      const std::lock_guard lock{guard};
                                      if (work.told) work.told(done);
                                  },
                                  stopped};
    std::vector<BeltReplay::Result> results(belts.size());
    foresight::onAllCores(
        belts.size(),
        [&](std::size_t i) {
            if (belts[i].past.setting.fault().empty())
                results[i] = BeltReplay{belts[i], breathe}.play();
            else
                results[i].left = std::count_if(belts[i].deeds.begin(), belts[i].deeds.end(),
                                                [](const Deed& deed) { return deed.advice.overridden; });
        },
        guarded);
    return summed(belts, results, initials);
}

BothWays bothWays(const Shop& shop, const Period& period, const foresight::Work& work) {
    const ReportNames names{shop};
    return bothWays(
        deedsOf(shop, period), [&names](store::PersonId person) { return names.person(person); }, work);
}

} // namespace riband::shop
