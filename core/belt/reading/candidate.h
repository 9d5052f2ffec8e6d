#pragma once

#include "core/belt/reading/phrase.h"
#include "core/belt/reading/said_length.h"
#include "core/belt/reading/said_width.h"

namespace riband::belt::reading {

/// Which open number has which role; -1: none.
struct Roles {
    int length = -1, width = -1, quantity = -1;
    friend bool operator==(const Roles&, const Roles&) = default;
};

/// One belt that the phrase may mean, with how likely it is.
struct Candidate {
    explicit Candidate(Reading what) : reading{std::move(what)} {}
    Reading reading;
    Roles roles;
    int score = 0;
    bool plausible = true; ///< width, and length of at least 20 teeth
    bool widthListed = false;
    bool widthByCode = false;
    Basis basis = Basis::Millimetres;
};

/// What one profile makes of a phrase: candidates, or the fault of the likeliest way to read it.
struct Attempt {
    std::vector<Candidate> candidates;
    std::optional<ReadFault> fault;
    int faultScore = -1;
    bool askWhichIsLength = false; ///< even if only one is left: 100 T10 100
};

/// How an attempt is to take the phrase.
struct Style {
    bool letterOnly = false;  ///< J, L ... not PJ
    bool millimetres = false; ///< M for MXL, with the length in millimetres
    bool ribbedToo = false;   ///< the same words may mean a ribbed belt
};

constexpr std::int64_t usualTeeth = 20; ///< shorter belts are not made

Attempt readToothed(const Phrase& phrase, const Profile& profile, const Style& style, const Tables& tables);
Attempt readRibbed(const Phrase& phrase, const Profile& profile, const Style& style, const Tables& tables);

/// Drops the candidates of a toothed belt that are clearly less likely than others; likeliest first.
void chooseToothed(Attempt& attempt, const Phrase& phrase, const Profile& profile, const Tables& tables);

/// Every way to give the open numbers their roles: each has one, a role goes to one number at most, and only
/// the first or the last may be a quantity.
std::vector<Roles> rolesOf(const Phrase& phrase, bool lengthSaid, bool widthSaid);

/// The quantity of a candidate, or the fault of it.
Outcome<std::int64_t, ReadFault> quantityOf(const Phrase& phrase, const Roles& roles);

/// Keeps the fault with the highest score.
void keepFault(Attempt& attempt, ReadFault fault, int score);

/// Made lengths around this one, as belts.
std::vector<Belt> nearestMade(const Profile& profile, Length length, const Tables& tables);

} // namespace riband::belt::reading
