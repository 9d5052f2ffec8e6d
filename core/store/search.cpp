#include "core/store/search.h"

#include "core/measure/date.h"
#include "core/store/catalogue.h"
#include "core/store/inner.h"
#include "core/store/statement.h"

#include <algorithm>
#include <cctype>
#include <utility>

namespace riband::store {
namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isWordPart(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || (c & 0x80) != 0; }

/// "H8M" is asked for as 8M: the pitch and what follows, if letters stand on both sides of it.
std::string pitchFirst(const std::string& profile) {
    const auto digit = std::find_if(profile.begin(), profile.end(), isDigit);
    if (digit == profile.begin() || digit == profile.end() || isDigit(profile.back())) return {};
    return {digit, profile.end()};
}

// A day is one word that no figure begins: "30" asks for a width, never for the 30th.
#define DAY(column) "coalesce(' d' || strftime('%Y%m%d', p." column " * 86400, 'unixepoch'), '')"
#define ORDERS_OF(source)                                                                                    \
    "coalesce((SELECT ' ' || group_concat(o.code || ' ' || replace(o.code, '-', ''), ' ') FROM " source      \
    " JOIN order_line n ON n.id = s.line JOIN sales_order o ON o.id = n.sales_order"                         \
    " WHERE s.piece = p.id), '')"

#define CUT_FOR                                                                                              \
    "(SELECT m.piece, c.line FROM mounting m JOIN mounting_cut c ON c.mounting = m.id WHERE m.state <> 2) s"

#define WORDS                                                                                                \
    "INSERT INTO rack_text (rowid, words) SELECT p.id, p.code || ' ' || replace(p.code, '-', '') || ' '"     \
    " || b.words || ' '"                                                                                     \
    " || CASE p.kind WHEN 0 THEN 'sleeve' WHEN 1 THEN 'remnant offcut' ELSE 'ready belt' END || ' '"         \
    " || coalesce(l.name, '') || ' ' || p.batch || ' '"                                                      \
    " || printf('%.15g', CASE b.unit WHEN 0 THEN p.extent / 1000.0 ELSE p.extent END) || ' '"                \
    " || coalesce(d.supplier || ' ' || d.reference, '') || ' ' || b.body || ' ' || b.cord"                   \
    " || " DAY("received_day") " || " DAY("made_day") " || " ORDERS_OF(CUT_FOR) " || " ORDERS_OF(            \
        "taken_ready s") " FROM piece p JOIN belt b ON b.id = p.belt LEFT JOIN place l ON l.id = p.place"    \
                         " LEFT JOIN delivery_piece dp ON dp.piece = p.id LEFT JOIN delivery d ON d.id = "   \
                         "dp.delivery"                                                                       \
                         " WHERE p.extent > 0 AND "

/// A day, in any way that people write it, or a month as the index has it; other words as they are.
std::string dayWord(const std::string& word) {
    std::string digits;
    for (const char c : word)
        if (isDigit(c)) digits += c;
    if (const auto day = readDate(word)) {
        std::string written = 'd' + printDate(*day);
        std::erase(written, '-');
        return written;
    }
    constexpr std::size_t month = 6; // 2026-03
    if (digits.size() == month && word.size() == month + 1 && word[4] == '-') return 'd' + digits;
    return word;
}

/// A phrase of FTS5 whose last word may go on: "b3-2"*. A quote in it is doubled.
std::string phraseOf(const std::string& word) {
    std::string phrase = "\"";
    for (const char c : word)
        phrase += c == '"' ? "\"\"" : std::string(1, c);
    return phrase + "\"*";
}

} // namespace

std::string searchWords(const belt::Belt& belt) {
    const std::string length = belt::lengthCode(belt);
    std::string words = belt::designation(belt) + ' ' + belt.profile + length;
    if (const std::string pitch = pitchFirst(belt.profile); !pitch.empty())
        words += ' ' + pitch + ' ' + pitch + length;
    return words;
}

std::vector<PieceId> findPieces(Connection& connection, const std::vector<std::string>& words) {
    std::string query;
    for (const std::string& word : words) {
        if (!std::any_of(word.begin(), word.end(), isWordPart)) continue;
        if (!query.empty()) query += ' ';
        query += phraseOf(dayWord(word));
    }
    std::vector<PieceId> pieces;
    if (query.empty()) return pieces;
    indexWaiting(connection);
    Statement rows{connection, "SELECT rowid FROM rack_text WHERE rack_text MATCH ?", query};
    while (rows.next())
        pieces.push_back(rows.get<PieceId>(0));
    return pieces;
}

void indexPiece(Connection& connection, PieceId piece) {
    Connection::Inner& inner = connection.inner();
    inner.waiting.words.insert(piece);
    if (!inner.inTransaction) indexWaiting(connection);
}

void indexWaiting(Connection& connection) {
    const std::set<PieceId> pieces = std::exchange(connection.inner().waiting.words, {});
    if (pieces.empty()) return;
    // What is newer than all that is in the index has no words there to be taken out.
    const auto newest = only<PieceId>(connection, "SELECT rowid FROM rack_text ORDER BY rowid DESC LIMIT 1");
    for (const PieceId piece : pieces) {
        if (newest && piece <= *newest) change(connection, "DELETE FROM rack_text WHERE rowid = ?", piece);
        change(connection, WORDS "p.id = ?", piece);
    }
}

void indexPlace(Connection& connection, PlaceId place) {
    change(connection,
           "DELETE FROM rack_text WHERE rowid IN (SELECT id FROM piece WHERE place = ? AND extent > 0)",
           place);
    change(connection, WORDS "p.place = ?", place);
}

void indexBelt(Connection& connection, BeltId belt) {
    change(connection,
           "DELETE FROM rack_text WHERE rowid IN (SELECT id FROM piece WHERE belt = ? AND extent > 0)", belt);
    change(connection, WORDS "p.belt = ?", belt);
}

void wordBelts(Connection& connection) {
    if (!only<std::int64_t>(connection, "SELECT 1 FROM belt WHERE words = '' LIMIT 1")) return;
    Transaction transaction{connection};
    for (const StockedBelt& belt : Catalogue{connection}.all())
        change(connection, "UPDATE belt SET words = ? WHERE id = ? AND words = ''", searchWords(belt.belt),
               belt.id);
    change(connection, "DELETE FROM rack_text");
    change(connection, WORDS "1");
    transaction.commit();
}

} // namespace riband::store
