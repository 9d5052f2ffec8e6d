#include "tests/app/demo_shop_file.h"
#include "tests/app/printing.h"

#include <QJsonArray>

using namespace riband::tests;

namespace {

QByteArray stockRow(const DemoShop& shop, const QString& piece) {
    for (const QByteArray& row : run({"export", "stock", "--shop", shop.file}).out.split('\n'))
        if (row.startsWith(piece.toUtf8() + ",")) return row;
    return {};
}

QByteArray ledger(const DemoShop& shop) { return run({"export", "ledger", "--shop", shop.file}).out; }

} // namespace

TEST_CASE("riband receive books what the tape says, with freight to the cent, and tells what the label lied",
          "[app][receive]") {
    const DemoShop shop;
    const QString csv = shop.folder.with("lorry.csv", "belt,sleeves,width_mm,labelled,cost,place\n"
                                                      "H8M 1040,2,470,,35.10,B2-5\n"
                                                      "H8M 1040,1,463,470,35.10,B2-5\n");
    const QByteArray before = ledger(shop);
    CHECK(run({"receive", csv, "--shop", shop.file, "--preview"}).out.contains("463 mm wide"));
    CHECK(ledger(shop) == before);
    const Answer answer = run({"receive", csv, "--shop", shop.file, "--freight", "10", "--json"});
    REQUIRE(answer.exit == 0);
    const QJsonArray pieces = answer.json()["pieces"].toArray();
    REQUIRE(pieces.size() == 3);
    // 10.00 over three of the same cost: 3.34, 3.33 and 3.33 in some order.
    int cents = 0;
    for (const auto& piece : pieces)
        cents += qRound(stockRow(shop, piece.toString()).split(',').last().trimmed().toDouble() * 100);
    CHECK(cents == 3 * 3510 + 1000);
    const QJsonArray wrong = answer.json()["mislabelled"].toArray();
    REQUIRE(wrong.size() == 1);
    CHECK(wrong[0].toObject()["came_mm"] == 463);
    CHECK(wrong[0].toObject()["labelled_mm"] == 470);
    CHECK(run({"verify", shop.file}).exit == 0);
}

TEST_CASE("The supplier's code that stood beside a belt stands for it in the next table", "[app][receive]") {
    const DemoShop shop;
    REQUIRE(run({"receive", shop.folder.with("a.csv", "belt,width_mm,code\nH8M 1040,470,4006381333931\n"),
                 "--shop", shop.file})
                .exit == 0);
    const Answer next = run({"receive", shop.folder.with("b.csv", "width_mm,code\n400,4006381333931\n"),
                             "--shop", shop.file, "--json"});
    REQUIRE(next.exit == 0);
    CHECK(stockRow(shop, next.json()["pieces"].toArray()[0].toString()).contains("H8M 1040,"));
}

TEST_CASE("riband receive books nothing if a row is bad, and names each of them", "[app][receive]") {
    const DemoShop shop;
    const QByteArray before = ledger(shop);
    const Answer answer = run({"receive",
                               shop.folder.with("bad.csv", "belt,width_mm\nH8M 1040,470\nH8M 1041,470\n"
                                                           "H8M 1040,wide\n"),
                               "--shop", shop.file});
    CHECK(answer.exit == 2);
    CHECK(answer.err.contains("line 3, column 1"));
    CHECK(answer.err.contains("line 4, column 2"));
    CHECK(ledger(shop) == before);
    const QString good = shop.folder.with("good.csv", "belt,width_mm\nH8M 1040,470\n");
    CHECK(run({"receive", good, "--shop", shop.file, "--freight", "much"}).exit == 2);
    CHECK(run({"receive", good, "--shop", shop.file, "--expected", "99"}).exit != 0);
    CHECK(ledger(shop) == before);
}

