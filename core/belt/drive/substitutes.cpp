#include "core/belt/drive/substitutes.h"

#include "core/belt/drive/existing.h"

#include <algorithm>
#include <cmath>

namespace riband::belt::drive {

namespace {

constexpr std::size_t lengthsEachSide = 3;
constexpr std::size_t widthsEachSide = 2;
constexpr double stillNear = 0.1; // of the length; common practice, no source

/// Of one side, from the belt outwards.
void keepNext(const std::vector<Neighbour>& side, Length length, std::vector<Neighbour>& kept) {
    bool stockSeen = false;
    for (std::size_t i = 0; i < side.size(); ++i) {
        const bool near = 2 * std::abs(side[i].shift) <= stillNear * length.inMillimetres();
        const bool stocked = !side[i].stock.empty() && near && !stockSeen;
        if (i >= lengthsEachSide && !stocked) continue;
        stockSeen = stockSeen || !side[i].stock.empty();
        kept.push_back(side[i]);
    }
}

std::vector<Extent> ribsBeside(Extent asked) {
    std::vector<Extent> beside;
    for (const int more : {-2, -1, 1, 2})
        if (asked.count() + more > 0) beside.push_back(Ribs{asked.count() + more});
    return beside;
}

std::vector<Extent> widthsBeside(const std::string& profile, Extent asked, const Tables& tables) {
    std::vector<Extent> narrower, wider;
    for (const StandardWidth& width : tables.widths(profile)) {
        if (width.extent < asked) narrower.push_back(width.extent);
        if (width.extent > asked && wider.size() < widthsEachSide) wider.push_back(width.extent);
    }
    const std::size_t from = narrower.size() - std::min(narrower.size(), widthsEachSide);
    std::vector<Extent> beside{narrower.begin() + static_cast<std::ptrdiff_t>(from), narrower.end()};
    beside.insert(beside.end(), wider.begin(), wider.end());
    return beside;
}

std::string labelOf(const std::string& profile, Extent width, const Tables& tables) {
    for (const StandardWidth& standard : tables.widths(profile))
        if (standard.extent == width) return standard.label;
    return std::to_string(width.count());
}

} // namespace

Outcome<Choices, DriveFault> otherLengths(const TwoPulleys& drive, const Belt& belt,
                                          const std::optional<Range>& range,
                                          const std::optional<Extent>& width, const Tables& tables,
                                          const std::vector<Stocked>& stock) {
    const auto run = withLength(drive, belt.length.inMillimetres());
    if (!run) return run.reason();
    auto choices = beltsFor(drive, {run->centre, range, width}, tables, stock);
    if (!choices) return choices;
    auto& belts = choices.value().belts;
    std::erase_if(belts, [&](const Choice& choice) { return choice.belt.length == belt.length; });
    choices.value().any = !belts.empty() && belts.front().reachable;
    return choices;
}

std::vector<Neighbour> neighbours(const Belt& belt, const std::optional<Extent>& width, const Tables& tables,
                                  const std::vector<Stocked>& stock) {
    const Profile* profile = tables.profile(belt.profile);
    if (!profile) return {};
    std::vector<Neighbour> shorter, longer;
    for (const auto& [length, known] : existing(*profile, width, tables, stock)) {
        if (length == belt.length) continue;
        const double shift = (length.inMillimetres() - belt.length.inMillimetres()) / 2;
        auto& side = shift < 0 ? shorter : longer;
        side.push_back({{belt.profile, known.teeth, length, ""}, shift, known.stock});
    }
    std::reverse(shorter.begin(), shorter.end());
    std::vector<Neighbour> all;
    keepNext(shorter, belt.length, all);
    keepNext(longer, belt.length, all);
    std::stable_sort(all.begin(), all.end(), [](const Neighbour& a, const Neighbour& b) {
        if (a.stock.empty() != b.stock.empty()) return b.stock.empty();
        return std::abs(a.shift) < std::abs(b.shift);
    });
    return all;
}

std::vector<OtherWidth> otherWidths(const Profile& profile, Extent asked, const Tables& tables) {
    if (asked.isNone()) return {};
    const bool ribbed = profile.ribbed();
    const ReferencePull* pull = tables.referencePull(profile.name);
    std::vector<OtherWidth> others;
    for (const Extent width : ribbed ? ribsBeside(asked) : widthsBeside(profile.name, asked, tables)) {
        const double part = static_cast<double>(width.count()) / static_cast<double>(asked.count());
        others.push_back({width,
                          ribbed ? std::to_string(width.count()) : labelOf(profile.name, width, tables),
                          std::pow(part, pull ? pull->exponent : 1.0),
                          pull ? pull->confidence : Confidence::CommonPractice});
    }
    return others;
}

} // namespace riband::belt::drive
