#include "core/measure/csv.h"

#include <algorithm>
#include <array>
#include <csv.h>

namespace riband {
namespace {

constexpr std::size_t longestRow = 64u << 10;

/// The length of the UTF-8 character that begins at `text[at]`, 0 if it is none (overlong forms and
/// surrogates too).
std::size_t utf8Length(std::string_view text, std::size_t at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(at);
    const std::size_t length = lead < 0x80   ? 1
                               : lead < 0xC2 ? 0
                               : lead < 0xE0 ? 2
                               : lead < 0xF0 ? 3
                               : lead < 0xF5 ? 4
                                             : 0;
    if (length == 0 || at + length > text.size()) return 0;
    for (std::size_t i = 1; i < length; ++i)
        if ((byte(at + i) & 0xC0) != 0x80) return 0;
    if (length == 1) return 1;
    const unsigned char second = byte(at + 1);
    const bool wrong = (lead == 0xE0 && second < 0xA0) || (lead == 0xED && second > 0x9F) ||
                       (lead == 0xF0 && second < 0x90) || (lead == 0xF4 && second > 0x8F);
    return wrong ? 0 : length;
}

/// Faults of the bytes themselves, found before the rows are taken apart.
std::optional<CsvFault> faultOfBytes(std::string_view text) {
    std::size_t line = 1;
    for (std::size_t at = 0; at < text.size();) {
        if (text[at] == '\0') return CsvFault{CsvFault::Kind::NulCharacter, line, 0, {}};
        const std::size_t length = utf8Length(text, at);
        if (length == 0) return CsvFault{CsvFault::Kind::NotUtf8, line, 0, {}};
        if (text[at] == '\n') ++line;
        at += length;
    }
    return std::nullopt;
}

/// What the head line has most of outside of quotes; a comma if it has none.
char separatorOf(std::string_view text) {
    constexpr std::string_view known = "\t|,;"; // of as many, the first
    std::array<std::size_t, known.size()> counts{};
    bool quoted = false;
    for (const char c : text.substr(0, text.find('\n'))) {
        if (c == '"') quoted = !quoted;
        if (const auto which = known.find(c); !quoted && which != std::string_view::npos) ++counts[which];
    }
    const auto most = std::max_element(counts.begin(), counts.end());
    return *most == 0 ? ',' : known[static_cast<std::size_t>(most - counts.begin())];
}

/// What the parser's callbacks fill.
struct Collector {
    std::vector<CsvTable::Row> rows;
    std::vector<std::string> fields;
    std::size_t line = 1;
    std::size_t rowLine = 1;
    std::size_t rowBytes = 0;

