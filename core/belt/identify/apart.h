#pragma once

#include "core/belt/identify/figures.h"

namespace riband::belt::identify {

/// Two profiles side by side: by how much they differ in what can be measured, mm.
struct Apart {
    const Profile* first;
    const Profile* second;
    double perPitch; ///< difference of the pitches; 0 where one has ribs and the other teeth
    double thickness;
    double height; ///< of the tooth; 0 of ribbed ones
    double root;
    bool sameShape; ///< as a person sees it
    double over(int pitches) const { return perPitch * pitches; }
};
Apart apart(const Sizes& first, const Sizes& second);

/// The fewest pitches over which two profiles differ by so many mm; 0 if their pitch is the same.
int pitchesFor(const Apart& apart, double millimetres);

} // namespace riband::belt::identify
