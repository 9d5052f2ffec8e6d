#include "core/belt/reading/choice.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

using Fault = ReadFault::Kind;

class Chooser {
public:
    Chooser(const Phrase& phrase, const Tables& tables)
        : phrase_{phrase}, tables_{tables}, ways_{waysOf(phrase, tables)} {}

    Understanding run() {
        if (ways_.empty()) return faulty({Fault::UnknownProfile, nameWithSides(), {}, {}});
        for (const Way& way : ways_)
            attempts_.push_back(way.profile->ribbed()
                                    ? readRibbed(phrase_, *way.profile, way.style, tables_)
                                    : readToothed(phrase_, *way.profile, way.style, tables_));
        dropUnlikelyRibbed();
        dropUnlistedMxl();
        dropCountedBelts();
        if (isUnknownPitch()) attempts_.front().candidates.clear();
        for (const Attempt& attempt : attempts_)
            candidates_.insert(candidates_.end(), attempt.candidates.begin(), attempt.candidates.end());
        if (candidates_.empty()) return faulty(bestFault());
        Understanding result;
        for (const Candidate& candidate : candidates_)
            result.readings.push_back(candidate.reading);
        result.question = question();
        return result;
    }

private:
    static Understanding faulty(ReadFault fault) {
        Understanding result;
        if (fault.kind == Fault::NoLength) result.question = Question::HowLong;
        result.fault = std::move(fault);
        return result;
    }

    /// As the double-sided profile would be called if there were one.
    std::string nameWithSides() const {
        const Profile* single = tables_.profile(phrase_.mention.name);
        const bool behind = single && single->family == Family::MetricTrapezoidal;
        return behind ? phrase_.mention.name + "-DL" : "D" + phrase_.mention.name;
    }

    /// A letter alone may be ribbed only where such a length is made and no width code says otherwise:
    /// 300L075 has three quarters of an inch, not 75 ribs.
    void dropUnlikelyRibbed() {
        if (ways_.size() != 2 || !ways_[0].profile->ribbed()) return;
        auto& ribbed = attempts_[0].candidates;
        const auto& toothed = attempts_[1].candidates;
        if (toothed.empty() || phrase_.saidRibbed) {
            // 500L075 is no ribbed belt either: its fault is that of the toothed one.
            if (ribbed.empty() && attempts_[1].fault) attempts_[0].fault.reset();
            return;
        }
        const bool code = std::any_of(toothed.begin(), toothed.end(),
                                      [](const Candidate& c) { return c.widthListed && c.widthByCode; });
        ribbed.erase(std::remove_if(ribbed.begin(), ribbed.end(),
                                    [&](const Candidate& c) { return code || !isLikely(c); }),
                     ribbed.end());
        if (ribbed.empty()) withWidths();
    }

    /// "30 8M 1200": where 30 is a width that is sold of one tooth, it does not count belts of another.
    void dropCountedBelts() {
        const auto listed = [](const Attempt& attempt) {
            return std::any_of(attempt.candidates.begin(), attempt.candidates.end(),
                               [](const Candidate& c) { return c.widthListed; });
        };
        if (std::none_of(attempts_.begin(), attempts_.end(), listed)) return;
        for (Attempt& attempt : attempts_) {
            auto& all = attempt.candidates;
            const auto counted = [](const Candidate& c) { return !c.reading.width && c.roles.quantity >= 0; };
            if (std::all_of(all.begin(), all.end(), counted)) continue;
            all.erase(std::remove_if(all.begin(), all.end(), counted), all.end());
        }
    }

    /// M stands for MXL only with a length in millimetres that is made: 6 M / 182.88.
    void dropUnlistedMxl() {
        for (std::size_t i = 0; i < ways_.size(); ++i) {
            if (!ways_[i].style.millimetres) continue;
            auto& all = attempts_[i].candidates;
            const auto unlisted = [&](const Candidate& c) {
                return !tables_.made(c.reading.belt.profile, c.reading.belt.length);
            };
            all.erase(std::remove_if(all.begin(), all.end(), unlisted), all.end());
        }
    }

