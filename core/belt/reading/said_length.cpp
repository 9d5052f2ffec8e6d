#include "core/belt/reading/said_length.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

using Remark = Reading::Remark;

/// How far the true length may be from a said one: half of the last place.
Length slackOf(const SaidNumber& number) {
    std::int64_t nanometres = 500'000;
    for (int i = 0; i < number.decimals && nanometres > 10; ++i)
        nanometres /= 10;
    if (number.unit == Measure::Inch) nanometres = std::max<std::int64_t>(nanometres, 600'000);
    return Length::nanometres(nanometres);
}

std::vector<LengthRead> onlyIf(std::optional<std::int64_t> teeth, Basis basis, std::optional<Remark> remark,
                               const Profile& profile, const Tables& tables) {
    if (!teeth || *teeth < 1) return {};
    LengthRead read = lengthOfTeeth(*teeth, basis, profile, tables);
    read.remark = remark;
    return {read};
}

/// T2.5-177 is 177.5, S4.5M-239 is 238.5: makers leave out the half millimetre.
std::vector<LengthRead> withHalf(const SaidNumber& number, const Profile& profile, const Tables& tables) {
    const std::int64_t half = 500'000, value = number.millimetres().inNanometres();
    if (!number.whole() || profile.pitch.inNanometres() % 1'000'000 != half) return {};
    for (const std::int64_t full : {value + half, value - half})
        if (full > 0 && full % profile.pitch.inNanometres() == 0)
            return onlyIf(full / profile.pitch.inNanometres(), Basis::Millimetres, Remark::HalfLost, profile,
                          tables);
    return {};
}

/// "1.2" and "1,200" can only be metres: no belt is so short.
std::vector<LengthRead> asMetres(const SaidNumber& number, const Profile& profile, const Tables& tables) {
    const Length length = Length::nanometres(number.millionths * 1000);
    if (number.unit != Measure::None || number.decimals == 0 || number.wholePart() >= 30) return {};
    return onlyIf(teethNear(length, profile.pitch, Length::nanometres(0)), Basis::Millimetres, {}, profile,
                  tables);
}

std::vector<LengthRead> metricLengths(const SaidNumber& number, const Profile& profile,
                                      const Tables& tables) {
    const Length length = number.millimetres();
    const bool exact = number.unit != Measure::Inch;
    const auto teeth = teethNear(length, profile.pitch, exact ? Length::nanometres(0) : slackOf(number));
    if (teeth) {
        const bool rounded = profile.pitch.inNanometres() * *teeth != length.inNanometres();
        return onlyIf(teeth, exact ? Basis::Millimetres : Basis::Inches,
                      rounded ? std::optional{Remark::CodeRounded} : std::nullopt, profile, tables);
    }
    if (auto half = withHalf(number, profile, tables); !half.empty()) return half;
    return asMetres(number, profile, tables);
}

/// Old national sizes and the older fine pitch are named by their teeth; a number with a unit or decimals is
/// a length.
std::vector<LengthRead> countedLengths(const SaidNumber& number, const Profile& profile,
                                       const Tables& tables) {
    if (number.isBare()) return onlyIf(number.wholePart(), Basis::Count, {}, profile, tables);
    const auto teeth = teethNear(number.millimetres(), profile.pitch, slackOf(number));
    return onlyIf(teeth, Basis::Millimetres, Remark::CodeRounded, profile, tables);
}

} // namespace

std::optional<std::int64_t> teethNear(Length length, Length pitch, Length slack) {
    const std::int64_t p = pitch.inNanometres(), value = length.inNanometres();
    const std::int64_t teeth = (value + p / 2) / p;
    if (teeth < 1 || std::abs(teeth * p - value) > slack.inNanometres()) return std::nullopt;
    return teeth;
}

LengthRead lengthOfTeeth(std::int64_t teeth, Basis basis, const Profile& profile, const Tables& tables) {
    const Length length = profile.pitch * Teeth{teeth};
    return {Teeth{teeth}, length, tables.made(profile.name, length) != nullptr, basis, std::nullopt};
}

std::vector<LengthRead> toothedLengths(const SaidNumber& number, const Profile& profile,
                                       const Tables& tables) {
    if (number.leadingZero || number.negative || number.millionths == 0) return {};
    const std::string& base = profile.base.empty() ? profile.name : profile.base;
    if (base == "MXL") return mxlLengths(number, profile, tables);
    if (base == "XXL" || base == "40DP" || profile.family == Family::ModuleTrapezoidal)
        return countedLengths(number, profile, tables);
    if (profile.family == Family::InchTrapezoidal) return inchLengths(number, profile, tables);
    return metricLengths(number, profile, tables);
}

} // namespace riband::belt::reading
