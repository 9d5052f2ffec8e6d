#include "ui/counter/evidence_choices.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

struct EvidenceChoiceWords {
    Q_DECLARE_TR_FUNCTIONS(EvidenceChoiceWords)
};

constexpr std::size_t mostRather = 4;

/// "up to 380 mm here", "not here"; "" while it is being looked up.
QString hereOf(const belt::Belt& belt, StockReader& stock) {
    const auto* known = stock.of(belt.profile);
    if (!known) return {};
    Extent widest = Extent::none(belt.teeth ? Unit::Micrometre : Unit::Rib);
    for (const auto& stocked : *known) {
        if (stocked.belt.length != belt.length) continue;
        widest = std::max(widest, stocked.widest);
        for (const Extent ready : stocked.ready)
            widest = std::max(widest, ready);
    }
    return widest.isNone() ? EvidenceChoiceWords::tr("not here")
                           : EvidenceChoiceWords::tr("up to %1 here").arg(shown(widest));
}

std::optional<Choice> choiceFor(const belt::Reading& said, const belt::Belt& belt, StockReader& stock,
                                const belt::Tables& tables) {
    belt::Reading other = said;
    other.belt = belt;
    other.remarks.clear();
    if (other.width && belt.teeth.has_value() != said.belt.teeth.has_value()) other.width.reset();
    const auto words = wordsFor(other, tables);
    if (!words) return std::nullopt;
    return Choice{Choice::Does::Say, text(belt::designation(belt)), hereOf(belt, stock), *words};
}

} // namespace

Choices evidenceChoices(const belt::Reading& said, const std::vector<Evidence::Finding>& findings,
                        bool stopped, StockReader& stock, const belt::Tables& tables) {
    Choices made;
    std::vector<belt::Belt> told;
    for (const auto& finding : findings)
        for (const belt::Belt& belt : finding.rather) {
            if (std::find(told.begin(), told.end(), belt) != told.end() || told.size() == mostRather)
                continue;
            told.push_back(belt);
            if (const auto choice = choiceFor(said, belt, stock, tables)) made.choices.push_back(*choice);
        }
    const bool against = std::any_of(findings.begin(), findings.end(), [](const auto& finding) {
        return finding.kind != Evidence::Finding::Kind::Fits;
    });
    if (!against || (made.choices.empty() && !stopped)) return {};
    if (stopped)
        made.choices.push_back(
            {Choice::Does::Overrule,
             EvidenceChoiceWords::tr("%1 all the same").arg(text(belt::designation(said.belt))),
             {},
             {}});
    made.heading = stopped ? EvidenceChoiceWords::tr("Before this is sold: which one?")
                           : EvidenceChoiceWords::tr("The other belt:");
    made.wrong = stopped;
    made.onlyByAlt = !stopped;
    return made;
}

} // namespace riband::ui
