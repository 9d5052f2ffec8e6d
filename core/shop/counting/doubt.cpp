// A count shows only whether at least one mistake happened since the one before. With rates r and exposures x
// the number of mistakes of source s, given that there was one at least, is r x / (1 - exp(-sum r x)) on
// average, and none otherwise (E step); the rate is then mistakes over exposure, with the prior's own
// mistakes and exposure added (M step). Each step raises the posterior, so the rates settle.
#include "core/shop/counting/doubt.h"

#include <cmath>

namespace riband::shop::counting {

namespace {

struct Prior {
    double mistakes, exposure;
    double rate() const { return mistakes / exposure; }
};
constexpr Prior cutPrior{0.5, 50}, yearPrior{0.5, 10};
constexpr int steps = 200;

struct Sums {
    double mistakes, exposure;
};

} // namespace

double Doubt::aCut(store::PersonId person) const {
    const auto known = cut_.find(person);
    return known == cut_.end() ? cutPrior.rate() : known->second;
}

double Doubt::expected(const Exposure& exposure) const {
    double sum = year_ * exposure.years;
    for (const auto& [person, cuts] : exposure.cuts)
        sum += aCut(person) * static_cast<double>(cuts);
    return sum;
}

double Doubt::of(const Exposure& exposure) const { return -std::expm1(-expected(exposure)); }

Doubt Doubt::learn(const std::vector<Proof>& proofs) {
    Doubt doubt;
    doubt.year_ = yearPrior.rate();
    for (int i = 0; i < steps && !proofs.empty(); ++i) {
        Sums year{yearPrior.mistakes, yearPrior.exposure};
        std::map<store::PersonId, Sums> cuts;
        for (const Proof& proof : proofs) {
            const double all = doubt.of(proof.exposure);
            const double each = proof.wrong && all > 0 ? 1 / all : 0;
            year.mistakes += each * doubt.year_ * proof.exposure.years;
            year.exposure += proof.exposure.years;
            for (const auto& [person, count] : proof.exposure.cuts) {
                Sums& sums =
                    cuts.try_emplace(person, Sums{cutPrior.mistakes, cutPrior.exposure}).first->second;
                sums.mistakes += each * doubt.aCut(person) * static_cast<double>(count);
                sums.exposure += static_cast<double>(count);
            }
        }
        doubt.year_ = year.mistakes / year.exposure;
        for (const auto& [person, sums] : cuts)
            doubt.cut_[person] = sums.mistakes / sums.exposure;
    }
    return doubt;
}

} // namespace riband::shop::counting
