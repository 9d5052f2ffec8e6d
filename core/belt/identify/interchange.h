#pragma once

#include "core/belt/tables.h"

namespace riband::belt::identify {

/// Whether one belt may stand for another, or run on pulleys made for another profile.
struct Interchange {
    enum class Verdict {
        Same,        ///< dimensionally the same, whatever standard or code it is written by
        OtherLength, ///< the same profile, another length
        SameTooth,   ///< double-sided beside single-sided: the same pulleys, but not for each other's drives
        SamePitchNo, ///< the same pitch, another tooth: never
        NearlyPitchNo, ///< pitches within 2.5 %, so that the eye is deceived: never
        Never,
    };
    Verdict verdict;
    double perPitch;  ///< second pitch less first, mm
    double height;    ///< second tooth height less first; 0 where a table has none
    double thickness; ///< second total thickness less first; 0 where a table has none
    /// Of Same: the standards under which this one size is stated, as "ISO 5296:2012" and "ARPM IP-24".
    std::vector<std::string> standards;
    bool interchanges() const { return verdict == Verdict::Same; }
};

/// Of two profiles: the belt's and that of the pulleys, or of another belt.
Interchange interchange(const Profile& first, const Profile& second);
/// Of two belts. A code in inches and a length in millimetres of the same belt are one belt. Throws
/// std::invalid_argument if the tables don't have a profile.
Interchange interchange(const Belt& first, const Belt& second, const Tables& tables);

} // namespace riband::belt::identify
