#include "core/belt/reading/said_length.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

using Remark = Reading::Remark;

/// Makers print one belt up to 6 mm apart: 470J is 1194 and 1200.
constexpr std::int64_t samePrintedBelt = 6'000'000;

std::int64_t distance(Length a, Length b) { return std::abs(a.inNanometres() - b.inNanometres()); }

LengthRead madeAs(const MadeLength& made, Basis basis, Length said) {
    LengthRead read{std::nullopt, made.length, true, basis, std::nullopt};
    const auto off = distance(made.length, said);
    if (off > 0)
        read.remark =
            off <= 1'000'000 && basis != Basis::Millimetres ? Remark::CodeRounded : Remark::MatchedLength;
    return read;
}

/// Ribbed lengths are printed in whole millimetres.
Length wholeMillimetres(Length said) {
    return Length::nanometres((said.inNanometres() + 500'000) / 1'000'000 * 1'000'000);
}

/// The nearest made length within 6 mm; of two equally near ones the one that more makers have. Else the
/// length itself, which nobody lists.
LengthRead nearest(Length said, Basis basis, const Profile& profile, const Tables& tables) {
    const Length whole = wholeMillimetres(said);
    const MadeLength* best = nullptr;
    for (const MadeLength* made : tables.around(profile.name, whole)) {
        if (distance(made->length, whole) > samePrintedBelt) continue;
        const bool nearer = !best || distance(made->length, whole) < distance(best->length, whole);
        const bool even = best && distance(made->length, whole) == distance(best->length, whole);
        if (nearer || (even && made->makers > best->makers)) best = made;
    }
    if (best) return madeAs(*best, basis, said);
    return {std::nullopt, whole, false, basis,
            whole == said ? std::nullopt : std::optional{Remark::CodeRounded}};
}

bool isPlausible(Length length, const Profile& profile, const Tables& tables) {
    const auto& all = tables.lengths(profile.name);
    if (all.empty()) return true;
    const auto shortest = all.front().length.inNanometres(), longest = all.back().length.inNanometres();
    return length.inNanometres() * 10 >= shortest * 7 && length.inNanometres() * 10 <= longest * 12;
}

/// A metric number: the made length itself, else another number that a maker prints for it, else the nearest.
std::vector<LengthRead> metric(const SaidNumber& number, const Profile& profile, const Tables& tables) {
    const Length said = number.millimetres();
    if (!isPlausible(said, profile, tables)) return {};
    const Basis basis = number.unit == Measure::Inch ? Basis::Inches : Basis::Millimetres;
    if (const MadeLength* made = tables.made(profile.name, said)) return {madeAs(*made, basis, said)};
    if (number.isBare())
        for (const MadeLength* made : tables.coded(profile.name, number.said))
            return {madeAs(*made, basis, said)};
    return {nearest(said, basis, profile, tables)};
}

/// "470" of 470J: tenths of an inch.
std::vector<LengthRead> coded(const SaidNumber& number, const Profile& profile, const Tables& tables) {
    if (number.unit != Measure::None || number.leadingZero) return {};
    const Length said = Length::nanometres(number.millionths * 254 / 100);
    if (number.whole())
        for (const MadeLength* made : tables.coded(profile.name, number.said + profile.name.back()))
            return {madeAs(*made, Basis::Code, said)};
    if (!isPlausible(said, profile, tables)) return {};
    return {nearest(said, Basis::Code, profile, tables)};
}

} // namespace

std::vector<LengthRead> ribbedLengths(const SaidNumber& number, const Profile& profile, bool letterOnly,
                                      bool inchForm, const Tables& tables) {
    if (number.negative || number.millionths == 0 || number.leadingZero) return {};
    if (!letterOnly || number.unit != Measure::None) return metric(number, profile, tables);
    auto byCode = coded(number, profile, tables);
    if (inchForm && !byCode.empty()) return byCode;
    auto reads = metric(number, profile, tables);
    for (const LengthRead& read : byCode)
        if (std::none_of(reads.begin(), reads.end(),
                         [&](const LengthRead& other) { return other.length == read.length; }))
            reads.push_back(read);
    return reads;
}

} // namespace riband::belt::reading
