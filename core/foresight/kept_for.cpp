#include "core/foresight/kept_for.h"

namespace riband::foresight {

namespace {

constexpr int mostBelts = 5; // of an order that is told of

} // namespace

std::optional<KeptFor> keptFor(const Setting& setting, const WorthTable& table, const Outlook& outlook,
                               Size remnant) {
    const auto& rules = setting.rules;
    const Worth worth = table.of(remnant);
    if (worth <= 0) return std::nullopt;
    std::optional<KeptFor> best;
    Worth most = 0;
    for (const auto& [width, share] : outlook.widths())
        for (int belts = 1; belts <= mostBelts; ++belts) {
            const Size use = rules.trim + belts * (width + rules.kerf);
            if (use + rules.reserve(width) > remnant) break;
            const Worth fromSleeve = table.sleeve - table.of(setting.sleeve - use);
            const double part = share * outlook.shareOfQuantity(belts);
            const Worth gain = part * (fromSleeve + table.of(remnant - use) - worth);
            if (gain <= most) continue;
            most = gain;
            best = KeptFor{{width, belts}, part};
        }
    return best;
}

} // namespace riband::foresight