TEST_CASE("Goods in are bought and a stock is found, whatever the pieces are", "[app][receive]") {
    const DemoShop shop;
    // The first is narrower than a sleeve usually is, the second as wide as one.
    const QString csv = shop.folder.with("pieces.csv", "belt,kind,width_mm,ribs,cost\n"
                                                       "H8M 1040,remnant,200,,20\n"
                                                       "H8M 1040,sleeve,470,,35.10\n");
    const auto sourcesOf = [&](const QJsonArray& pieces, auto codeOf) {
        QStringList sources;
        for (const auto& piece : pieces)
            for (const QByteArray& row : ledger(shop).split('\n'))
                if (row.contains("," + codeOf(piece).toUtf8() + ",") &&
                    (row.contains(",bought,") || row.contains(",found,")))
                    sources << (row.contains(",bought,") ? "bought" : "found");
        return sources;
    };
    const Answer came = run({"receive", csv, "--shop", shop.file, "--json"});
    REQUIRE(came.exit == 0);
    CHECK(sourcesOf(came.json()["pieces"].toArray(), [](const auto& piece) { return piece.toString(); }) ==
          QStringList{"bought", "bought"});
    const Answer taken = run({"import", "stock", csv, "--shop", shop.file, "--json"});
    REQUIRE(taken.exit == 0);
    CHECK(sourcesOf(taken.json()["pieces"].toArray(), [](const auto& piece) {
              return piece.toObject()["piece"].toString();
          }) == QStringList{"found", "found"});
}

TEST_CASE("riband move puts scanned pieces at their places, all or none", "[app][move]") {
    const DemoShop shop;
    const QString good = shop.folder.with("moves.csv", "piece,place\n01H-0,B2-5\n01A-E,A2-2\n01H-0,B2-6\n");
    const Answer answer = run({"move", good, "--shop", shop.file, "--json"});
    REQUIRE(answer.exit == 0);
    CHECK(answer.json()["moved"] == 3);
    CHECK(stockRow(shop, "01H-0").contains(",B2-6,")); // the last scan counts
    CHECK(stockRow(shop, "01A-E").contains(",A2-2,"));
    REQUIRE(
        run({"move", shop.folder.with("bare.csv", "piece,place\n01H0,B2-7\n"), "--shop", shop.file}).exit ==
        0);
    CHECK(stockRow(shop, "01H-0").contains(",B2-7,"));
    REQUIRE(run({"move", good, "--shop", shop.file}).exit == 0);
    for (const char* place : {"01A-E", "01AE", "\"C1\n2\"",
                              "a place whose name is longer than any label that lies on a shelf can hold"}) {
        const QString none =
            shop.folder.with("none.csv", QStringLiteral("piece,place\n01H-0,%1\n").arg(place).toUtf8());
        const auto named = run({"move", none, "--shop", shop.file});
        CHECK(named.exit == 2);
        CHECK(named.err.contains("can't be the name of a place"));
    }
    const QString bad = shop.folder.with("bad.csv", "piece,place\n01H-0,C1-1\n01H-1,C1-1\n");
    const Answer refused = run({"move", bad, "--shop", shop.file});
    CHECK(refused.exit == 2);
    CHECK(refused.err.contains("line 3, column 1"));
    CHECK(stockRow(shop, "01H-0").contains(",B2-6,"));
}

