#include "core/cutting/planner/small.h"

#include <algorithm>

namespace riband::cutting::planner {

namespace {

constexpr std::int64_t mostStates = 100'000;
constexpr std::int64_t mostTransitions = 1'000'000'000;

/// What has been served is one number: the counts of the items are its digits, item i in base demand + 1.
struct Digits {
    explicit Digits(const Model& model) {
        for (const Item& item : model.items) {
            weights.push_back(states);
            states *= item.demand + 1;
            transitions *= (item.demand + 1) * (item.demand + 2) / 2;
            if (states > mostStates || transitions > mostTransitions) return;
        }
        fits = true;
    }
    Counts counts(const Model& model, std::int64_t state) const {
        Counts digits;
        for (const Item& item : model.items) {
            digits.push_back(state % (item.demand + 1));
            state /= item.demand + 1;
        }
        return digits;
    }
    std::vector<std::int64_t> weights;
    std::int64_t states = 1;
    std::int64_t transitions = 1; ///< pairs of a state and a pattern that still fits the demand
    bool fits = false;
};

/// Belts that could be cut in one mounting.
struct Pattern {
    Counts counts;
    std::int64_t gross = 0, reserve = 0;
};

class Table {
public:
    Table(const Model& model, const Digits& digits, Stopper& stopper)
        : model_{model}, digits_{digits}, stopper_{stopper} {
        for (std::int64_t state = 0; state < digits.states; ++state)
            all_.push_back(digits.counts(model, state));
        for (std::int64_t pattern = 1; pattern < digits.states; ++pattern)
            patterns_.push_back(patternOf(pattern));
    }

    std::optional<Loads> solve() {
        best_.assign(all_.size(), Score{.unserved = -1}); // not reached
        best_[0] = Score{};
        for (std::size_t kind = 0; kind < model_.kinds.size(); ++kind)
            offerAll(kind);
        if (stopper_.stopped()) return std::nullopt;
        return trace(widest());
    }

private:
    Pattern patternOf(std::int64_t state) const {
        Pattern pattern{all_[static_cast<std::size_t>(state)]};
        for (std::size_t i = 0; i < pattern.counts.size(); ++i) {
            pattern.gross += pattern.counts[i] * model_.items[i].gross;
            if (pattern.counts[i] > 0) pattern.reserve = model_.items[i].reserve;
        }
        return pattern;
    }

    /// Calls `visit` with every state from which the pattern is still wanted: its digits run up to what the
    /// pattern leaves of the demand.
    template <class Visit>
    void fromEach(const Counts& pattern, Visit visit) const {
        Counts digits(pattern.size(), 0);
        std::int64_t state = 0;
        for (std::size_t i = 0; i < digits.size();) {
            if (i == 0) visit(static_cast<std::size_t>(state));
            if (digits[i] < model_.items[i].demand - pattern[i]) {
                ++digits[i];
                state += digits_.weights[i];
                i = 0;
            } else {
                state -= digits[i] * digits_.weights[i];
                digits[i++] = 0;
            }
        }
    }

    /// More pieces of a kind than belts are never of use.
    void offerAll(std::size_t kind) {
        const auto belts = static_cast<std::size_t>(model_.beltsAsked());
        const std::size_t pieces = std::min(model_.kinds[kind].pieces.size(), belts);
        for (std::size_t n = 0; n < pieces; ++n)
            offer(kind, model_.kinds[kind].pieces[n]);
    }

    void offer(std::size_t kindIndex, std::size_t piece) {
        const Kind& kind = model_.kinds[kindIndex];
        std::vector<Score> now = best_;
        Stage stage{kindIndex, std::vector<std::int32_t>(all_.size(), 0)};
        for (std::size_t p = 0; p < patterns_.size() && !stopper_.stopped(); ++p) {
            const Pattern& pattern = patterns_[p];
            const std::int64_t left = kind.extent - model_.trim - pattern.gross;
            if (left < pattern.reserve) continue;
            const Score cost{0,
                             model_.spent(kind, left),
                             kind.sleeve,
                             1,
                             model_.problem.pieces[piece].born.time_since_epoch().count(),
                             model_.codeRank[piece]};
            std::int64_t work = 0;
            fromEach(pattern.counts, [&](std::size_t from) {
                relax(now, stage, from, p + 1, cost);
                ++work;
            });
            stopper_.now(work);
        }
        best_ = std::move(now);
        stages_.push_back(std::move(stage));
    }

    struct Stage {
        std::size_t kind;
        std::vector<std::int32_t> chosen; ///< pattern (state number) by which each state was reached, or 0
    };

    void relax(std::vector<Score>& now, Stage& stage, std::size_t from, std::size_t pattern,
               const Score& cost) const {
        const Score& start = best_[from];
        if (start.unserved < 0) return;
        Score& there = now[from + pattern];
        if (there.unserved >= 0 && there.spent < start.spent + cost.spent) return; // the usual case
        const Score sum{0,
                        start.spent + cost.spent,
                        start.sleeves + cost.sleeves,
                        start.mountings + cost.mountings,
                        start.ages + cost.ages,
                        start.codes + cost.codes};
        if (there.unserved >= 0 && there <= sum) return;
        there = sum;
        stage.chosen[from + pattern] = static_cast<std::int32_t>(pattern);
    }

    std::size_t widest() const {
        std::size_t found = 0;
        std::pair<std::int64_t, Score> least{-1, {}};
        for (std::size_t state = 0; state < all_.size(); ++state) {
            if (best_[state].unserved < 0) continue;
            std::int64_t unserved = model_.widthAsked();
            for (std::size_t i = 0; i < model_.items.size(); ++i)
                unserved -= all_[state][i] * model_.items[i].width;
            if (least.first >= 0 && std::pair{unserved, best_[state]} >= least) continue;
            least = {unserved, best_[state]};
            found = state;
        }
        return found;
    }

    Loads trace(std::size_t state) const {
        Loads loads;
        for (std::size_t s = stages_.size(); s-- > 0;) {
            const auto pattern = static_cast<std::size_t>(stages_[s].chosen[state]);
            if (pattern == 0) continue;
            loads.push_back(loadOf(model_, stages_[s].kind, patterns_[pattern - 1].counts));
            state -= pattern;
        }
        std::reverse(loads.begin(), loads.end());
        return loads;
    }

    const Model& model_;
    const Digits& digits_;
    Stopper& stopper_;
    std::vector<Counts> all_;
    std::vector<Pattern> patterns_;
    std::vector<Score> best_;
    std::vector<Stage> stages_;
};

} // namespace

std::int64_t stepsOfSmall(const Model& model) {
    const Digits digits{model};
    if (!digits.fits) return unlimited;
    std::int64_t pieces = 0;
    for (const Kind& kind : model.kinds)
        pieces += std::min(static_cast<std::int64_t>(kind.pieces.size()), model.beltsAsked());
    return std::max(digits.transitions * pieces, digits.states * pieces);
}

std::optional<Loads> small(const Model& model, Stopper& stopper) {
    const Digits digits{model};
    return Table{model, digits, stopper}.solve();
}

} // namespace riband::cutting::planner
