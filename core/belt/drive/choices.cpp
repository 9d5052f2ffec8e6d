#include "core/belt/drive/choices.h"

#include "core/belt/drive/existing.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace riband::belt::drive {

namespace {

constexpr std::size_t eachSide = 3;
constexpr double stillNear = 0.1; // of the distance; common practice, no source

bool reaches(const std::optional<Range>& range, double shift) {
    if (!range) return true;
    return shift >= -range->nearer && shift <= range->farther;
}

/// All that go round both pulleys, short first, which is also near first.
std::vector<Choice> possible(const TwoPulleys& drive, const Wanted& wanted,
                             const std::map<Length, Existing>& all) {
    std::vector<Choice> choices;
    for (const auto& [length, known] : all) {
        const auto run = withLength(drive, length.inMillimetres());
        if (!run) continue;
        const double shift = run->centre - wanted.centre;
        choices.push_back({{drive.profile->name, known.teeth, length, ""},
                           known.listed,
                           known.stock,
                           *run,
                           shift,
                           reaches(wanted.range, shift)});
    }
    return choices;
}

/// Marks one side, from the wanted distance outwards.
template <class Iterator>
void markSide(Iterator from, Iterator to, const Wanted& wanted, std::vector<const Choice*>& kept) {
    std::size_t taken = 0;
    bool stockSeen = false;
    for (; from != to; ++from) {
        const bool next = taken < eachSide;
        const bool near = std::abs(from->shift) <= stillNear * wanted.centre;
        const bool stocked = from->inStock() && near && !stockSeen;
        if (!next && !stocked && !(wanted.range && from->reachable)) continue;
        kept.push_back(&*from);
        stockSeen = stockSeen || from->inStock();
        ++taken;
    }
}

bool better(const Choice* a, const Choice* b) {
    if (a->reachable != b->reachable) return a->reachable;
    if (a->inStock() != b->inStock()) return a->inStock();
    if (std::abs(a->shift) != std::abs(b->shift)) return std::abs(a->shift) < std::abs(b->shift);
    return a->belt.length < b->belt.length;
}

std::vector<Choice> chosen(const std::vector<Choice>& all, const Wanted& wanted) {
    const auto split =
        std::find_if(all.begin(), all.end(), [](const Choice& choice) { return choice.shift >= 0; });
    std::vector<const Choice*> kept;
    markSide(std::make_reverse_iterator(split), all.rend(), wanted, kept);
    markSide(split, all.end(), wanted, kept);
    std::sort(kept.begin(), kept.end(), better);
    std::vector<Choice> belts;
    for (const Choice* choice : kept)
        belts.push_back(*choice);
    return belts;
}

} // namespace

Outcome<Choices, DriveFault> beltsFor(const TwoPulleys& drive, const Wanted& wanted, const Tables& tables,
                                      const std::vector<Stocked>& stock) {
    if (!drive.profile) throw std::invalid_argument{"belts are looked for by their profile"};
    const auto exact = atDistance(drive, wanted.centre);
    if (!exact) return exact.reason();
    const auto all = possible(drive, wanted, existing(*drive.profile, wanted.width, tables, stock));
    Choices choices{*exact, chosen(all, wanted), {}, {}, false};
    if (all.empty()) return choices;
    choices.least = all.front().run.centre;
    choices.greatest = all.back().run.centre;
    const bool between = wanted.centre >= *choices.least && wanted.centre <= *choices.greatest;
    choices.any = wanted.range ? choices.belts.front().reachable : between;
    return choices;
}

} // namespace riband::belt::drive
