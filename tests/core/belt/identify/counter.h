#pragma once

#include "core/belt/identify/identify.h"

#include <random>

/// The counter in a test: belts that are measured with errors, and short ways to say a sample.
namespace riband::belt::identify {

const Prior& listsOnly(); ///< no sales: the makers' lists

/// A reading with its usual error.
Measurement read(Measure what, double value);
Measurement over(int pitches, double millimetres);
Measurement ribsOver(int ribs, double millimetres);

const Sizes& sizesOf(std::string_view profile);

/// Someone with callipers, rule and tape. The same seed gives the same readings on every computer (the
/// standard leaves std::normal_distribution open).
class Hand {
public:
    /// A careful hand never miscounts, and no reading is further off than two standard errors.
    explicit Hand(std::uint64_t seed, bool careful = false) : dice_{seed}, careful_{careful} {}
    double even(); ///< 0 to 1
    double normal(double mean, double spread);
    /// A belt as one maker makes it, so far worn: its sizes are drawn once and stay.
    struct Held {
        const Profile* profile;
        Extension belt;
        double wear;      ///< 0 to 1
        double thickness; ///< mm, as it is now
        double height;
        double root;
    };
    Held pickUp(const Profile& profile, const MadeLength& made, double wear);
    /// Reads what is asked of it, with the usual error; `over` for pitches and ribs.
    Measurement measure(const Held& held, Measure what, int over = 0);

private:
    double miscounted(double count); ///< one off once in fifty
    std::mt19937_64 dice_;
    bool careful_;
};

} // namespace riband::belt::identify
