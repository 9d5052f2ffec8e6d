#pragma once

#include "core/foresight/outlook.h"
#include "core/foresight/price_rule.h"

namespace riband::foresight {

/// Makes the worth table from the outlook, in slices, so that nobody waits for it.
///
/// An extra piece of width r meets the stream of orders. Order i could otherwise be served at C_i, or its
/// part j left over at C_i[j]; taking the other part from the piece gains the difference. So
///   δ V(r) = -holding/λ + mean over i of ( best part: gain - mounting + G(r - trim - part) - V(r) )+
///            - mean over i of min(V(r), worth of what the full rack made go)   (tight racks only)
/// where the gains are found by playing the orders of the outlook by the price rule under the present V, a
/// random piece taken out of the rack. Right side: convex and falling in V, so Newton from below is exact in
/// a few steps. δ = interest/λ + competition, which grows with the remnants that the rack held in the last
/// rounds.
class Fit {
public:
    static constexpr int firstRounds = 6; ///< before a table is of use
    struct Knobs {
        int steps = 3000; ///< orders played in a round
        int samplesEvery = 3;
        double competitionOfOne = 0.0007; ///< share of its worth that a remnant loses by each other one
        double blend = 0.3;               ///< least of the new curve with the old
        double interestWeight = 1; ///< how much of interest and holding the planning takes into account
    };
    Fit(const Setting& setting, Knobs knobs, Dice dice);

    /// The shelf grows with what was asked for: a listed width that nobody wants must not fill it. To be told
    /// of every order before it is answered.
    void setTargets(const Outlook& outlook);
    /// Works off about `units` (one: a plain order played, dearer ones count more). True when a round was
    /// ended, `table()` being new then.
    bool advance(const Outlook& outlook, int units);
    /// Whole rounds at once.
    void run(const Outlook& outlook, int rounds);

    const WorthTable& table() const { return table_; }
    int rounds() const { return rounds_; }
    /// Of the equation as last solved, before blending: the worth of a cell, and how far its two sides are
    /// apart.
    double solved(int cell) const { return fresh_[static_cast<std::size_t>(cell)]; }
    double residual(int cell) const;

private:
    struct Option {
        Size need; ///< least width that gives this part
        Size use;  ///< trim and belts
        float gain;
    };
    void startRound(const Outlook& outlook);
    double playOne(const Outlook& outlook); ///< units spent
    double sample(const Outlook& outlook);
    void sampleReady(std::span<const float> costs, const Asked& asked);
    double solveCell();
    float bestUse(std::size_t sample, Size width) const;
    void endRound(const Outlook& outlook);
    void solveReady(const Outlook& outlook);
    double blend() const;
    double costOfOne(std::size_t l);

    Setting setting_;
    Knobs knobs_;
    Dice dice_;
    WorthTable table_;
    PriceRule rule_;
    Stock stock_;
    int step_ = 0, cell_ = -1, rounds_ = 0;
    bool started_ = false;
    double perOrderInterest_ = 0, perOrderHolding_ = 0;
    std::vector<Option> options_;
    std::vector<std::size_t> ends_; ///< options of sample i end here
    std::vector<float> dropped_;    ///< worth of what the full rack made go, at the orders sampled
    std::vector<float> best_;
    std::vector<float> fresh_;      ///< the curve being solved
    std::vector<double> shelfGain_; ///< G - V of each rest, summed over the shelves met
    double rests_ = 0;
    double rackSum_ = 0, remnantsMet_ = 5;
    std::array<double, mostReady> oneCost_{};
    double competition_ = 0; ///< share of its worth that a remnant loses an order to the others
    std::array<double, mostReady> readyCost_{}; ///< of serving one belt from the rack, summed
    std::array<double, mostReady> readySamples_{};
    std::vector<Line> lines_;
    Way way_;
};

} // namespace riband::foresight