    bool isLikely(const Candidate& candidate) const {
        const bool fewRibs = !candidate.reading.width || candidate.reading.width->ribs() <= Ribs{40};
        return fewRibs && tables_.made(candidate.reading.belt.profile, candidate.reading.belt.length);
    }

    /// No ribbed belt is meant, so 10 behind H is its width after all.
    void withWidths() {
        Style plain = ways_[1].style;
        plain.ribbedToo = false;
        attempts_[1] = readToothed(phrase_, *ways_[1].profile, plain, tables_);
    }

    ReadFault bestFault() const {
        const Attempt* best = nullptr;
        for (const Attempt& attempt : attempts_)
            if (attempt.fault && (!best || attempt.faultScore > best->faultScore)) best = &attempt;
        if (isUnknownPitch()) return {Fault::UnknownProfile, unknownPitch(), {}, {}};
        return best ? *best->fault : ReadFault{Fault::NoLength, {}, {}, {}};
    }

    /// "9M 1200 30": no profile has that pitch, and ribs are not written so before M.
    bool isUnknownPitch() const {
        return ways_.front().profile->ribbed() && phrase_.mention.kind == Mention::Kind::Letter &&
               phrase_.mention.name == "M" && phrase_.gluedBefore &&
               phrase_.open[phrase_.before - 1].wholePart() <= 40;
    }
    std::string unknownPitch() const { return phrase_.open[phrase_.before - 1].said + "M"; }

    // ---- the question

    std::optional<Question> question() const {
        if (mayBeVBelt()) return Question::ToothedOrVBelt;
        if (candidates_.size() == 1) return questionOfOne();
        const Candidate& first = candidates_.front();
        for (const Candidate& other : candidates_)
            if (other.reading.belt.profile != first.reading.belt.profile) return questionOfProfiles();
        for (const Candidate& other : candidates_)
            if (other.reading.belt.length != first.reading.belt.length)
                return questionOfLengths(first, other);
        return questionOfWidths();
    }

    std::optional<Question> questionOfOne() const {
        for (const Attempt& attempt : attempts_)
            if (attempt.askWhichIsLength) return Question::WhichIsLength;
        if (candidates_.front().reading.width) return std::nullopt;
        const Profile* profile = tables_.profile(candidates_.front().reading.belt.profile);
        return profile->ribbed() ? Question::HowManyRibs : Question::HowWide;
    }

    Question questionOfProfiles() const {
        return phrase_.mention.kind == Mention::Kind::BarePitch ? Question::WhichToothShape
                                                                : Question::ToothedOrRibbed;
    }

    Question questionOfLengths(const Candidate& a, const Candidate& b) const {
        if (a.roles != b.roles) return Question::WhichIsLength;
        if (a.reading.belt.profile == "MXL") return Question::WhichMxlCode;
        return a.basis == b.basis ? Question::HowLong : Question::MillimetreOrInch;
    }

    Question questionOfWidths() const {
        const Profile* profile = tables_.profile(candidates_.front().reading.belt.profile);
        if (profile->ribbed()) return Question::HowManyRibs;
        for (const Candidate& candidate : candidates_)
            if (candidate.roles != candidates_.front().roles) return Question::HowWide;
        return profile->family == Family::CurvilinearS ? Question::WidthTimesTen : Question::MillimetreOrInch;
    }

    /// 5M 280 without a width may be a narrow V-belt; teeth or a tooth said rule that out.
    bool mayBeVBelt() const {
        const bool said = phrase_.tooth || phrase_.teeth || phrase_.saidToothed || phrase_.doubleSided;
        if (phrase_.mention.kind != Mention::Kind::BarePitch || said) return false;
        const TradeWord* word = tables_.tradeWord(phrase_.mention.name);
        const bool narrow = word && word->kind == TradeWord::Kind::VBeltToo;
        return narrow && std::none_of(candidates_.begin(), candidates_.end(),
                                      [](const Candidate& c) { return c.reading.width.has_value(); });
    }

    const Phrase& phrase_;
    const Tables& tables_;
    std::vector<Way> ways_;
    std::vector<Attempt> attempts_;
    std::vector<Candidate> candidates_;
};

} // namespace

Understanding choose(const Phrase& phrase, const Tables& tables) { return Chooser{phrase, tables}.run(); }

} // namespace riband::belt::reading
