#include "tests/app/printing.h"
#include "tests/app/program.h"

#include <QImage>
#include <QRegularExpression>

#include <zbar.h>

using namespace riband::tests;

namespace {

/// What a bar code reader finds on the first page of a PDF.
QStringList codesOn(const Folder& folder, const QString& pdf) {
    const QString picture = folder.file("page");
    if (QProcess::execute("pdftoppm", {"-r", "300", "-gray", "-singlefile", pdf, picture}) != 0) return {};
    const QImage page = QImage(picture + ".pgm").convertToFormat(QImage::Format_Grayscale8);
    QByteArray grey;
    for (int y = 0; y < page.height(); ++y)
        grey.append(reinterpret_cast<const char*>(page.constScanLine(y)), page.width());
    zbar::ImageScanner scanner;
    scanner.set_config(zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 1);
    zbar::Image image(static_cast<unsigned>(page.width()), static_cast<unsigned>(page.height()), "Y800",
                      grey.constData(), static_cast<unsigned long>(grey.size()));
    scanner.scan(image);
    QStringList codes;
    for (auto symbol = image.symbol_begin(); symbol != image.symbol_end(); ++symbol)
        codes << QString::fromStdString(symbol->get_data());
    return codes;
}

QString firstFile(const Folder& folder, const QString& pattern) {
    const QStringList found = QDir(folder.file("")).entryList({pattern});
    return found.isEmpty() ? QString() : folder.file(found.first());
}

/// "T4H-F" of "ticket-T4H-F.pdf".
QString codeIn(const QString& file, const QString& before) {
    return QRegularExpression(before + "-(.*)\\.pdf").match(file).captured(1);
}

} // namespace

TEST_CASE("riband demo serves a walk-in from words to papers without a display, and the book agrees",
          "[app][demo]") {
    const Folder folder;
    const Answer answer = run({"demo", "--out", folder.file("")});
    CHECK(answer.exit == 0);
    CHECK(answer.err.isEmpty());
    for (const char* step : {"3 x 8M 1200 30", "Which tooth?", "of the last 8.5 mm nothing more can be made",
                             "45.72", "Cut and booked", "It agrees"})
        CHECK(answer.out.contains(step));
    CHECK(run({"verify", folder.file("demo.riband")}).exit == 0);

    SECTION("ticket, order and the belt's label lie beside the shop, their bar codes can be read") {
        const QString ticket = firstFile(folder, "ticket-*.pdf");
        REQUIRE_FALSE(ticket.isEmpty());
        CHECK(codesOn(folder, ticket).contains(codeIn(ticket, "ticket")));
        const QString order = firstFile(folder, "order-*.pdf");
        REQUIRE_FALSE(order.isEmpty());
        const QString belt = firstFile(folder, "belt-*.pdf");
        REQUIRE_FALSE(belt.isEmpty());
        CHECK(codesOn(folder, belt).contains(codeIn(order, "order")));
    }
    SECTION("every page is there as a picture, light and dark, and is not blank") {
        for (const char* page : {"counter", "bench", "rack"})
            for (const char* shade : {"light", "dark"}) {
                const QImage picture(folder.file(QStringLiteral("%1-%2.png").arg(page, shade)));
                INFO(page << " " << shade);
                REQUIRE(picture.width() >= 1000);
                QSet<QRgb> colours;
                for (int y = 0; y < picture.height(); y += 7)
                    for (int x = 0; x < picture.width(); x += 7)
                        colours.insert(picture.pixel(x, y));
                CHECK(colours.size() > 20);
            }
    }
    SECTION("it may be played again over itself") {
        CHECK(run({"demo", "--shop-only", "--out", folder.file("")}).exit == 0);
    }
}

TEST_CASE("riband demo writes over nothing but a demo shop", "[app][demo]") {
    const Folder folder;
    folder.with("demo.riband", "my own book");
    const Answer answer = run({"demo", "--shop-only", "--out", folder.file("")});
    CHECK(answer.exit == 2);
    CHECK(folder.content("demo.riband") == "my own book");
    CHECK(QDir(folder.file("")).entryList(QDir::Files).size() == 1); // nothing unfinished is left
}

TEST_CASE("riband demo refuses sizes, seeds and folders that are none", "[app][demo]") {
    const Folder folder;
    const QString file = folder.with("file", "");
    CHECK(run({"demo", "--size", "huge", "--out", folder.file("a")}).exit == 2);
    CHECK(run({"demo", "--seed", "x", "--out", folder.file("a")}).exit == 2);
    CHECK(run({"demo", "--shop-only", "--out", file + "/below"}).exit == 2);
}

TEST_CASE("The same seed deals the same demo shop", "[app][demo]") {
    const Folder one, two, other;
    for (const auto& [folder, seed] : {std::pair{&one, "5"}, {&two, "5"}, {&other, "6"}})
        REQUIRE(run({"demo", "--shop-only", "--seed", seed, "--out", folder->file("")}).exit == 0);
    const auto stock = [](const Folder& folder) {
        return run({"export", "stock", "--shop", folder.file("demo.riband")}).out;
    };
    CHECK(stock(one) == stock(two));
    CHECK(stock(one) != stock(other));
}
