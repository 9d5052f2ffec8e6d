#include "core/measure/text.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <optional>

namespace riband {
namespace {

__extension__ using Wide = __int128; // products of 18 digits and a unit stay exact

/// An exact number as written: numerator / denominator, and the text behind it.
struct Number {
    Wide numerator = 0;
    Wide denominator = 1;
    bool isFraction = false;
    std::string_view unit;
};

constexpr int mostDigits = 18;

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isSpace(char c) { return c == ' ' || c == '\t'; }

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && isSpace(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isSpace(text.back()))
        text.remove_suffix(1);
    return text;
}

/// Takes leading digits off `text`.
Read<Wide> takeDigits(std::string_view& text) {
    Wide value = 0;
    int digits = 0;
    for (; !text.empty() && isDigit(text.front()); text.remove_prefix(1)) {
        if (value != 0 || text.front() != '0') ++digits;
        if (digits > mostDigits) return TextFault::TooLarge;
        value = value * 10 + (text.front() - '0');
    }
    return value;
}

/// Takes the decimals behind a point or comma off `text` and adds them to `number`.
std::optional<TextFault> takeDecimals(std::string_view& text, Number& number) {
    text.remove_prefix(1);
    const std::size_t all =
        static_cast<std::size_t>(std::find_if_not(text.begin(), text.end(), isDigit) - text.begin());
    std::string_view decimals = text.substr(0, all);
    text.remove_prefix(all);
    while (!decimals.empty() && decimals.back() == '0')
        decimals.remove_suffix(1);
    if (decimals.size() > 12) return TextFault::TooFine;
    for (const char c : decimals) {
        number.numerator = number.numerator * 10 + (c - '0');
        number.denominator *= 10;
    }
    return std::nullopt;
}

/// "3/4" or the "1/2" of "1 1/2", when `text` goes on with a fraction.
Read<bool> takeFraction(std::string_view& text, Number& number) {
    std::string_view rest = text;
    Wide whole = 0;
    Wide upper = number.numerator;
    if (!rest.empty() && isSpace(rest.front())) {
        rest = trimmed(rest);
        if (rest.empty() || !isDigit(rest.front())) return false;
        const auto read = takeDigits(rest);
        if (!read) return read.reason();
        whole = number.numerator;
        upper = *read;
    }
    if (rest.empty() || rest.front() != '/') return false;
    rest.remove_prefix(1);
    const auto lower = takeDigits(rest);
    if (!lower) return lower.reason();
    if (*lower == 0 || *lower > 1'000'000) return TextFault::NotANumber;
    number = {whole * *lower + upper, *lower, true, {}};
    text = rest;
    return true;
}

bool startsNumber(std::string_view text) {
    if (text.empty()) return false;
    if (isDigit(text.front())) return true;
    return (text.front() == '.' || text.front() == ',') && text.size() > 1 && isDigit(text[1]);
}

/// A whole number, decimal or fraction, then a unit (not yet looked at).
Read<Number> readNumber(std::string_view text) {
    text = trimmed(text);
    if (text.empty()) return TextFault::Empty;
    const bool negative = text.front() == '-';
    if (negative || text.front() == '+') text.remove_prefix(1);
    if (!startsNumber(text)) return TextFault::NotANumber;
    Number number;
    const auto whole = takeDigits(text);
    if (!whole) return whole.reason();
    number.numerator = *whole;
    if (!text.empty() && (text.front() == '.' || text.front() == ',')) {
        if (const auto fault = takeDecimals(text, number)) return *fault;
    } else if (const auto fraction = takeFraction(text, number); !fraction) {
        return fraction.reason();
    }
    if (negative) number.numerator = -number.numerator;
    number.unit = trimmed(text);
    return number;
}

std::string lower(std::string_view text) {
    std::string result{text};
    std::transform(result.begin(), result.end(), result.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return result;
}

struct LengthUnit {
    std::int64_t nanometres;
    bool inch;
};

Read<LengthUnit> lengthUnit(const Number& number) {
    const std::string unit = lower(number.unit);
    if (unit == "in" || unit == "inch" || unit == "inches" || unit == "\"" || unit == "''" ||
        unit == "\u2033")
        return LengthUnit{25'400'000, true};
    if (unit.empty() && number.isFraction) return LengthUnit{25'400'000, true};
    if (number.isFraction) return TextFault::UnknownUnit;
    if (unit.empty() || unit == "mm") return LengthUnit{1'000'000, false};
    if (unit == "cm") return LengthUnit{10'000'000, false};
    if (unit == "m") return LengthUnit{1'000'000'000, false};
    return TextFault::UnknownUnit;
}

/// dividend / divisor as a whole number; inches may be rounded (halves up), all else must go in evenly.
Read<std::int64_t> wholeOf(Wide dividend, Wide divisor, bool mayRound, std::int64_t most) {
    if (dividend < 0) return TextFault::Negative;
    if (dividend % divisor != 0 && !mayRound) return TextFault::TooFine;
    const Wide result = (2 * dividend + divisor) / (2 * divisor);
    if (result > most) return TextFault::TooLarge;
    return static_cast<std::int64_t>(result);
}

Read<std::int64_t> readNanometres(std::string_view text, std::int64_t step, std::int64_t mostSteps) {
    const auto number = readNumber(text);
    if (!number) return number.reason();
    const auto unit = lengthUnit(*number);
    if (!unit) return unit.reason();
    return wholeOf(number->numerator * unit->nanometres, number->denominator * step, unit->inch, mostSteps);
}

std::int64_t powerOfTen(int exponent) {
    std::int64_t power = 1;
    for (int i = 0; i < exponent; ++i)
        power *= 10;
    return power;
}

/// A plain signed number times `scale`, which must be whole.
Read<std::int64_t> readScaled(std::string_view text, std::int64_t scale, std::string_view unit,
                              std::int64_t most) {
    const auto number = readNumber(text);
    if (!number) return number.reason();
    if (number->isFraction) return TextFault::NotANumber;
    if (!number->unit.empty() && number->unit != unit) return TextFault::UnknownUnit;
    const bool negative = number->numerator < 0;
    const auto size = wholeOf((negative ? -number->numerator : number->numerator) * scale,
                              number->denominator, false, most);
    if (!size) return size.reason();
    return negative ? -*size : *size;
}

/// value / 10^places with at least `least` decimals and no more zeros than that.
std::string decimal(std::int64_t value, int places, int least) {
    const bool negative = value < 0;
    std::string digits = std::to_string(value);
    if (negative) digits.erase(0, 1);
    const auto count = static_cast<std::size_t>(places);
    if (digits.size() <= count) digits.insert(0, count + 1 - digits.size(), '0');
    std::string decimals = digits.substr(digits.size() - count);
    digits.resize(digits.size() - count);
    while (decimals.size() > static_cast<std::size_t>(least) && decimals.back() == '0')
        decimals.pop_back();
    return (negative ? "-" : "") + digits + (decimals.empty() ? "" : "." + decimals);
}

} // namespace

Read<Width> readWidth(std::string_view text) {
    const auto um = readNanometres(text, 1000, 100'000'000);
    if (!um) return um.reason();
    return Width::micrometres(*um);
}

Read<Length> readLength(std::string_view text) {
    const auto nm = readNanometres(text, 1, 10'000'000'000'000);
    if (!nm) return nm.reason();
    return Length::nanometres(*nm);
}

Read<Ribs> readRibs(std::string_view text) {
    const auto number = readNumber(text);
    if (!number) return number.reason();
    const std::string unit = lower(number->unit);
    if (!unit.empty() && unit != "rib" && unit != "ribs") return TextFault::UnknownUnit;
    const auto count = wholeOf(number->numerator, number->denominator, false, 100'000);
    if (!count) return count.reason();
    return Ribs{*count};
}

Read<Extent> readExtent(std::string_view text, Unit unit) {
    if (unit == Unit::Rib) {
        const auto ribs = readRibs(text);
        if (!ribs) return ribs.reason();
        return Extent{*ribs};
    }
    const auto width = readWidth(text);
    if (!width) return width.reason();
    return Extent{*width};
}

Read<Money> readMoney(std::string_view text, const Currency& currency) {
    const auto units = readScaled(text, powerOfTen(currency.decimals()), "", 1'000'000'000'000);
    if (!units) // an amount has no unit that could be another one
        return units.reason() == TextFault::UnknownUnit ? TextFault::NotANumber : units.reason();
    return Money::minor(*units);
}

Read<WidthPrice> readWidthPrice(std::string_view text, const Currency& currency) {
    const auto value = readScaled(text, powerOfTen(currency.decimals()) * 1000, "", 1'000'000'000);
    if (!value) return value.reason();
    if (*value < 0) return TextFault::Negative;
    return WidthPrice::thousandths(*value);
}

Read<Permille> readPercent(std::string_view text) {
    const auto value = readScaled(text, 10, "%", 1'000'000);
    if (!value) return value.reason();
    return Permille{*value};
}

std::string printMillimetres(Width width) { return decimal(width.inMicrometres(), 3, 0); }
std::string printMillimetres(Length length) { return decimal(length.inNanometres(), 6, 0); }
std::string printMillimetres(std::int64_t micrometres) { return decimal(micrometres, 3, 0); }

std::string printCount(Extent extent) {
    return extent.unit() == Unit::Rib ? std::to_string(extent.count()) : printMillimetres(extent.width());
}

std::string printMoney(Money money, const Currency& currency) {
    return decimal(money.inMinor(), currency.decimals(), currency.decimals());
}

std::string printWidthPrice(WidthPrice price, const Currency& currency) {
    return decimal(price.inThousandths(), currency.decimals() + 3, currency.decimals());
}

std::string printPercent(Permille share) { return decimal(share.count(), 1, 0); }

} // namespace riband
