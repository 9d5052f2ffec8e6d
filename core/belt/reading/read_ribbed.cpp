#include "core/belt/reading/candidate.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

using Fault = ReadFault::Kind;
using Remark = Reading::Remark;

constexpr std::int64_t manyRibs = 40; // belts of more are cut, but rarely said

class RibbedReader {
public:
    RibbedReader(const Phrase& phrase, const Profile& profile, const Style& style, const Tables& tables)
        : phrase_{phrase}, profile_{profile}, style_{style}, tables_{tables} {}

    Attempt run() {
        const auto& alien = phrase_.teeth ? phrase_.teeth : phrase_.width;
        if (alien) {
            keepFault(attempt_, {Fault::NotUnderstood, alien->said, {}, {}}, 0);
            return attempt_;
        }
        for (const Roles& roles : rolesOf(phrase_, phrase_.length.has_value(), phrase_.ribs.has_value()))
            tryRoles(roles);
        if (attempt_.candidates.empty() && !attempt_.fault)
            keepFault(attempt_, {Fault::NoLength, {}, {}, {}}, 0);
        choose();
        return std::move(attempt_);
    }

private:
    const SaidNumber& open(int index) const { return phrase_.open[static_cast<std::size_t>(index)]; }

    std::optional<SaidNumber> ribsOf(const Roles& roles) const {
        if (roles.width >= 0) return open(roles.width);
        return phrase_.ribs;
    }
    SaidNumber lengthOf(const Roles& roles) const {
        return phrase_.length ? *phrase_.length : open(roles.length);
    }

    /// 470J6: the length before the letter, the ribs behind it.
    bool isInchForm(const Roles& roles) const {
        if (!style_.letterOnly || roles.length < 0) return false;
        const bool lengthBefore = static_cast<std::size_t>(roles.length) + 1 == phrase_.before;
        return lengthBefore && (roles.width < 0 || roles.width > roles.length);
    }

    void tryRoles(const Roles& roles) {
        const SaidNumber number = lengthOf(roles);
        const auto lengths = ribbedLengths(number, profile_, style_.letterOnly, isInchForm(roles), tables_);
        const auto ribs = ribsOf(roles);
        const auto ribFault = ribs ? faultOfRibs(*ribs) : std::nullopt;
        if (lengths.empty() && isOnlyRibs(number))
            return keepFault(attempt_, {Fault::NoLength, number.said, {}, {}}, 0);
        if (lengths.empty())
            return keepFault(attempt_, {Fault::LengthImpossible, number.said, {}, {}},
                             faultScore(roles, false, !ribFault));
        if (ribFault) return keepFault(attempt_, *ribFault, faultScore(roles, true, false));
        const auto quantity = quantityOf(phrase_, roles);
        if (!quantity) return keepFault(attempt_, quantity.reason(), 5);
        for (const LengthRead& length : lengths)
            add(roles, length, ribs, *quantity);
    }

    /// "6 PJ": the one number counts ribs, so the length is missing.
    bool isOnlyRibs(const SaidNumber& number) const {
        return phrase_.open.size() == 1 && !phrase_.ribs && !phrase_.length && !faultOfRibs(number);
    }

    int faultScore(const Roles& roles, bool lengthRight, bool ribsRight) const {
        const bool longer = roles.length >= 0 && roles.width >= 0 &&
                            open(roles.length).millionths > open(roles.width).millionths;
        return (lengthRight ? 2 : 0) + (ribsRight ? 2 : 0) + (longer ? 1 : 0) - (roles.quantity >= 0 ? 1 : 0);
    }

    std::optional<ReadFault> faultOfRibs(const SaidNumber& ribs) const {
        const Extent widest = tables_.widestSleeve(profile_.name);
        if (ribs.unit != Measure::None && !ribs.fraction)
            return ReadFault{Fault::HalfARib, ribs.said, {}, {}};
        if (ribs.negative || ribs.millionths == 0) return ReadFault{Fault::NoRibs, ribs.said, {}, {}};
        if (ribs.millionths % 1'000'000 != 0) return ReadFault{Fault::HalfARib, ribs.said, {}, {}};
        if (Extent{Ribs{ribs.wholePart()}} > widest)
            return ReadFault{Fault::WidthOverSleeve, ribs.said, {}, widest};
        if (ribs.leadingZero) return ReadFault{Fault::NotUnderstood, ribs.said, {}, {}};
        return std::nullopt;
    }

