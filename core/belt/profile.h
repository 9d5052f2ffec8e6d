#pragma once

#include "core/measure/extent.h"
#include "core/measure/length.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace riband::belt {

enum class Family : std::uint8_t {
    InchTrapezoidal,   ///< ISO 5296, ARPM IP-24
    MetricTrapezoidal, ///< DIN 7721, ISO 17396
    CurvilinearH,      ///< ISO 13050, ARPM IP-27
    CurvilinearR,
    CurvilinearS,
    CurvilinearG,
    ModuleTrapezoidal, ///< old national sizes, pitch = pi x module
    VRibbed,           ///< ISO 9982, ARPM IP-26
};

enum class ToothShape : std::uint8_t { Trapezoid, HalfRound, FlatTopRound, DimpledRound, FullRound, Rib };

/// How well a figure of the tables is known; the meaning of each is in docs/sources.md.
enum class Confidence : std::uint8_t { Confirmed, OneSource, MemoryOnly, CommonPractice, Computed };

/// The figures of a drawn tooth in mm; doubles, for drawing and shaft geometry only. Absent where no source
/// gives it.
struct ToothForm {
    std::optional<double> height;            ///< ht, from land to tip
    std::optional<double> total;             ///< hs (double-sided: the total height)
    std::optional<double> totalLeast;        ///< hs of the thinnest make met
    std::optional<double> totalMost;         ///< and of the thickest
    std::optional<double> pitchLine;         ///< a, from the land to the pitch line
    std::optional<double> rootWidth;         ///< S
    std::optional<double> flankAngleDegrees; ///< 2 beta, the whole angle
    std::optional<double> rootRadius;        ///< rr
    std::optional<double> tipRadius;         ///< ra
    std::optional<double> parabola;          ///< C of y = C x^2 (R types), 1/mm
    std::optional<double> flankRadius;       ///< R1 (S types)
    std::optional<double> noseRadius;        ///< R5 (S types)
    std::optional<double> ribAngleDegrees;   ///< V-ribbed
    std::optional<double> effectiveLine;     ///< be (V-ribbed): from the effective diameter to the cords
    /// Half a tooth by its joints (H types): tooth axis x = 0, land y = 0, the tooth goes to -ht.
    struct Point {
        double x, y;
    };
    std::vector<Point> joints;
};

/// One tooth or rib form with its pitch, as a standard defines it.
struct Profile {
    std::string name; ///< as the standards write it: T5, L, H8M, PJ; double-sided: DL, DH8M, T5-DL
    Family family;
    std::string standard;       ///< short: "ISO 13050", "DIN 7721"
    std::string standardInFull; ///< with years and tables, for the sources page
    ToothShape shape;
    bool doubleSided;
    std::string base; ///< of a double-sided profile: the single-sided one of the same tooth; else empty
    Length pitch;     ///< of the teeth, or of the ribs
    ToothForm form;
    std::string body;                     ///< usual body: "rubber", "polyurethane"
    std::optional<Teeth> smallestPulley;  ///< teeth of it
    std::optional<double> smallestShaft;  ///< mm: plain shaft of the pitch radius of the smallest pulley
    std::optional<double> smallestRoller; ///< mm: smallest smooth roller under the teeth
    Confidence confidence;

    bool ribbed() const { return family == Family::VRibbed; }
    Unit unit() const { return ribbed() ? Unit::Rib : Unit::Micrometre; }
};

/// A width that is sold of a profile.
struct StandardWidth {
    Extent extent;
    std::string code;  ///< inch families: "075"; else empty
    std::string label; ///< as printed: "19.1", "30"
    bool inStandard;   ///< else usual in trade only
    Confidence confidence;
};

/// What a finished belt's width may differ by.
struct WidthTolerance {
    Width plus;
    Width minus;
    std::string standard;
    Confidence confidence;
};

/// A length that exists.
struct MadeLength {
    std::optional<Teeth> teeth;      ///< toothed
    Length length;                   ///< pitch length, or effective length of a ribbed belt
    std::string code;                ///< as printed: "322", "1200", "1194"
    std::vector<std::string> others; ///< other codes seen for the same belt
    int makers;
    Confidence confidence;
};

} // namespace riband::belt