TEST_CASE("riband count takes a collector's scans, and names what waits and what is missing",
          "[app][count]") {
    const DemoShop shop;
    const QByteArray put = "piece,place\n01H-0,Z9-1\n01A-E,Z9-1\n";
    REQUIRE(run({"move", shop.folder.with("put.csv", put), "--shop", shop.file}).exit == 0);
    const QByteArray wide = stockRow(shop, "01H-0").split(',')[3];
    REQUIRE(wide.toDouble() > 0);
    const QByteArray narrow = QByteArray::number(wide.toDouble() - 12);
    const auto counted = [&](const QByteArray& rows, const QStringList& options = {}) {
        const QString csv = shop.folder.with("scans.csv", "place,piece,width_mm,ribs\n" + rows);
        return run(QStringList{"count", csv, "--shop", shop.file} + options);
    };
    SECTION("a piece that differs is to be measured again; till then its place can't be closed") {
        const Answer once = counted("Z9-1,01H-0," + narrow + ",\n");
        CHECK(once.exit == 0);
        CHECK(once.out.contains("Line 2: measure 01H-0 a second time."));
        CHECK(counted("Z9-1,01A-E,,\n", {"--close"}).exit != 0);
        const Answer again = counted("Z9-1,01H-0," + narrow + ",\nZ9-1,01A-E,,\n", {"--close", "--json"});
        REQUIRE(again.exit == 0);
        const QJsonArray rows = again.json()["rows"].toArray();
        REQUIRE(rows.size() == 2);
        CHECK(rows[0].toObject()["verdict"] == "differs");
        CHECK(rows[1].toObject()["verdict"] == "agrees");
        CHECK(again.json()["missing"].toArray().isEmpty());
    }
    SECTION("what was not seen is missing") {
        const Answer closed = counted("Z9-1,01H-0," + wide + ",\n", {"--close", "--json"});
        REQUIRE(closed.exit == 0);
        const QJsonArray missing = closed.json()["missing"].toArray();
        REQUIRE(missing.size() == 1);
        CHECK(missing[0].toObject()["piece"] == "01A-E");
        CHECK(missing[0].toObject()["place"] == "Z9-1");
    }
    SECTION("a piece of which the book has nothing must be measured, twice") {
        // One that was thrown away to its end: it is in the ledger and no more in the stock.
        QString gone;
        for (const QByteArray& row : ledger(shop).split('\n')) {
            const QList<QByteArray> fields = row.split(',');
            const bool scrapped = fields.size() > 8 && fields[5] == "scrap" && !fields[8].isEmpty();
            if (gone.isEmpty() && scrapped && stockRow(shop, QString::fromUtf8(fields[6])).isEmpty())
                gone = QString::fromUtf8(fields[6]);
        }
        REQUIRE_FALSE(gone.isEmpty());
        const QByteArray seen = "Z9-1," + gone.toUtf8();
        const Answer refused = counted(seen + ",,\n");
        CHECK(refused.exit == 2);
        CHECK(refused.err.contains("The book has nothing of it any more. Measure it."));
        const Answer measured = counted(seen + ",41,\n" + seen + ",41,\n", {"--json"});
        REQUIRE(measured.exit == 0);
        CHECK(measured.json()["rows"].toArray().last().toObject()["verdict"] == "differs");
    }
    SECTION("a bad row, and nothing of the file is kept") {
        const QByteArray before = ledger(shop);
        const Answer bad = counted("Z9-1,01H-0," + narrow + ",\nZ9-1,99Z-9,30,\nZ9-1,01A-E,wide,\n");
        CHECK(bad.exit == 2);
        CHECK(bad.err.contains("line 3, column 2 (piece)"));
        CHECK(bad.err.contains("line 4, column 3 (width_mm)"));
        CHECK(ledger(shop) == before);
        const Answer first = counted("Z9-1,01H-0," + narrow + ",\n"); // it was not noted before
        CHECK(first.out.contains("measure 01H-0 a second time"));
    }
    CHECK(run({"verify", shop.file}).exit == 0);
}

TEST_CASE("A stock is imported from any spreadsheet by what its columns are said to hold", "[app][import]") {
    const DemoShop shop;
    const QString csv = shop.folder.with("old.csv", "Artikel;Breite;Wo\nH8M 1040;4,75;L\xfc 1\n"); // Latin-1
    CHECK(run({"import", "stock", csv, "--shop", shop.file}).exit == 2);
    const Answer answer = run({"import", "stock", csv, "--shop", shop.file, "--column", "Artikel=belt",
                               "--column", "Wo=place", "--unit", "cm", "--json"});
    REQUIRE(answer.exit == 0);
    const QByteArray row =
        stockRow(shop, answer.json()["pieces"].toArray()[0].toObject()["piece"].toString());
    CHECK(row.contains("H8M 1040,remnant,47.5,"));
    CHECK(row.contains("L\xc3\xbc 1"));
}
