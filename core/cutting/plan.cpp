#include "core/cutting/plan.h"

namespace riband::cutting {

std::vector<Stop> stopsOf(const Problem& problem, const Mounting& mounting) {
    std::vector<Stop> stops;
    Extent display = Extent::none(problem.rules.unit());
    for (const Cut& cut : mounting.cuts) {
        const Extent each = problem.lines.at(cut.line).extent;
        for (std::int64_t n = 0; n < cut.count; ++n) {
            display = display + each;
            stops.push_back({cut.line, each, display});
            display = display + problem.rules.kerf; // the next belt begins behind the blade
        }
    }
    return stops;
}

} // namespace riband::cutting
