#include "core/belt/reading/said_width.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

constexpr std::int64_t inchNm = 25'400'000;

Width rounded(std::int64_t nanometres) { return Width::micrometres((nanometres + 500) / 1000); }

const StandardWidth* listedWidth(Width width, const Profile& profile, const Tables& tables) {
    for (const StandardWidth& listed : tables.widths(profile.name))
        if (listed.extent.width() == width) return &listed;
    return nullptr;
}

/// Belts are not sold much narrower than the narrowest in the list.
bool isPlausible(Width width, const Profile& profile, const Tables& tables) {
    const auto& listed = tables.widths(profile.name);
    if (listed.empty()) return width.inMicrometres() * 10 >= 3'000 * 10;
    return width.inMicrometres() * 10 >= listed.front().extent.count() * 6;
}

WidthRead readOf(Width width, const Profile& profile, const Tables& tables) {
    const bool listed = listedWidth(width, profile, tables) != nullptr;
    return {width, listed, listed || isPlausible(width, profile, tables), false, false};
}

/// Whether a number said to `decimals` places is this width rounded, or, if it was said whole, cut: 50 for
/// 50.8. More than 0.4 mm is no rounding any more: 10 is not 9.525.
bool isLabelOf(Width listed, const SaidNumber& number, bool cutToo) {
    std::int64_t place = 1'000;
    for (int i = 0; i < number.decimals && place > 1; ++i)
        place /= 10;
    const std::int64_t said = number.millimetres().inNanometres() / 1000, width = listed.inMicrometres();
    if ((width + place / 2) / place * place == said && std::abs(width - said) <= 400) return true;
    return cutToo && number.decimals == 0 && width / place * place == said;
}

/// The listed widths that the number is a label of, nearest first; else the number itself.
std::vector<WidthRead> labelled(const SaidNumber& number, const Profile& profile, const Tables& tables) {
    const Width exact = rounded(number.millimetres().inNanometres());
    const WidthRead itself = readOf(exact, profile, tables);
    if (itself.listed) return {itself};
    for (const bool cutToo : {false, number.unit == Measure::None})
        for (const StandardWidth& listed : tables.widths(profile.name))
            if (isLabelOf(listed.extent.width(), number, cutToo))
                return {{listed.extent.width(), true, true, true, false}};
    return {itself};
}

/// Inches: exact, or a listed width that was rounded or cut to the decimals said (0.31 for 5/16).
WidthRead ofInches(const SaidNumber& number, const Profile& profile, const Tables& tables) {
    const std::int64_t nm = number.millionths * 254 / 10;
    std::int64_t place = inchNm;
    for (int i = 0; i < number.decimals && place > 2540; ++i)
        place /= 10;
    if (!number.fraction && number.decimals >= 2)
        for (const StandardWidth& listed : tables.widths(profile.name)) {
            const std::int64_t off = listed.extent.count() * 1000 - nm;
            if (off != 0 && std::abs(off) * 4 <= place * 3)
                return {listed.extent.width(), true, true, std::abs(off) > 1000, false};
        }
    return readOf(rounded(nm), profile, tables);
}

bool isListedCode(std::string_view digits, const Profile& profile, const Tables& tables) {
    const auto& all = tables.widths(profile.name);
    return std::any_of(all.begin(), all.end(), [&](const StandardWidth& w) { return w.code == digits; });
}

std::string threeDigits(std::int64_t value) {
    std::string digits = std::to_string(value);
    return digits.size() < 3 ? std::string(3 - digits.size(), '0') + digits : digits;
}

WidthRead byCode(std::int64_t code, const Profile& profile, const Tables& tables) {
    WidthRead read = readOf(widthOfCode(code), profile, tables);
    read.byCode = true;
    return read;
}

/// A whole number behind an inch profile: a code, millimetres, or whole inches.
std::vector<WidthRead> bareInchWidths(const SaidNumber& number, const Profile& profile,
                                      const Tables& tables) {
    const std::int64_t value = number.wholePart();
    if (number.leadingZero) return {byCode(value, profile, tables)};
    std::vector<WidthRead> reads;
    if (value >= 10 && isListedCode(threeDigits(value), profile, tables))
        reads.push_back(byCode(value, profile, tables));
    auto millimetres = labelled(number, profile, tables).front();
    if (millimetres.listed || (reads.empty() && millimetres.plausible)) reads.push_back(millimetres);
    if (value < 10 && listedWidth(Width::micrometres(value * 25'400), profile, tables))
        reads.push_back(readOf(Width::micrometres(value * 25'400), profile, tables));
    // 125 may be 1 1/4 in or 125 mm: neither is listed, so both stay.
    if (value >= 100 && reads.size() == 1 && !reads.front().listed && !reads.front().byCode)
        reads.insert(reads.begin(), byCode(value, profile, tables));
    if (reads.empty()) reads.push_back(millimetres);
    return reads;
}

std::vector<WidthRead> inchWidths(const SaidNumber& number, const Profile& profile, const Tables& tables) {
    if (number.unit == Measure::Inch) return {ofInches(number, profile, tables)};
    if (number.unit != Measure::None) return labelled(number, profile, tables);
    if (number.whole()) return bareInchWidths(number, profile, tables);
    const WidthRead inches = ofInches(number, profile, tables);
    const WidthRead millimetres = labelled(number, profile, tables).front();
    if (inches.listed != millimetres.listed) return {inches.listed ? inches : millimetres};
    if (inches.listed) return {inches, millimetres};
    return {number.wholePart() < 2 ? inches : millimetres};
}

/// S belts are printed with tenths of a millimetre (400-S14M-1008), or in plain millimetres by some.
std::vector<WidthRead> tenthsOrPlain(const SaidNumber& number, const Profile& profile, bool first,
                                     const Tables& tables) {
    const WidthRead plain = readOf(rounded(number.millionths), profile, tables);
    WidthRead tenth = readOf(rounded(number.millionths / 10), profile, tables);
    tenth.byCode = true;
    if (tenth.listed && !plain.listed) return {tenth};
    if (plain.listed && first) {
        tenth.plausible = true; // 50 S8M 800 may be 5.0 mm, narrow as that is
        return {plain, tenth};
    }
    if (plain.listed) return {plain};
    if (number.wholePart() >= 100 && tenth.plausible) return {tenth, plain};
    return {plain};
}

} // namespace

Width widthOfCode(std::int64_t hundredths) {
    // Sixteenths are written as hundredths, a half of one cut: 12.5 is 012, 18.75 is 019.
    for (std::int64_t sixteenths = 1; sixteenths < 16; ++sixteenths)
        if ((sixteenths * 100 + 7) / 16 == hundredths % 100)
            return rounded(hundredths / 100 * inchNm + sixteenths * inchNm / 16);
    return rounded(hundredths * inchNm / 100);
}

std::vector<WidthRead> saidWidths(const SaidNumber& number, const Profile& profile, bool first,
                                  const Tables& tables) {
    if (number.negative || number.millionths == 0) return {};
    const bool metricInch = profile.name == "XXL" || profile.name == "40DP";
    if (profile.family == Family::InchTrapezoidal && !metricInch) return inchWidths(number, profile, tables);
    if (profile.family == Family::CurvilinearS && number.isBare())
        return tenthsOrPlain(number, profile, first, tables);
    return {readOf(rounded(number.millimetres().inNanometres()), profile, tables)};
}

} // namespace riband::belt::reading
