#pragma once

#include <cstddef>
#include <optional>
#include <vector>

/// How much one further reading is expected to tell.
namespace riband::belt::identify {

/// What one of several possible answers would make the reading: normal about `mean`. No `reading`: it can't
/// be taken there, and that is an outcome of its own.
struct Outlook {
    double probability; ///< of the answer; all sum to 1
    struct Normal {
        double mean;
        double spread;
    };
    std::optional<Normal> reading;
};

/// The worth of a reading before it is taken.
struct Information {
    double bits;      ///< mutual information of answer and reading
    double certainty; ///< expected probability of the then likeliest answer
};

enum class Scale { Continuous, WholeNumbers };

/// By summing over fixed nodes, six a standard deviation of the sharpest, out to five deviations of each;
/// over the whole numbers where the reading is a count.
Information informationOf(const std::vector<Outlook>& outlooks, Scale scale = Scale::Continuous);

/// The same for a reading that is one of a few words: `chances[answer][word]`.
Information informationOf(const std::vector<double>& probabilities,
                          const std::vector<std::vector<double>>& chances);

} // namespace riband::belt::identify
