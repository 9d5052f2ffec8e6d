#pragma once

#include "core/belt/identify/apart.h"
#include "core/belt/identify/disagreement.h"
#include "core/belt/identify/next.h"
#include "core/belt/identify/old_width.h"

namespace riband::belt::identify {

/// Whether a new belt of the kind can be cut from a sleeve.
enum class Supply : std::uint8_t {
    FromSleeve,
    DoubleSidedSleeve, ///< from one with teeth on both sides, where the tables know such
    NoSleeve,
    ByTheMetre, ///< open-ended: not cut from a sleeve
};

/// What the belt on the counter may be.
struct Candidate {
    const Profile* profile;
    std::optional<Belt> belt; ///< nothing while nothing that tells a length was measured
    double probability;
    bool listed; ///< in a maker's list; true without a belt
    Supply supply;
    std::optional<OldWidth> width; ///< where a width was measured, or ribs were counted
};

struct Wishes {
    Errors errors{};
    double certain = usuallyCertain; ///< the best candidate is settled from this probability on
    std::size_t most = 20;           ///< candidates told
    /// Common practice, no source: one in ten is as much doubt as may stay before a belt is cut.
    static constexpr double usuallyCertain = .90;
};

/// The answer. Candidates are the likeliest first, until together they have 99 % (`together`), or
/// `Wishes::most`.
struct Identification {
    std::vector<Candidate> candidates;
    double together;
    std::size_t among; ///< so many would make 99 %
    /// Probabilities of the profiles alone, likeliest first, down to 1 %.
    std::vector<std::pair<const Profile*, double>> profiles;
    bool lengthAsked; ///< candidates are belts, not profiles only
    bool profileSettled;
    bool settled;
    std::optional<Next> next; ///< nothing if settled, contradictory, or if no measurement would tell more
    /// What sets the two likeliest profiles apart, where both have 5 % or more.
    std::optional<Apart> apart;
    std::vector<Disagreement> disagreements;
    bool contradictory() const { return !disagreements.empty(); }
};

/// The profiles that the answer points to are those of `prior`, which must outlive it. Throws
/// std::invalid_argument for a sample with a fault (faultOf).
Identification identify(const Sample& sample, const Prior& prior, const Wishes& wishes = {});

/// Whether a sleeve gives this profile.
Supply supplyOf(const Profile& profile, bool openEnded, const Tables& tables);

} // namespace riband::belt::identify
