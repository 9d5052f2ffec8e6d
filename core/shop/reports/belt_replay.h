#pragma once

#include "core/shop/reports/played_rack.h"

#include <functional>

namespace riband::shop {

/// One belt's histories: as it was done, and as suggested from each order on that was done otherwise. In the
/// belt's unit.
class BeltReplay {
public:
    BeltReplay(const BeltDeeds& belt, const std::function<void()>& breathe);

    struct Term {
        const Deed* deed;
        std::vector<double> extra; ///< for each seed
        /// What the belt's orders cost from this one on, done so and as suggested there: means over the
        /// seeds.
        double asDone = 0, asSuggested = 0;
    };
    struct Result {
        std::vector<Term> terms;
        std::int64_t left = 0;
        double asDone = 0, asSuggested = 0; ///< means over the seeds
    };
    Result play();

private:
    void learnTable();
    double costOf(const Deed& deed) const;
    std::optional<double> playFrom(std::size_t k, int seed) const;
    void takeIn(const Deed& deed, Past& past, std::optional<Future>& learned,
                std::optional<Future>& plain) const;
    void remember(std::size_t k, const std::vector<double>& rest);

    struct Known {
        PlayedRack::Contents rack;
        std::vector<double> rest;
    };
    const BeltDeeds& belt_;
    const std::function<void()>& breathe_;
    JudgesPrices prices_;
    Past past_;
    int seeds_ = 1;
    std::optional<Future> learned_, plain_;
    std::map<std::size_t, Known> known_;
};

} // namespace riband::shop