    void add(const Roles& roles, const LengthRead& length, const std::optional<SaidNumber>& ribs,
             std::int64_t quantity) {
        Candidate candidate{{.belt = {profile_.name, std::nullopt, length.length, phrase_.construction}}};
        candidate.roles = roles;
        candidate.basis = length.basis;
        Reading& reading = candidate.reading;
        reading.quantity = quantity;
        reading.said = lengthOf(roles).said;
        if (length.remark) reading.remarks.push_back(*length.remark);
        if (!length.listed) {
            reading.remarks.push_back(Remark::LengthNotListed);
            reading.nearestMade = nearestMade(profile_, length.length, tables_);
        }
        candidate.score = length.listed ? 4 : 2;
        if (ribs) takeRibs(candidate, *ribs);
        attempt_.candidates.push_back(std::move(candidate));
    }

    void takeRibs(Candidate& candidate, const SaidNumber& ribs) const {
        const auto count = ribs.wholePart();
        candidate.reading.width = Extent{Ribs{count}};
        candidate.widthListed = phrase_.ribs || count <= manyRibs;
        candidate.score += candidate.widthListed ? 2 : 1;
        const bool touches = phrase_.gluedBefore && candidate.roles.width >= 0 &&
                             static_cast<std::size_t>(candidate.roles.width) + 1 == phrase_.before;
        if (touches) candidate.score += 3; // 6PJ: the number that touches P counts ribs
    }

    template <class Test>
    void drop(Test test) {
        auto& all = attempt_.candidates;
        all.erase(std::remove_if(all.begin(), all.end(), test), all.end());
    }
    template <class Test>
    bool any(Test test) const {
        return std::any_of(attempt_.candidates.begin(), attempt_.candidates.end(), test);
    }

    void choose() {
        const int last = static_cast<int>(phrase_.open.size()) - 1;
        const bool spare =
            phrase_.open.size() == 3 || (phrase_.open.size() == 2 && (phrase_.ribs || phrase_.length));
        if (spare && phrase_.crossFirst && any([](const Candidate& c) { return c.roles.quantity == 0; }))
            drop([](const Candidate& c) { return c.roles.quantity != 0; });
        if (spare && phrase_.crossLast && any([&](const Candidate& c) { return c.roles.quantity == last; }))
            drop([&](const Candidate& c) { return c.roles.quantity != last; });
        // "6 PJ 1600": the other number counts ribs rather than belts.
        if (any([](const Candidate& c) { return c.reading.width && c.roles.quantity < 0; }))
            drop([](const Candidate& c) { return c.roles.quantity >= 0; });
        keepBest();
    }

    /// The likeliest way to give out the roles; all lengths that its number may mean stay.
    void keepBest() {
        auto& all = attempt_.candidates;
        if (all.empty()) return;
        std::stable_sort(all.begin(), all.end(),
                         [](const Candidate& a, const Candidate& b) { return a.score > b.score; });
        const int best = all.front().score;
        std::vector<Roles> kept;
        for (const Candidate& c : all)
            if (c.score == best) kept.push_back(c.roles);
        drop([&](const Candidate& c) { return std::find(kept.begin(), kept.end(), c.roles) == kept.end(); });
    }

    const Phrase& phrase_;
    const Profile& profile_;
    const Style& style_;
    const Tables& tables_;
    Attempt attempt_;
};

} // namespace

Attempt readRibbed(const Phrase& phrase, const Profile& profile, const Style& style, const Tables& tables) {
    return RibbedReader{phrase, profile, style, tables}.run();
}

} // namespace riband::belt::reading
