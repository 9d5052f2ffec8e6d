#include "core/belt/reading/said_length.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

using Remark = Reading::Remark;
constexpr std::int64_t tenthOfInch = 2'540'000; // nm

/// Keeps track of the readings of one number, each length once.
class Reads {
public:
    Reads(const Profile& profile, const Tables& tables) : profile_{profile}, tables_{tables} {}

    void add(std::optional<std::int64_t> teeth, Basis basis, Length said) {
        if (!teeth || *teeth < 1) return;
        LengthRead read = lengthOfTeeth(*teeth, basis, profile_, tables_);
        const auto same = [&](const LengthRead& other) { return other.length == read.length; };
        if (std::any_of(reads_.begin(), reads_.end(), same)) return;
        if (basis != Basis::Count && said != read.length) read.remark = Remark::CodeRounded;
        reads_.push_back(read);
    }

    /// The listed ones if any is, else those of at least 20 teeth if any is.
    std::vector<LengthRead> likely() const {
        auto kept = only([](const LengthRead& read) { return read.listed; });
        if (kept.empty()) kept = only([](const LengthRead& read) { return read.teeth->count() >= 20; });
        return kept.empty() ? reads_ : kept;
    }

    const std::vector<LengthRead>& all() const { return reads_; }

private:
    template <class Test>
    std::vector<LengthRead> only(Test test) const {
        std::vector<LengthRead> kept;
        std::copy_if(reads_.begin(), reads_.end(), std::back_inserter(kept), test);
        return kept;
    }
    const Profile& profile_;
    const Tables& tables_;
    std::vector<LengthRead> reads_;
};

Length tenths(const SaidNumber& number) { return Length::nanometres(number.millionths * 254 / 100); }
Length inches(const SaidNumber& number) { return Length::nanometres(number.millionths * 254 / 10); }
Length bare(const SaidNumber& number) { return Length::nanometres(number.millionths); }

/// Half of the last place that was said, in `one` of the unit.
Length halfPlace(const SaidNumber& number, std::int64_t one) {
    std::int64_t half = one / 2;
    for (int i = 0; i < number.decimals; ++i)
        half /= 10;
    return Length::nanometres(half);
}

/// As a code: the lists first, for some makers' codes are a quarter of an inch off; else the nearest whole
/// number of teeth within half a tenth of an inch.
void addCode(Reads& reads, const SaidNumber& number, const Profile& profile, const Tables& tables) {
    const Length said = tenths(number);
    const auto listed = tables.coded(profile.name, number.said);
    for (const MadeLength* made : listed)
        reads.add(made->teeth->count(), Basis::Code, said);
    if (listed.empty())
        reads.add(teethNear(said, profile.pitch, Length::nanometres(tenthOfInch / 2)), Basis::Code, said);
}

void addMillimetres(Reads& reads, const SaidNumber& number, const Profile& profile) {
    const Length said = number.unit == Measure::None ? bare(number) : number.millimetres();
    const Length slack = number.unit == Measure::None || number.unit == Measure::Millimetre
                             ? std::max(halfPlace(number, 1'000'000), Length::nanometres(5'000))
                             : Length::nanometres(500'000);
    reads.add(teethNear(said, profile.pitch, slack), Basis::Millimetres, said);
}

/// A whole number that is no code is millimetres where such a length is made: 819 for 819.15.
void addListedMillimetres(Reads& reads, const SaidNumber& number, const Profile& profile,
                          const Tables& tables) {
    const auto teeth = teethNear(bare(number), profile.pitch, halfPlace(number, 1'000'000));
    if (teeth && tables.made(profile.name, profile.pitch * Teeth{*teeth}))
        reads.add(teeth, Basis::Millimetres, bare(number));
}

void addInches(Reads& reads, const SaidNumber& number, const Profile& profile) {
    const Length said = inches(number);
    // 37.5 may be 37.5 or 37.54: half of a tenth, but never less than a hundredth.
    const Length slack = std::max(halfPlace(number, 10 * tenthOfInch), Length::nanometres(tenthOfInch / 10));
    reads.add(teethNear(said, profile.pitch, std::min(slack, Length::nanometres(tenthOfInch / 2))),
              Basis::Inches, said);
}

} // namespace

std::vector<LengthRead> inchLengths(const SaidNumber& number, const Profile& profile, const Tables& tables) {
    Reads reads{profile, tables};
    if (number.unit == Measure::Inch)
        addInches(reads, number, profile);
    else if (number.unit != Measure::None)
        addMillimetres(reads, number, profile);
    else if (number.whole()) {
        addCode(reads, number, profile, tables);
        if (reads.all().empty()) addListedMillimetres(reads, number, profile, tables);
    } else {
        addInches(reads, number, profile);
        reads.add(teethNear(tenths(number), profile.pitch, Length::nanometres(0)), Basis::Code,
                  tenths(number));
        addMillimetres(reads, number, profile);
    }
    return reads.likely();
}

std::vector<LengthRead> mxlLengths(const SaidNumber& number, const Profile& profile, const Tables& tables) {
    constexpr std::int64_t mostTeeth = 1000;
    Reads reads{profile, tables};
    const auto exactly = [&](Length said) { return teethNear(said, profile.pitch, Length::nanometres(0)); };
    if (number.unit == Measure::Inch)
        addInches(reads, number, profile);
    else if (number.unit != Measure::None)
        addMillimetres(reads, number, profile);
    else if (!number.whole()) {
        // One decimal is the code of one maker and of this program: 80.0.
        reads.add(exactly(tenths(number)), Basis::Tenths, tenths(number));
        if (number.decimals > 1 || reads.all().empty()) addMillimetres(reads, number, profile);
    } else {
        // One belt has four codes: 80 is 100 teeth in tenths, 80 teeth, or 10 teeth in hundredths of an inch.
        const Length said = tenths(number), hundredth = Length::nanometres(said.inNanometres() / 10);
        reads.add(teethNear(hundredth, profile.pitch, Length::nanometres(tenthOfInch / 20)),
                  Basis::Hundredths, hundredth);
        reads.add(teethNear(said, profile.pitch, Length::nanometres(tenthOfInch / 2)), Basis::Tenths, said);
        reads.add(number.wholePart(), Basis::Count, said);
        auto likely = reads.likely();
        // Only one is listed: the standard's own way, tenths, stays a question beside it.
        if (likely.size() == 1 && likely.front().basis != Basis::Tenths)
            for (const LengthRead& read : reads.all())
                if (read.basis == Basis::Tenths && read.teeth->count() <= mostTeeth) likely.push_back(read);
        return likely;
    }
    return reads.likely();
}

} // namespace riband::belt::reading
