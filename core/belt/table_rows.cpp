#include "core/belt/table_rows.h"

#include <charconv>

namespace riband::belt {
namespace {

constexpr std::int64_t million = 1'000'000;

bool digitsOnly(std::string_view text) {
    return !text.empty() && text.size() <= 9 &&
           text.find_first_not_of("0123456789") == std::string_view::npos;
}

std::int64_t number(std::string_view digits) {
    std::int64_t value = 0;
    for (const char digit : digits)
        value = value * 10 + (digit - '0');
    return value;
}

/// Nothing unless the text is digits, perhaps with a point and at most six more.
std::optional<std::int64_t> exactMillionths(std::string_view text) {
    const auto point = text.find('.');
    const auto before = text.substr(0, point);
    if (!digitsOnly(before)) return std::nullopt;
    if (point == std::string_view::npos) return number(before) * million;
    std::string after{text.substr(point + 1)};
    if (!digitsOnly(after) || after.size() > 6) return std::nullopt;
    after.resize(6, '0');
    return number(before) * million + number(after);
}

std::string said(const CsvFault& fault) {
    switch (fault.kind) {
    case CsvFault::Kind::WrongFields:
        return "the row has more or fewer fields than the head";
    case CsvFault::Kind::OpenQuote:
        return "a quote is never closed";
    case CsvFault::Kind::DoubleColumn:
        return "the column " + fault.name + " stands twice";
    default:
        return "the file is no table";
    }
}

} // namespace

void Field::fail(const std::string& what) const {
    throw TableFault{file_, line_, column_ + ": \"" + text_ + "\" " + what};
}

std::int64_t Field::whole() const {
    if (!digitsOnly(text_)) fail("is no whole number");
    return number(text_);
}

std::int64_t Field::millionths() const {
    const auto value = exactMillionths(text_);
    if (!value) fail("is no decimal of at most six places");
    return *value;
}

double Field::decimal() const {
    double value = 0;
    const char* end = text_.data() + text_.size();
    const auto [rest, error] = std::from_chars(text_.data(), end, value);
    if (error != std::errc{} || rest != end) fail("is no decimal");
    return value;
}

std::optional<double> Field::decimalIfAny() const {
    return empty() ? std::nullopt : std::optional{decimal()};
}

Length Field::length() const { return Length::nanometres(millionths()); }

std::optional<Length> Field::lengthIfAny() const { return empty() ? std::nullopt : std::optional{length()}; }

Width Field::width() const { return Width::micrometres((millionths() + 500) / 1000); }

std::optional<Width> Field::widthIfAny() const { return empty() ? std::nullopt : std::optional{width()}; }

Confidence Field::confidence() const {
    if (text_ == "confirmed") return Confidence::Confirmed;
    if (text_ == "one source") return Confidence::OneSource;
    if (text_ == "memory only") return Confidence::MemoryOnly;
    if (text_ == "common practice") return Confidence::CommonPractice;
    if (text_ == "computed") return Confidence::Computed;
    fail("is no mark of confidence");
}

std::vector<std::string> Field::words() const {
    std::vector<std::string> words;
    for (std::size_t at = 0; at < text_.size();) {
        const auto end = std::min(text_.find(' ', at), text_.size());
        if (end > at) words.push_back(text_.substr(at, end - at));
        at = end + 1;
    }
    return words;
}

Field TableRow::operator[](const std::string& column) const {
    const auto at = table_.column(column);
    if (!at) throw TableFault{file_, 1, "the column " + column + " is missing"};
    return {file_, row_.line, table_.head()[*at], row_.fields[*at]};
}

void TableRow::fail(const std::string& what) const { throw TableFault{file_, row_.line, what}; }

void eachRow(const TableTexts& texts, const std::string& file,
             const std::function<void(const TableRow&)>& take) {
    const auto text = texts.find(file);
    if (text == texts.end()) throw TableFault{file, 0, "the table is missing"};
    const auto table = CsvTable::read(text->second);
    if (!table) throw TableFault{file, table.reason().line, said(table.reason())};
    for (const auto& row : table->rows())
        take(TableRow{file, *table, row});
}

} // namespace riband::belt
