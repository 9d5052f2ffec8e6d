#pragma once

#include "tests/core/belt/identify/counter.h"

#include <map>
#include <string>
#include <vector>

/// Every belt of the tables, measured with seeded errors, new or worn: does it come back?
namespace riband::belt::identify {

/// What became of the belts of one profile.
struct Row {
    std::string profile;
    int belts = 0;
    int first = 0;                         ///< came back as the likeliest
    int stated = 0;                        ///< or in the stated set: the candidates that have 99 % together
    int settled = 0;                       ///< the answer was said to be settled
    int settledWrongly = 0;                ///< and was another belt
    int set = 0;                           ///< belts in the stated sets, all together
    int questions = 0;                     ///< measurements taken, all together
    std::map<std::string, int> takenFor{}; ///< profile of the likeliest, where that was another
};

enum class Talk {
    AtOnce, ///< pitch over 20, all teeth, thickness, shape; of a ribbed belt rib pitch, back, thickness
    AsAsked ///< begins with the shape and measures what the answer asks for, until it is settled or at its
            ///< end
};

/// One row a profile that has a list of lengths, in the order of the tables. `each`: every so-manyeth belt.
std::vector<Row> measureEveryBelt(Talk talk, Hand hand, std::size_t each = 1);

/// The rows as a table for docs/identify.md, with their sums.
std::string asTable(const std::vector<Row>& rows);
Row sumOf(const std::vector<Row>& rows);

} // namespace riband::belt::identify
