#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

/// Which belt is this? From what can be measured on an old belt to the belts of the tables it may be.
namespace riband::belt::identify {

/// What can be measured or counted on a belt.
enum class Measure : std::uint8_t {
    PitchOver,   ///< mm from the middle of a tooth to the middle of the one `over` pitches further, laid flat
    Teeth,       ///< all of them, counted
    Outside,     ///< mm round the back, by tape
    Inside,      ///< mm round the tips
    Flat,        ///< mm of a belt that is cut open, end to end
    HalfLoop,    ///< mm from bend to bend, the closed belt pressed flat
    Thickness,   ///< mm from tip to back (double-sided: from tip to tip)
    ToothHeight, ///< mm from land to tip
    ToothRoot,   ///< mm of the tooth's width at the land
    Shape,       ///< as seen from the side
    RibCount,    ///< ribs, not valleys
    RibsOver,    ///< mm from the middle of a rib to the middle of the `over`-th, so over - 1 pitches
    Width,       ///< mm
};
constexpr std::size_t measureCount = 13;

/// Tooth forms as a person tells them apart beside drawings.
enum class SeenShape : std::uint8_t {
    Trapezoid,
    WideTrapezoid, ///< wider than the gap at mid height: AT
    HalfRound,
    FlatTopRound,
    DimpledRound,
    FullRound,
    Ribs,
};
constexpr std::size_t shapeCount = 7;

/// One thing measured. `value` and `error` in mm, or in teeth or ribs for a count.
struct Measurement {
    Measure what;
    double value;
    double error; ///< standard error of the reading: two readings in three are nearer
    int over = 0; ///< PitchOver: pitches; RibsOver: ribs
};

/// The error of each measure if nothing else is said.
class Errors {
public:
    /// By the usual instruments (errorsOf, instruments.h).
    Errors();
    double of(Measure what) const { return of_[static_cast<std::size_t>(what)]; }
    void set(Measure what, double error) { of_[static_cast<std::size_t>(what)] = error; }

private:
    std::array<double, measureCount> of_;
};

enum class Condition : std::uint8_t { Unknown, New, Used };

/// All that is known of the belt on the counter.
struct Sample {
    std::vector<Measurement> measured{};
    std::optional<SeenShape> shape{};
    Condition condition = Condition::Unknown;
    std::optional<bool> doubleSided{}; ///< teeth on both sides, seen; unsaid is a faint no
    bool openEnded = false;            ///< a piece by the metre: its length says nothing

    const Measurement* find(Measure what) const; ///< the first such; nullptr if there is none
};

/// Why a sample can't be used.
struct SampleFault {
    enum class Kind : std::uint8_t {
        Nothing,     ///< not one measurement
        NotPositive, ///< a value or an error that is not more than nothing, or no number
        TooLarge,    ///< over 100 m, 20 000 teeth, 10 000 ribs
        NotWhole,    ///< half a tooth
        TooFew,      ///< a pitch over less than 1 pitch, ribs over less than 2
    };
    Kind kind;
    Measure what;
    int over = 0; ///< as in the measurement
};
std::optional<SampleFault> faultOf(const Sample& sample);

/// Whether a measure says how long the belt is.
bool tellsLength(Measure what);

} // namespace riband::belt::identify
