#include "core/measure/date.h"

#include <array>
#include <cstdint>
#include <cstdio>

namespace riband {
namespace {

/// All of `text` as a number of `least` to `most` digits.
std::optional<int> digits(std::string_view text, std::size_t least, std::size_t most) {
    if (text.size() < least || text.size() > most) return std::nullopt;
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

std::optional<Date> dateOf(std::optional<int> year, std::optional<int> month, std::optional<int> day) {
    if (!year || !month || !day || *year < 1970) return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year{*year},
                                           std::chrono::month{static_cast<unsigned>(*month)},
                                           std::chrono::day{static_cast<unsigned>(*day)}};
    if (!date.ok()) return std::nullopt;
    return Date{date};
}

/// The three parts of "a.b.c".
std::optional<std::array<std::string_view, 3>> threeParts(std::string_view text, char separator) {
    const auto first = text.find(separator);
    if (first == std::string_view::npos) return std::nullopt;
    const auto second = text.find(separator, first + 1);
    if (second == std::string_view::npos) return std::nullopt;
    return std::array{text.substr(0, first), text.substr(first + 1, second - first - 1),
                      text.substr(second + 1)};
}

std::optional<Date> readDayFirst(std::string_view text, char separator) {
    const auto parts = threeParts(text, separator);
    if (!parts) return std::nullopt;
    return dateOf(digits((*parts)[2], 4, 4), digits((*parts)[1], 1, 2), digits((*parts)[0], 1, 2));
}

std::optional<Date> readYearFirst(std::string_view text) {
    const auto parts = threeParts(text, '-');
    if (!parts) return std::nullopt;
    return dateOf(digits((*parts)[0], 4, 4), digits((*parts)[1], 2, 2), digits((*parts)[2], 2, 2));
}

} // namespace

std::optional<Date> readDate(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    if (auto date = readYearFirst(text)) return date;
    if (auto date = readDayFirst(text, '.')) return date;
    return readDayFirst(text, '/');
}

std::string printDate(Date date) {
    const std::chrono::year_month_day day{date};
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(day.year()),
                  static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    return text.data();
}

std::optional<Moment> readMoment(std::string_view text) {
    if (text.size() != 24 || text[10] != 'T' || text[13] != ':' || text[16] != ':' || text[19] != '.' ||
        text[23] != 'Z')
        return std::nullopt;
    const auto date = readYearFirst(text.substr(0, 10));
    const auto hours = digits(text.substr(11, 2), 2, 2);
    const auto minutes = digits(text.substr(14, 2), 2, 2);
    const auto seconds = digits(text.substr(17, 2), 2, 2);
    const auto milliseconds = digits(text.substr(20, 3), 3, 3);
    if (!date || !hours || !minutes || !seconds || !milliseconds) return std::nullopt;
    if (*hours > 23 || *minutes > 59 || *seconds > 59) return std::nullopt;
    return Moment{*date} + std::chrono::hours{*hours} + std::chrono::minutes{*minutes} +
           std::chrono::seconds{*seconds} + std::chrono::milliseconds{*milliseconds};
}

std::string printMoment(Moment moment) {
    const Date date = dayOf(moment);
    const std::chrono::hh_mm_ss time{moment - date};
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "T%02d:%02d:%02d.%03dZ", static_cast<int>(time.hours().count()),
                  static_cast<int>(time.minutes().count()), static_cast<int>(time.seconds().count()),
                  static_cast<int>(time.subseconds().count()));
    return printDate(date) + text.data();
}

Date dayOf(Moment moment) { return std::chrono::floor<std::chrono::days>(moment); }

} // namespace riband
