#pragma once

#include "core/foresight/outlook.h"
#include "core/foresight/price_rule.h"

namespace riband::foresight {

/// Tries each way to serve an order on the same futures, drawn from the outlook and served by the price rule,
/// and takes the one that is cheapest on average. Ways that fall clearly behind are dropped early, so that
/// the futures go where the choice is close.
class LookAhead {
public:
    struct Knobs {
        int horizon = 7;    ///< orders of a future
        int first = 64;     ///< futures of the first heat; each heat doubles them
        int most = 512;     ///< futures in all
        int budget = 11000; ///< plain orders served in all, about; dearer ones count more
        /// How much of interest and holding counts. Measured: with all of it all costs are 0.1 % less, but
        /// 0.9 of the gap is not closed.
        double interestWeight = 0.75;
    };
    LookAhead(const Setting& setting, Knobs knobs);

    /// Mean extra cost of each way over the best, on the futures that both met.
    struct Verdict {
        std::size_t best = 0;
        std::vector<double> cost;
        int futures = 0;
    };
    Verdict judge(const WorthTable& table, const Outlook& outlook, const Stock& stock, const Asked& asked,
                  const std::vector<Way>& ways, std::uint64_t seed);

private:
    double follow(const WorthTable& table, Stock stock, int future);
    double ending(const WorthTable& table, const Stock& stock) const;
    void drawFutures(const Outlook& outlook, std::uint64_t seed, int pieces, int upTo);

    Setting setting_;
    Knobs knobs_;
    PriceRule rule_;
    Way way_;
    struct Future {
        std::vector<Asked> orders;
        double work = 0; ///< to follow it for one way, told in plain orders on a rack of ten
    };
    std::vector<Future> futures_;
    double anOrder_ = 1; ///< work of a plain one, by what the shelf asks for
    double perOrderInterest_ = 0, perOrderHolding_ = 0, usedPerOrder_ = 1;
};

} // namespace riband::foresight
