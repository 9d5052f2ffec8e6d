#pragma once

#include "core/store/id.h"

#include <cstdint>
#include <map>
#include <vector>

namespace riband::shop::counting {

/// What could have made the book of a piece wrong since it was last proved: cuts, by who made them, and time.
struct Exposure {
    std::map<store::PersonId, std::int64_t> cuts{};
    double years = 0;
};

/// One time that a piece was counted.
struct Proof {
    Exposure exposure; ///< since it was counted before, or came in
    bool wrong;        ///< the book was further off than measuring can tell
};

/// How likely the book of a piece is wrong, learned from past counts. Each cut of a person and each year can
/// bring a mistake, independently: mistakes come as a Poisson process with a rate for each person and one for
/// time, so doubt = 1 - exp(-sum of rate x exposure). Pure.
class Doubt {
public:
    /// The rates by expectation-maximisation for a superposition of Poisson sources of which only "none" or
    /// "some" is seen, with a gamma prior for each rate: one mistake in 100 cuts, one in 20 years (common
    /// practice, no source), as good as 50 cuts and 10 years of experience (docs/counting.md).
    static Doubt learn(const std::vector<Proof>& proofs);
    double of(const Exposure& exposure) const; ///< 0 to 1
    double aCut(store::PersonId person) const; ///< the usual rate of somebody new
    double aYear() const { return year_; }

private:
    double expected(const Exposure& exposure) const;
    std::map<store::PersonId, double> cut_{};
    double year_ = 0;
};

} // namespace riband::shop::counting
