// The budgets of the design, measured on the large demo shop (3,000 belts, 20,000 pieces, 500,000 movements)
// and, beside them in the same run, on the small one and against bare SQLite that fetches the same rows.
// Nothing here fails by time.

#include "app/open_shop.h"
#include "app/standard_tables.h"
#include "core/belt/reader.h"
#include "core/shop/learn.h"
#include "core/shop/queries.h"
#include "core/shop/suggest.h"
#include "core/store/flows.h"
#include "tests/app/program.h"
#include "ui/counter/counter_page.h"
#include "ui/window/window.h"

#include <QApplication>
#include <QElapsedTimer>

#include <sqlite3.h>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <string>

namespace {

using namespace riband;
using Milliseconds = double;

constexpr std::size_t customers = 400;

Milliseconds timed(const std::function<void()>& work) {
    QElapsedTimer timer;
    timer.start();
    work();
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

struct Spread {
    Milliseconds median, worst99;
};

Spread spreadOf(std::vector<Milliseconds> times) {
    std::sort(times.begin(), times.end());
    return {times[times.size() / 2], times[times.size() * 99 / 100]};
}

void print(const char* what, Spread large, Spread other, const char* against, const char* budget) {
    std::printf("%-44s median %8.3f ms  99%% %8.3f ms   %s %8.3f ms  ratio %6.2f   %s\n", what, large.median,
                large.worst99, against, other.median, large.median / other.median, budget);
}

/// A shop and what its customers say: belts that it has, spread over the catalogue.
struct Counter {
    explicit Counter(const QString& file) : open(file, store::Connection::Mode::ReadOnly) {
        std::vector<store::StockedBelt> belts = store::Catalogue{open.connection()}.all();
        std::erase_if(belts, [](const auto& belt) { return belt.listed.empty(); });
        for (std::size_t i = 0; i < customers; ++i) {
            const auto& belt = belts[i * 7919 % belts.size()];
            const Extent width = belt.listed[i % belt.listed.size()];
            const std::string words =
                std::to_string(1 + i % 3) + " x " + belt::printed(belt.belt, width, open.tables());
            if (belt::understand(words, open.tables()).readings.size() == 1) said.push_back(words);
        }
    }
    app::OpenShop open;
    std::vector<std::string> said;
};

/// From the key to the first answer, and to the final one.
struct Answers {
    Spread first, final, looking;
};

Answers serve(const Counter& counter) {
    std::vector<Milliseconds> first, final, looking;
    for (const std::string& words : counter.said) {
        std::optional<shop::Outlook> outlook;
        const Milliseconds reading = timed([&] { belt::understand(words, counter.open.tables()); });
        const auto wanted = belt::understand(words, counter.open.tables()).readings.front();
        const Milliseconds look = timed([&] {
            outlook = shop::lookAt(counter.open.shop(), wanted.belt, {{*wanted.width, wanted.quantity}});
        });
        const Milliseconds quick = timed([&] { shop::quick(*outlook); });
        const Milliseconds whole = timed([&] { shop::suggest(*outlook); });
        first.push_back(reading + look + quick);
        final.push_back(reading + look + whole);
        looking.push_back(look);
    }
    return {spreadOf(first), spreadOf(final), spreadOf(looking)};
}

/// The rows of a belt's pieces, by SQLite alone.
class Bare {
public:
    explicit Bare(const QString& file) {
        sqlite3_open_v2(file.toUtf8().constData(), &database_, SQLITE_OPEN_READONLY, nullptr);
        sqlite3_prepare_v2(database_, "SELECT * FROM piece WHERE belt = ? AND extent > 0", -1, &pieces_,
                           nullptr);
    }
    ~Bare() {
        sqlite3_finalize(pieces_);
        sqlite3_close(database_);
    }
    Bare(const Bare&) = delete;
    Bare& operator=(const Bare&) = delete;
    void fetch(store::BeltId belt) {
        sqlite3_bind_int64(pieces_, 1, belt.value());
        while (sqlite3_step(pieces_) == SQLITE_ROW)
            for (int column = 0; column < sqlite3_column_count(pieces_); ++column)
                sqlite3_column_text(pieces_, column);
        sqlite3_reset(pieces_);
    }

private:
    sqlite3* database_ = nullptr;
    sqlite3_stmt* pieces_ = nullptr;
};

Spread fetchBare(const QString& file, Counter& counter) {
    Bare bare(file);
    const auto belts = store::Catalogue{counter.open.connection()}.all();
    std::vector<Milliseconds> times;
    for (std::size_t i = 0; i < customers; ++i) {
        const auto id = belts[i * 7919 % belts.size()].id;
        times.push_back(timed([&] { bare.fetch(id); }));
    }
    return spreadOf(times);
}

/// Worth tables for the belts that the first customers want; those customers.
std::vector<std::string> learnSome(const QString& file, const Counter& counter) {
    constexpr std::size_t some = 20;
    const app::OpenShop open(file, store::Connection::Mode::Open);
    std::vector<std::string> said(counter.said.begin(),
                                  counter.said.begin() + std::min(some, counter.said.size()));
    for (const std::string& words : said) {
        const auto belt = belt::understand(words, open.tables()).readings.front().belt;
        const auto id = store::Catalogue{open.shop().connection}.find(belt)->id;
        const auto table = shop::learn(shop::lessonOf(open.shop(), id), [](double) { return true; });
        if (table) shop::keepWorth(open.shop(), id, *table);
    }
    return said;
}

Milliseconds readRack(const Counter& counter) {
    return timed([&] { shop::rack(counter.open.shop()); });
}

/// From nothing to a window in which one can type.
Milliseconds startWindow(const QString& file) {
    return timed([&] {
        store::Connection connection(file.toStdString());
        const auto person = store::People{connection}.present().front().id;
        ui::Session session(std::move(connection), app::standardTables(), person, app::presentMoment,
                            QDir::tempPath());
        ui::Look::apply(*qApp, ui::Shade::Light);
        ui::Window window(session);
        window.show();
        QApplication::processEvents();
    });
}

Milliseconds startVerb(const QString& file) {
    return timed([&] { tests::run({"suggest", "--shop", file, "H8M 1200 30"}); });
}

/// In MiB, from the kernel's own account of this process.
double memory(const std::string& which) {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with(which)) return std::stod(line.substr(which.size() + 1)) / 1024;
    return 0;
}

void compareCounters(const QString& large, const QString& small) {
    Counter big(large), little(small);
    const Answers many = serve(big), few = serve(little);
    print("key to first answer", many.first, few.first, "small shop", "budget 50 ms");
    print("key to final answer", many.final, few.final, "small shop", "budget 200 ms");
    big.said = learnSome(large, big);
    little.said = learnSome(small, little);
    print("key to final answer, by worth table", serve(big).final, serve(little).final, "small shop",
          "budget 200 ms");
    print("reading what a suggestion needs", many.looking, fetchBare(large, big), "bare SQLite", "");
    std::printf("%-44s %8.1f ms   small shop %8.1f ms\n", "reading the whole rack", readRack(big),
                readRack(little));
}

/// The best of three, since the file is read for the first time once.
Milliseconds reported(const QString& file, const QStringList& what) {
    Milliseconds best = 1e12;
    for (int round = 0; round < 3; ++round)
        best = std::min(best, timed([&] {
                            tests::run(QStringList{"report"} + what + QStringList{"--shop", file});
                        }));
    return best;
}

/// Each report of this month as a process, start and all.
void compareReports(const QString& large, const QString& small, const QString& pdf) {
    const struct {
        const char* name;
        QStringList what;
    } reports[] = {{"report waste --by belt", {"waste", "--by", "belt", "--csv"}},
                   {"report waste --by cutter", {"waste", "--by", "cutter", "--csv"}},
                   {"report waste --by person", {"waste", "--by", "person", "--csv"}},
                   {"report waste --by place", {"waste", "--by", "place", "--csv"}},
                   {"report trend", {"trend", "--csv"}},
                   {"report hindsight", {"hindsight", "--csv"}},
                   {"report margin", {"margin", "--csv"}},
                   {"report stock", {"stock", "--csv"}},
                   {"report shrinkage", {"shrinkage", "--csv"}},
                   {"report accuracy", {"accuracy", "--csv"}},
                   {"report day", {"day", "--csv"}},
                   {"report overrides", {"overrides", "--csv"}},
                   {"report buy", {"buy", "--csv"}},
                   {"report waste --pdf, the month's", {"waste", "--pdf", pdf}}};
    for (const auto& [name, what] : reports) {
        const Milliseconds many = reported(large, what), few = reported(small, what);
        std::printf("%-44s %8.1f ms   small shop %8.1f ms  ratio %6.2f   budget 1000 ms\n", name, many, few,
                    many / few);
    }
}

/// What the waste report of a month reads, and a plain sum over all postings, which would do without kept
/// sums.
void compareSums(const QString& large) {
    const app::OpenShop open(large, store::Connection::Mode::ReadOnly);
    const Moment now = open.shop().now();
    const Milliseconds kept =
        timed([&] { store::Flows{open.shop().connection}.sums(now - std::chrono::days{30}, now); });
    sqlite3* database = nullptr;
    sqlite3_open_v2(large.toUtf8().constData(), &database, SQLITE_OPEN_READONLY, nullptr);
    const Milliseconds plain = timed([&] {
        sqlite3_exec(database,
                     "SELECT m.belt, m.person, m.cutter, p.account, p.reason, sum(p.amount), sum(p.cost)"
                     " FROM movement m JOIN posting p ON p.movement = m.id GROUP BY 1, 2, 3, 4, 5",
                     nullptr, nullptr, nullptr);
    });
    sqlite3_close(database);
    std::printf("%-44s %8.1f ms   all postings %8.1f ms  ratio %6.2f\n", "sums of a month and before it",
                kept, plain, kept / plain);
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    const QApplication application(argc, argv);
    const tests::Folder folder;
    const QString large = folder.file("large/demo.riband"), small = folder.file("small/demo.riband");
    const auto make = [&](const char* size) {
        tests::run({"demo", "--shop-only", "--size", size, "--out", folder.file(size)});
    };
    const Milliseconds makeLarge = timed([&] { make("large"); }), makeSmall = timed([&] { make("small"); });
    std::printf("%-44s %8.1f s    small shop %8.3f s\n", "making the shop", makeLarge / 1e3, makeSmall / 1e3);
    startWindow(small); // fonts and icons are read once, whichever shop comes first
    const Milliseconds startLarge = startWindow(large);
    const double held = memory("VmRSS:"), peak = memory("VmHWM:");
    const Milliseconds startSmall = startWindow(small);
    std::printf("%-44s %8.1f ms   small shop %8.1f ms  ratio %6.2f   budget 1000 ms\n",
                "start to a usable window", startLarge, startSmall, startLarge / startSmall);
    std::printf("%-44s %8.1f ms   small shop %8.1f ms\n", "riband suggest, as a process", startVerb(large),
                startVerb(small));
    std::printf("%-44s %8.1f MiB  peak %8.1f MiB   budget 250 MB\n", "memory with the large shop", held,
                peak);
    compareCounters(large, small);
    compareSums(large);
    compareReports(large, small, folder.file("month.pdf"));
    return 0;
}
