// Finding as one types, and taking over a stock, at 20,000 pieces. The index is measured beside a plain scan
// of the same words, in the database and in memory, in one run; the take-over beside the bare reading of the
// table. Each figure is the best of the rounds, in turn, so that all meet the same machine.

#include "core/shop/sheet.h"
#include "core/store/inner.h"
#include "core/store/people.h"
#include "core/store/search.h"
#include "tests/core/belt/read_tables.h"

#include <QtSql/QSqlQuery>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <unistd.h>

namespace {

using namespace riband;
using namespace riband::shop;

constexpr int pieces = 20'000, rounds = 5;

double ms(const std::function<void()>& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

double best(const std::function<void()>& work) {
    double least = ms(work);
    for (int i = 1; i < rounds; ++i)
        least = std::min(least, ms(work));
    return least;
}

/// A stock as a spreadsheet has it: belts of many lengths, places, batches.
std::string stockTable() {
    std::string text = "belt;width_mm;kind;place;batch;cost\n";
    for (int i = 0; i < pieces; ++i) {
        const int teeth = 60 + i * 7 % 180;
        text += (i % 3 == 0   ? "H8M " + std::to_string(teeth * 8)
                 : i % 3 == 1 ? "T5 " + std::to_string(teeth * 5)
                              : "T10 " + std::to_string(teeth * 10)) +
                ";" + std::to_string(20 + i * 13 % 380) + (i % 2 ? ",5" : "") + ";remnant;B" +
                std::to_string(i % 40) + "-" + std::to_string(i % 9) + ";M-" + std::to_string(i % 700) +
                ";12,50\n";
    }
    return text;
}

struct Scanned {
    std::vector<std::pair<std::int64_t, std::string>> words;
    std::size_t find(const std::vector<std::string>& typed) const {
        std::size_t found = 0;
        for (const auto& [id, text] : words)
            found += std::all_of(typed.begin(), typed.end(), [&](const std::string& word) {
                return text.find(word) != std::string::npos;
            });
        return found;
    }
};

/// The plain way in the database: every word in every row's text.
std::size_t scanTable(store::Connection& connection, const std::vector<std::string>& typed) {
    std::string sql = "SELECT rowid FROM rack_text WHERE 1";
    for (const std::string& word : typed)
        sql += " AND words LIKE '%" + word + "%'";
    QSqlQuery query{connection.inner().database};
    query.setForwardOnly(true);
    query.exec(QString::fromStdString(sql));
    std::size_t found = 0;
    while (query.next())
        ++found;
    return found;
}

void benchFinding(store::Connection& connection) {
    Scanned memory;
    QSqlQuery all{QStringLiteral("SELECT rowid, lower(words) FROM rack_text"), connection.inner().database};
    while (all.next())
        memory.words.emplace_back(all.value(0).toLongLong(), all.value(1).toString().toStdString());
    std::printf("%-28s %10s %12s %12s %8s\n", "typed, 20,000 pieces", "index ms", "table scan", "memory scan",
                "found");
    const std::vector<std::vector<std::string>> keys{
        {"h"},     {"h8"},   {"h8m"},  {"h8m", "9"}, {"h8m", "960"}, {"h8m", "960", "b1"},
        {"b12-3"}, {"m-77"}, {"62.5"}, {"offcut"}};
    for (const auto& typed : keys) {
        std::size_t found = 0;
        const double index = best([&] { found = store::findPieces(connection, typed).size(); });
        const double table = best([&] { scanTable(connection, typed); });
        volatile std::size_t seen = 0; // else the compiler sees that nobody asks, and scans nothing
        const double scan = best([&] { seen = memory.find(typed); });
        std::string shown;
        for (const auto& word : typed)
            shown += word + " ";
        std::printf("%-28s %10.2f %12.2f %12.2f %8zu\n", shown.c_str(), index, table, scan, found);
    }
}

} // namespace

int main() {
    const std::string folder =
        (std::filesystem::temp_directory_path() / ("riband-goods-" + std::to_string(::getpid()))).string();
    std::filesystem::create_directory(folder);
    {
        store::Connection connection{folder + "/shop.riband", store::Connection::Mode::Create};
        const auto person = store::People{connection}.add("AB", "A. Binder", store::Role::StockManager);
        const auto now = [] {
            return std::chrono::time_point_cast<Moment::duration>(std::chrono::system_clock::now());
        };
        const Shop shop{connection, {std::shared_ptr<void>{}, &belt::theTables()}, person, now};
        const std::string text = stockTable();
        std::optional<CsvTable> table;
        Sheet sheet;
        const double bare = ms([&] { table = CsvTable::read(asUtf8(text)).value(); });
        const double read = ms([&] { sheet = readSheet(shop, *table, guessMatch(table->head())); });
        std::size_t booked = 0;
        const double took = ms([&] { booked = takeOver(shop, sheet.deliveries()).size(); });
        std::printf("a stock of %zu rows, %zu faults: table %.0f ms, rows understood %.0f ms (%.1f x), "
                    "booked %.0f ms "
                    "(%.1f x)\n",
                    booked, sheet.faults.size(), bare, read, read / bare, took, took / bare);
        benchFinding(connection);
    }
    std::filesystem::remove_all(folder);
}
