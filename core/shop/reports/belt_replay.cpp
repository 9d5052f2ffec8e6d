#include "core/shop/reports/belt_replay.h"

#include "core/shop/once.h"

#include <algorithm>
#include <numeric>

namespace riband::shop {

namespace {

using cutting::PieceKind;

constexpr int seeds = 3; ///< of look-ahead's dice

double daysBetween(Moment from, Moment until) {
    return std::chrono::duration<double, std::ratio<86400>>(until - from).count();
}

bool byTable(const Deed& deed) { return deed.advice.basis == store::AdviceBasis::LookAhead; }

} // namespace

BeltReplay::BeltReplay(const BeltDeeds& belt, const std::function<void()>& breathe)
    : belt_{belt}, breathe_{breathe}, prices_{belt}, past_{belt.past} {
    const bool looksAhead = std::any_of(belt.deeds.begin(), belt.deeds.end(), byTable);
    seeds_ = looksAhead ? seeds : 1;
    plain_ = futureOf(past_);
    if (looksAhead) learnTable();
    learned_ = futureOf(past_);
}

BeltReplay::Result BeltReplay::play() {
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
        if (!departs(deed.advice)) continue;
        std::vector<double> followed;
        for (int seed = 0; seed < seeds_; ++seed)
            if (const auto cost = playFrom(k, seed)) followed.push_back(*cost);
        if (static_cast<int>(followed.size()) < seeds_) {
            ++result.left;
            continue;
        }
        Term term{.deed = &deed, .extra = {}};
        for (std::size_t seed = 0; seed < followed.size(); ++seed) {
            const double otherwise = done[k] - done[next] + rest[seed];
            term.extra.push_back(otherwise - followed[seed]);
            term.asDone += otherwise / seeds_;
            term.asSuggested += followed[seed] / seeds_;
            rest[seed] = followed[seed];
        }
        remember(k, followed);
        next = k;
        result.terms.push_back(std::move(term));
    }
    result.asDone = done[0];
    result.asSuggested =
        done[0] - done[next] + std::accumulate(rest.begin(), rest.end(), 0.0) / static_cast<double>(seeds_);
    return result;
}

void BeltReplay::learnTable() {
    const Lesson lesson{belt_.belt.id, past_, belt_.deeds.front().advice.at};
    past_.worth = learn(lesson, [this](double) {
        breathe_();
        return true;
    });
}

double BeltReplay::costOf(const Deed& deed) const {
    double cost = 0;
    for (const Deed::Mounting& mounting : deed.mountings)
        cost +=
            prices_.ofPiece(mounting.before, mounting.opensSleeve ? PieceKind::Sleeve : PieceKind::Remnant) -
            prices_.ofPiece(mounting.left, PieceKind::Remnant) + prices_.mounting();
    for (const Extent belt : deed.fromShelf)
        cost += prices_.ofReady(belt);
    for (const Extent belt : deed.forShelf)
        cost -= prices_.ofReady(belt);
    return cost;
}

/// Follows the suggestion for order k, and from there on.
std::optional<double> BeltReplay::playFrom(std::size_t k, int seed) const {
    PlayedRack world{belt_, prices_, belt_.deeds[k].rack};
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

void BeltReplay::takeIn(const Deed& deed, Past& past, std::optional<Future>& learned,
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
void BeltReplay::remember(std::size_t k, const std::vector<double>& rest) {
    known_.insert_or_assign(k, Known{PlayedRack::contentsOf(belt_.deeds[k].rack), rest});
}

} // namespace riband::shop
