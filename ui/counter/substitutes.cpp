#include "ui/counter/substitutes.h"

#include "core/belt/drive/substitutes.h"
#include "ui/words/drive_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>
#include <cmath>

namespace riband::ui {

namespace {

using belt::drive::Stocked;

struct SubstituteWords {
    Q_DECLARE_TR_FUNCTIONS(SubstituteWords)
};

constexpr std::size_t mostHere = 4;
constexpr std::size_t mostElsewhere = 2; // to be ordered, too, and so no better than the belt itself

QString wordsOf(belt::Reading reading, const belt::Belt& belt, std::optional<Extent> width,
                const belt::Tables& tables) {
    reading.belt = belt;
    reading.width = width;
    return wordsFor(reading, tables).value_or(QString{});
}

/// The belt as the shop has it.
belt::Belt stockedBelt(const belt::drive::Neighbour& near) {
    const auto usual = std::find_if(near.stock.begin(), near.stock.end(),
                                    [&](const Stocked& stocked) { return stocked.belt == near.belt; });
    return near.stock.empty() || usual != near.stock.end() ? near.belt : near.stock.front().belt;
}

void addLengths(std::vector<Choice>& choices, const belt::Reading& reading, const std::vector<Stocked>& stock,
                const belt::Tables& tables, bool here) {
    const std::size_t most = choices.size() + (here ? mostHere : mostElsewhere);
    for (const auto& near : belt::drive::neighbours(reading.belt, reading.width, tables, stock)) {
        if (near.stock.empty() == here || choices.size() == most) continue;
        const belt::Belt belt = stockedBelt(near);
        const QString words = wordsOf(reading, belt, reading.width, tables);
        if (words.isEmpty()) continue;
        const QString where = here ? shownStock(near.stock) : SubstituteWords::tr("not here either");
        choices.push_back({Choice::Does::Say, text(belt::designation(belt)),
                           SubstituteWords::tr("%1 · pulleys at least %2").arg(where, shownShift(near.shift)),
                           words});
    }
}

/// Those that the pieces of this very belt still give.
void addWidths(std::vector<Choice>& choices, const belt::Reading& reading, const std::vector<Stocked>& stock,
               const belt::Tables& tables, bool wider) {
    const belt::Profile* profile = tables.profile(reading.belt.profile);
    const auto here = std::find_if(stock.begin(), stock.end(),
                                   [&](const Stocked& stocked) { return stocked.belt == reading.belt; });
    if (!profile || !reading.width || here == stock.end()) return;
    auto others = belt::drive::otherWidths(*profile, *reading.width, tables);
    std::sort(others.begin(), others.end(), [](const auto& a, const auto& b) {
        return std::abs(a.share - 1) < std::abs(b.share - 1); // the one that pulls most alike first
    });
    for (const auto& other : others) {
        if ((other.share > 1) != wider) continue;
        const QString words = wordsOf(reading, reading.belt, other.width, tables);
        if (words.isEmpty() || !belt::drive::wideEnough(*here, other.width)) continue;
        choices.push_back({Choice::Does::Say, SubstituteWords::tr("%1 wide").arg(shown(other.width)),
                           SubstituteWords::tr("here · about %1 of the pull").arg(shownShare(other.share)),
                           words});
    }
}

} // namespace

Choices substituteChoices(const belt::Reading& reading, const std::vector<Stocked>& stock,
                          const belt::Tables& tables) {
    Choices made;
    made.heading = SubstituteWords::tr("In its place, if the drive can take it:");
    made.onlyByAlt = true;
    addWidths(made.choices, reading, stock, tables, true);
    addLengths(made.choices, reading, stock, tables, true);
    addWidths(made.choices, reading, stock, tables, false);
    addLengths(made.choices, reading, stock, tables, false);
    if (made.choices.empty()) return {};
    made.choices.push_back({Choice::Does::Drive,
                            SubstituteWords::tr("Can the drive take it?"),
                            SubstituteWords::tr("Ctrl+D: the exact distances"),
                            {}});
    return made;
}

} // namespace riband::ui
