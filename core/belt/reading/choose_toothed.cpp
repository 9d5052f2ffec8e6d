#include "core/belt/reading/candidate.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

/// Decides which of the ways to read a toothed belt stay: more than one only where a person should be asked.
class ToothedChooser {
public:
    ToothedChooser(Attempt& attempt, const Phrase& phrase, const Profile& profile, const Tables& tables)
        : attempt_{attempt}, phrase_{phrase}, profile_{profile}, tables_{tables} {}

    void choose() {
        keepStandardForm();
        dropWrongQuantities();
        if (any([](const Candidate& c) { return c.plausible && c.reading.width; }))
            drop([](const Candidate& c) { return !c.plausible; });
        dropShort();
        keepBest();
        std::stable_sort(attempt_.candidates.begin(), attempt_.candidates.end(),
                         [](const Candidate& a, const Candidate& b) { return a.score > b.score; });
        dropDoubles();
    }

private:
    template <class Test>
    void drop(Test test) {
        auto& all = attempt_.candidates;
        all.erase(std::remove_if(all.begin(), all.end(), test), all.end());
    }
    template <class Test>
    bool any(Test test) const {
        return std::any_of(attempt_.candidates.begin(), attempt_.candidates.end(), test);
    }

    /// With a cross or a third number one number counts belts; with two only if the width is none otherwise.
    void dropWrongQuantities() {
        const bool three = phrase_.open.size() == 3 ||
                           ((phrase_.teeth || phrase_.length || phrase_.width) && phrase_.open.size() == 2);
        const int last = static_cast<int>(phrase_.open.size()) - 1;
        if (three && phrase_.crossFirst) onlyQuantityAt(0);
        if (three && phrase_.crossLast) onlyQuantityAt(last);
        if (!three) weighQuantityAgainstWidth();
    }

    /// "3 T5 x 500 x 10" is not ten belts 3 mm wide, though a cross stands before the 10.
    void onlyQuantityAt(int index) {
        const auto there = [&](const Candidate& c) { return c.roles.quantity == index; };
        if (any([&](const Candidate& c) { return there(c) && c.plausible; }))
            drop([&](const Candidate& c) { return !there(c); });
    }

    /// "3 H8M 1200" is three belts, "8 T5 500" is 8 mm wide, "15 H8M 1200" may be either.
    void weighQuantityAgainstWidth() {
        const auto wide = [](const Candidate& c) { return c.roles.width >= 0 && c.plausible; };
        const bool listed = any([](const Candidate& c) { return c.reading.width && c.widthListed; });
        const bool widthFirst = any(wide) && (profile_.family == Family::MetricTrapezoidal ||
                                              phrase_.slashAfter || tables_.widths(profile_.name).empty());
        const bool crossed = phrase_.crossFirst || phrase_.crossLast;
        drop([&](const Candidate& c) {
            if (c.roles.quantity < 0) return false;
            const bool inFront = c.roles.quantity == 0 && phrase_.before > 0;
            if (!inFront && any(wide)) return true; // "T5 500 10": the width comes last
            return crossed && inFront && !widthFirst ? false : listed || widthFirst;
        });
        // A number in front that is too narrow for a width counts belts; one behind may be either.
        if (phrase_.before > 0 && any([](const Candidate& c) { return c.roles.quantity == 0; }))
            drop([](const Candidate& c) { return c.roles.width == 0 && !c.plausible; });
    }

    /// So short a belt is only thought of if the other number would be a width that the short sleeves have.
    void dropShort() {
        const auto isShort = [](const Candidate& c) { return c.reading.belt.teeth->count() < usualTeeth; };
        if (!any([&](const Candidate& c) { return !isShort(c); })) {
            attempt_.askWhichIsLength = phrase_.open.size() == 2 && attempt_.candidates.size() > 1 &&
                                        phrase_.open[0].millionths == phrase_.open[1].millionths;
            return;
        }
        drop([&](const Candidate& c) { return isShort(c) && !isThinkable(c); });
    }

    bool isThinkable(const Candidate& candidate) const {
        if (!candidate.reading.width) return false;
        const auto& listed = tables_.widths(profile_.name);
        const Extent width = *candidate.reading.width;
        const bool farTooWide = !listed.empty() && width > listed.back().extent * 3;
        return !farTooWide && width <= tables_.usualSleeve(candidate.reading.belt);
    }

    /// Where the length and the width stand in 960H8M50, 300L075, 322L-27.3mm, 16 T5 / 480, B80XXL6.4 and
    /// 3-63-16, which leave no doubt which number is which, however many belts are asked for before or
    /// behind.
    std::optional<Roles> standardForm() const {
        const int before = static_cast<int>(phrase_.before), count = static_cast<int>(phrase_.open.size());
        if (phrase_.mention.kind == Mention::Kind::Module)
            return Roles{.length = before, .width = before + 1};
        if (before == count) return std::nullopt;
        if (phrase_.teeth && phrase_.gluedAfter) return Roles{.length = -1, .width = before};
        if (before == 0) return std::nullopt;
        if (profile_.family == Family::MetricTrapezoidal)
            return phrase_.slashAfter ? std::optional{Roles{.length = before, .width = before - 1}}
                                      : std::nullopt;
        const bool saidMillimetres = phrase_.open[phrase_.before].unit == Measure::Millimetre;
        const bool oneOrder = profile_.family != Family::CurvilinearS && phrase_.gluedAfter;
        if (!phrase_.gluedBefore || (!oneOrder && !saidMillimetres)) return std::nullopt;
        return Roles{.length = before - 1, .width = before};
    }

    void keepStandardForm() {
        const auto form = standardForm();
        if (!form) return;
        const auto differs = [&](const Candidate& c) {
            return c.roles.length != form->length || c.roles.width != form->width;
        };
        if (!std::all_of(attempt_.candidates.begin(), attempt_.candidates.end(), differs)) drop(differs);
    }

    /// Drops the ways to give out the roles that are clearly less likely. T and AT numbers are written in any
    /// order, so there whatever fits stays a question.
    void keepBest() {
        const bool anyOrder = profile_.family == Family::MetricTrapezoidal;
        const bool twoNumbers = phrase_.open.size() <= 2;
        const int margin = !twoNumbers                                  ? 1
                           : anyOrder                                   ? 100
                           : profile_.family == Family::InchTrapezoidal ? 1
                                                                        : 2;
        int best = -100;
        for (const Candidate& c : attempt_.candidates)
            best = std::max(best, c.score);
        std::vector<Roles> kept;
        for (const Candidate& c : attempt_.candidates)
            if (c.score >= best - margin) kept.push_back(c.roles);
        drop([&](const Candidate& c) { return std::find(kept.begin(), kept.end(), c.roles) == kept.end(); });
    }

    void dropDoubles() {
        auto& all = attempt_.candidates;
        const auto same = [](const Candidate& a, const Candidate& b) {
            return a.reading.belt == b.reading.belt && a.reading.width == b.reading.width &&
                   a.reading.quantity == b.reading.quantity;
        };
        for (std::size_t i = 0; i < all.size(); ++i)
            all.erase(std::remove_if(all.begin() + static_cast<std::ptrdiff_t>(i) + 1, all.end(),
                                     [&](const Candidate& c) { return same(all[i], c); }),
                      all.end());
    }

    Attempt& attempt_;
    const Phrase& phrase_;
    const Profile& profile_;
    const Tables& tables_;
};

} // namespace

void chooseToothed(Attempt& attempt, const Phrase& phrase, const Profile& profile, const Tables& tables) {
    ToothedChooser{attempt, phrase, profile, tables}.choose();
}

} // namespace riband::belt::reading
