#include "core/foresight/fit.h"

namespace riband::foresight {

namespace {

constexpr int newtonSteps = 8;
constexpr double optionsAUnit = 150;        // looked at while a plain order is played
constexpr double withShelf = 2;             // plain orders that one is worth which a shelf may serve
constexpr double leastCompetition = 0.0005; // of an empty rack
constexpr double blendOfRack = 0.5;         // of the remnants met in a round

} // namespace

Fit::Fit(const Setting& setting, Knobs knobs, Dice dice)
    : setting_{setting}, knobs_{knobs}, dice_{dice}, table_{setting}, rule_{setting},
      fresh_(table_.piece.size()), shelfGain_(table_.piece.size()) {
    for (std::size_t l = 0; l < std::min<std::size_t>(setting.listed.size(), mostReady); ++l) {
        for (int n = 1; n <= shelfLimit; ++n)
            table_.ready[l][static_cast<std::size_t>(n)] =
                static_cast<float>(n) * static_cast<float>(setting.listed[l]);
        table_.target[l] = setting.shelf == Shelf::None ? 0 : setting.shelfRoom;
    }
}

void Fit::run(const Outlook& outlook, int rounds) {
    for (int i = 0; i < rounds; ++i)
        while (!advance(outlook, 1000000)) {
        }
}

bool Fit::advance(const Outlook& outlook, int units) {
    setTargets(outlook);
    if (!started_) startRound(outlook);
    for (double left = units; left > 0;) {
        if (step_ < knobs_.steps) {
            left -= playOne(outlook);
            ++step_;
            continue;
        }
        left -= solveCell();
        if (cell_ <= table_.grid.cells()) continue;
        endRound(outlook);
        return true;
    }
    return false;
}

void Fit::setTargets(const Outlook& outlook) {
    if (setting_.shelf == Shelf::None || outlook.learned() == 0) return;
    for (std::size_t l = 0; l < std::min<std::size_t>(setting_.listed.size(), mostReady); ++l) {
        const int target = std::min(setting_.shelfRoom, 2 * outlook.timesSeen(setting_.listed[l]));
        if (target == table_.target[l]) continue;
        table_.target[l] = target;
        ++table_.version;
    }
}

void Fit::startRound(const Outlook& outlook) {
    started_ = true;
    step_ = 0;
    cell_ = 0;
    options_.clear();
    ends_.clear();
    dropped_.clear();
    std::fill(shelfGain_.begin(), shelfGain_.end(), 0.0);
    rests_ = 0;
    rackSum_ = 0;
    readyCost_ = {};
    readySamples_ = {};
    perOrderInterest_ = knobs_.interestWeight * setting_.interest / outlook.ordersPerYear();
    perOrderHolding_ = knobs_.interestWeight * setting_.holdingCost / outlook.ordersPerYear();
    competition_ = std::max(leastCompetition, knobs_.competitionOfOne * remnantsMet_);
}

double Fit::playOne(const Outlook& outlook) {
    const bool sampled = step_ % knobs_.samplesEvery == 0;
    double units = sampled ? sample(outlook) : 0;
    Worth dropped = 0;
    outlook.draw(dice_, lines_);
    for (const auto& asked : weighable(setting_, lines_)) {
        units += asked.effort(stock_.count);
        rule_.choose(table_, stock_, asked, way_);
        const auto done = rule_.apply(table_, stock_, asked, way_);
        dropped += done.dropped;
        if (setting_.shelf != Shelf::None && done.mountings > 0) {
            const float* rest = rule_.fill().worth();
            for (std::size_t i = 0; i < shelfGain_.size(); ++i)
                shelfGain_[i] += rest[i] - table_.piece[i];
            ++rests_;
        }
    }
    if (sampled && dropped > 0 && setting_.hasTightRack()) dropped_.push_back(static_cast<float>(dropped));
    rackSum_ += stock_.count;
    return table_.wantsReady() ? withShelf * units : units;
}

double Fit::sample(const Outlook& outlook) {
    Stock without = stock_;
    if (without.count > 0) without.remove(dice_.below(without.count));
    outlook.draw(dice_, lines_);
    const auto all = weighable(setting_, lines_);
    const auto& asked = all.front();
    int whole = asked.parts() - 1;
    for (std::size_t i = 0; i < asked.items().size(); ++i) {
        const auto& item = asked.items()[i];
        const int there = item.listed < 0 ? 0 : without.ready[static_cast<std::size_t>(item.listed)];
        whole -= std::min(there, item.quantity) * asked.stride(static_cast<int>(i));
    }
    const auto costs = rule_.costs(table_, without, asked, whole);
    if (setting_.shelf != Shelf::None) sampleReady(costs, asked);
    const auto add = [&](int part) {
        const Size use = setting_.rules.trim + asked.size(part);
        const Size need = use + setting_.rules.reserve(asked.widest(part));
        if (need <= setting_.sleeve)
            options_.push_back({need, use,
                                costs[static_cast<std::size_t>(whole)] -
                                    costs[static_cast<std::size_t>(whole - part)] - table_.mounting});
    };
    if (asked.isSingle()) {
        for (int part = 1; part <= whole; ++part)
            add(part);
    } else {
        for (const auto& pair : asked.pairs())
            if (pair.whole == whole) add(pair.part);
    }
    ends_.push_back(options_.size());
    return asked.effort(without.count);
}

void Fit::sampleReady(std::span<const float> costs, const Asked& asked) {
    if (!asked.isSingle() || asked.items()[0].listed < 0) return;
    const auto l = static_cast<std::size_t>(asked.items()[0].listed);
    readyCost_[l] += costs[1];
    ++readySamples_[l];
}

/// The most that a piece of this width gains from a sampled order, what is then left of it included.
float Fit::bestUse(std::size_t sample, Size width) const {
    float most = 0;
    for (std::size_t option = sample == 0 ? 0 : ends_[sample - 1]; option < ends_[sample]; ++option) {
        const auto& each = options_[option];
        if (each.need > width) continue;
        const auto rest = static_cast<std::size_t>(table_.grid.at(width - each.use));
        float after = fresh_[rest];
        if (rests_ > 0) after += static_cast<float>(shelfGain_[rest] / rests_);
        most = std::max(most, each.gain + after);
    }
    return most;
}

double Fit::residual(int cell) const {
    const double worth = solved(cell);
    double over = 0;
    for (std::size_t sample = 0; sample < ends_.size(); ++sample)
        over += std::max(0.0, bestUse(sample, cell * table_.grid.cell()) - worth);
    for (const float each : dropped_)
        over -= std::min<double>(each, worth);
    return over / static_cast<double>(ends_.size()) - perOrderHolding_ -
           (perOrderInterest_ + competition_) * worth;
}

double Fit::solveCell() {
    const auto r = static_cast<std::size_t>(cell_++);
    const Size width = static_cast<Size>(r) * table_.grid.cell();
    fresh_[r] = 0;
    if (r == 0 || width < setting_.leastUseful() || ends_.empty()) return 1;
    best_.clear();
    for (std::size_t sample = 0; sample < ends_.size(); ++sample)
        if (const float most = bestUse(sample, width); most > 0) best_.push_back(most);
    const double samples = static_cast<double>(ends_.size());
    const double delta = perOrderInterest_ + competition_;
    double worth = fresh_[r - 1];
    for (int i = 0; i < newtonSteps; ++i) {
        double over = 0;
        int count = 0;
        for (const float each : best_)
            if (each > worth) {
                over += each - worth;
                ++count;
            }
        for (const float each : dropped_) {
            over -= std::min<double>(each, worth);
            count += each > worth ? 1 : 0;
        }
        const double error = over / samples - perOrderHolding_ - delta * worth;
        if (error <= 1e-3) break;
        worth += error / (count / samples + delta);
    }
    fresh_[r] = static_cast<float>(std::min(worth, static_cast<double>(width)));
    return 1 + static_cast<double>(options_.size()) / optionsAUnit;
}

void Fit::endRound(const Outlook& outlook) {
    const auto share = static_cast<float>(blend());
    for (std::size_t i = 0; i < fresh_.size(); ++i)
        table_.piece[i] += share * (fresh_[i] - table_.piece[i]);
    remnantsMet_ += blendOfRack * (rackSum_ / knobs_.steps - remnantsMet_);
    if (setting_.shelf != Shelf::None) solveReady(outlook);
    ++rounds_;
    ++table_.version;
    started_ = false;
}

/// How much of a new round counts. Table and rack answer each other: where rests are kept the rack gets rich,
/// on a rich rack rests are worth less, so they are cut for the shelf, and the rack gets poor. With half of
/// each new round this went to and fro for ever. The first rounds start from nothing and are soon forgotten.
double Fit::blend() const { return std::max(knobs_.blend, 2.0 / (2 + rounds_)); }

/// Of serving one belt of a listed width from the rack, over the rounds so far.
double Fit::costOfOne(std::size_t l) {
    const double now = readySamples_[l] > 5
                           ? readyCost_[l] / readySamples_[l]
                           : setting_.listed[l] * 1.02 + setting_.rules.trim + setting_.rules.mountingCost;
    oneCost_[l] += blend() * (now - oneCost_[l]);
    return oneCost_[l];
}

/// Worth of the n-th ready belt of a width: orders of q belts of it come with probability p_q. If q >= n it
/// goes, and saves the difference between serving q - n + 1 and q - n from the rack; else it moves up by q.
void Fit::solveReady(const Outlook& outlook) {
    const double interest = perOrderInterest_;
    for (std::size_t l = 0; l < std::min<std::size_t>(setting_.listed.size(), mostReady); ++l) {
        const Size width = setting_.listed[l];
        double share = 0;
        for (const auto& each : outlook.widths())
            if (each.width == width) share = each.share;
        const double one = costOfOne(l);
        const double more = width + setting_.rules.kerf; // a belt more in the same mounting
        std::array<double, shelfLimit + 1> worth{};
        for (int n = 1; n <= shelfLimit; ++n) {
            double gain = 0, moved = 0, met = 0;
            for (int q = 1; q <= 40; ++q) {
                const double p = share * outlook.shareOfQuantity(q);
                met += p;
                if (q > n)
                    gain += p * more;
                else if (q == n)
                    gain += p * std::max(one, more);
                else
                    moved += p * worth[static_cast<std::size_t>(n - q)];
            }
            worth[static_cast<std::size_t>(n)] =
                std::max(0.0, (gain + moved - perOrderHolding_) / (met + interest + 1e-9));
        }
        double sum = 0, last = 1e18;
        for (int n = 1; n <= shelfLimit; ++n) {
            last = std::min(last, worth[static_cast<std::size_t>(n)]);
            table_.ready[l][static_cast<std::size_t>(n)] = static_cast<float>(sum += last);
        }
    }
}

} // namespace riband::foresight
