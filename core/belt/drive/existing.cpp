#include "core/belt/drive/existing.h"

#include <algorithm>

namespace riband::belt::drive {

bool wideEnough(const Stocked& stocked, const std::optional<Extent>& width) {
    if (!width) return !stocked.widest.isNone() || !stocked.ready.empty();
    if (stocked.widest.unit() != width->unit()) return false;
    return stocked.widest >= *width || std::count(stocked.ready.begin(), stocked.ready.end(), *width) > 0;
}

std::map<Length, Existing> existing(const Profile& profile, const std::optional<Extent>& width,
                                    const Tables& tables, const std::vector<Stocked>& stock) {
    std::map<Length, Existing> all;
    for (const MadeLength& made : tables.lengths(profile.name))
        all[made.length] = {made.teeth, true, {}};
    for (const Stocked& stocked : stock) {
        if (stocked.belt.profile != profile.name || !wideEnough(stocked, width)) continue;
        Existing& here = all[stocked.belt.length];
        here.teeth = stocked.belt.teeth;
        here.stock.push_back(stocked);
    }
    return all;
}

} // namespace riband::belt::drive