    static void field(void* bytes, std::size_t length, void* self) {
        static_cast<Collector*>(self)->fields.emplace_back(static_cast<const char*>(bytes), length);
    }
    static void row(int, void* self) {
        auto& collector = *static_cast<Collector*>(self);
        collector.rows.push_back({collector.rowLine, std::move(collector.fields)});
        collector.fields.clear();
        collector.rowBytes = 0;
    }
};

/// libcsv's state, freed whatever happens.
class Parser {
public:
    explicit Parser(char separator) {
        csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI);
        csv_set_delim(&parser_, static_cast<unsigned char>(separator));
    }
    ~Parser() { csv_free(&parser_); }
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;
    /// Byte by byte, so that a fault is known to its line.
    bool take(char c, Collector& into) {
        return csv_parse(&parser_, &c, 1, Collector::field, Collector::row, &into) == 1;
    }
    bool finish(Collector& into) { return csv_fini(&parser_, Collector::field, Collector::row, &into) == 0; }

private:
    csv_parser parser_{};
};

std::optional<CsvFault> collect(std::string_view text, Collector& into) {
    Parser parser{separatorOf(text)};
    const auto here = [&](CsvFault::Kind kind) {
        return CsvFault{kind, into.line, into.fields.size() + 1, {}};
    };
    for (const char c : text) {
        const bool emptyLine = into.rowBytes == 0 && (c == '\r' || c == '\n');
        if (!emptyLine && into.rowBytes++ == 0) into.rowLine = into.line;
        if (into.rowBytes > longestRow) return here(CsvFault::Kind::LineTooLong);
        if (!parser.take(c, into)) return here(CsvFault::Kind::OpenQuote);
        if (c == '\n') ++into.line;
    }
    if (!parser.finish(into)) return here(CsvFault::Kind::OpenQuote);
    return std::nullopt;
}

std::optional<CsvFault> faultOfHead(const CsvTable::Row& head) {
    for (std::size_t i = 0; i < head.fields.size(); ++i)
        if (!head.fields[i].empty() &&
            std::find(head.fields.begin(), head.fields.begin() + static_cast<std::ptrdiff_t>(i),
                      head.fields[i]) != head.fields.begin() + static_cast<std::ptrdiff_t>(i))
            return CsvFault{CsvFault::Kind::DoubleColumn, head.line, i + 1, head.fields[i]};
    return std::nullopt;
}

std::optional<CsvFault> faultOfRows(const std::vector<CsvTable::Row>& rows, std::size_t fields) {
    for (const auto& row : rows)
        if (row.fields.size() != fields)
            return CsvFault{
                CsvFault::Kind::WrongFields, row.line, std::min(row.fields.size(), fields) + 1, {}};
    return std::nullopt;
}

bool looksLikeFormula(std::string_view text) {
    if (text.empty()) return false;
    const char first = text.front();
    if (first == '=' || first == '@' || first == '\t' || first == '\r') return true;
    if (first != '+' && first != '-') return false;
    return text.find_first_not_of("0123456789.,", 1) != std::string_view::npos || text.size() == 1;
}

} // namespace

Outcome<CsvTable, CsvFault> CsvTable::read(std::string_view text, std::size_t limit) {
    if (text.size() > limit) return CsvFault{CsvFault::Kind::TooLarge, 0, 0, {}};
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
    if (auto fault = faultOfBytes(text)) return *fault;
    Collector collected;
    if (auto fault = collect(text, collected)) return *fault;
    if (collected.rows.empty()) return CsvFault{CsvFault::Kind::NoHead, 1, 0, {}};
    if (auto fault = faultOfHead(collected.rows.front())) return *fault;
    CsvTable table;
    table.head_ = collected.rows.front().fields;
    table.rows_.assign(std::make_move_iterator(collected.rows.begin() + 1),
                       std::make_move_iterator(collected.rows.end()));
    if (auto fault = faultOfRows(table.rows_, table.head_.size())) return *fault;
    return table;
}

std::optional<std::size_t> CsvTable::column(std::string_view name) const {
    const auto found = std::find(head_.begin(), head_.end(), name);
    if (found == head_.end()) return std::nullopt;
    return static_cast<std::size_t>(found - head_.begin());
}

std::string asUtf8(std::string_view bytes) {
    const auto fault = faultOfBytes(bytes);
    if (!fault || fault->kind != CsvFault::Kind::NotUtf8) return std::string{bytes};
    std::string text;
    for (const char c : bytes) {
        const auto code = static_cast<unsigned char>(c);
        if (code < 0x80) {
            text += c;
            continue;
        }
        text += static_cast<char>(0xC0 | (code >> 6));
        text += static_cast<char>(0x80 | (code & 0x3F));
    }
    return text;
}

std::string csvValue(std::string_view field) {
    const auto first = field.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    field = field.substr(first, field.find_last_not_of(" \t") - first + 1);
    const bool guarded = field.size() > 1 && field[0] == '\'' &&
                         std::string_view{"=+-@"}.find(field[1]) != std::string_view::npos;
    return std::string{guarded ? field.substr(1) : field};
}

std::string csvField(std::string_view text) {
    std::string field = looksLikeFormula(text) ? "'" + std::string{text} : std::string{text};
    if (field.find_first_of(",;\"\r\n") == std::string::npos &&
        (field.empty() || (field.front() != ' ' && field.back() != ' ')))
        return field;
    std::string quoted = "\"";
    for (const char c : field)
        quoted += c == '"' ? "\"\"" : std::string(1, c);
    return quoted + '"';
}

} // namespace riband
