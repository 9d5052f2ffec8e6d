#pragma once

#include "core/measure/length.h"

#include <optional>
#include <string>

namespace riband::belt {

/// What a sleeve is a wide piece of: profile, length, construction. No width in it. A value.
struct Belt {
    std::string profile;
    std::optional<Teeth> teeth; ///< of a toothed belt; none if ribbed
    Length length;              ///< pitch length = teeth x pitch; effective length of a ribbed belt
    std::string construction;   ///< "" is the usual body and cord; else a word of the shop: "steel cord"

    friend bool operator==(const Belt&, const Belt&) = default;
};

/// How a belt is written everywhere in Riband, without width: profile, then the printed number (length in mm;
/// inch families: the length code), then the construction if any: "H8M 1200", "L 322", "MXL 80.0", "PJ 1194",
/// "T5 500 steel cord". The reader reads it back to the same belt.
std::string designation(const Belt& belt);

/// The number of it alone: "1200", "322", "80.0"; XXL "B80", an old national belt its teeth.
std::string lengthCode(const Belt& belt);

} // namespace riband::belt
