#include "tests/app/demo_shop_file.h"
#include "tests/app/printing.h"

#include <QJsonArray>

using namespace riband::tests;

TEST_CASE("riband suggest names the piece, the reason with its figure, the others and the price",
          "[app][suggest]") {
    const DemoShop shop;
    const Answer answer = run({"suggest", "--shop", shop.file, "3 x H8M 1200 30", "--json"});
    CHECK(answer.exit == 0);
    const auto json = answer.json();
    const auto best = json["best"].toObject();
    const auto mounting = best["mountings"].toArray()[0].toObject();
    CHECK(mounting["left_mm"] == 377.5); // a sleeve: 470 - 2.5 - 90
    CHECK(mounting["left_is"] == "remnant");
    CHECK(best["reason"].toString().contains("8.5 mm"));
    CHECK(best["extra_mm"] == 0);
    CHECK(json["others"].toArray().size() >= 2);
    CHECK(json["look_alikes"].toArray().contains("S8M"));
    // 90 mm at 0.34 and three cuts at 2.50 are 38.10; 20 % tax makes 45.72.
    CHECK(json["price"] == jsonOf(R"({"currency":"EUR","width":30.6,"cutting":7.5,"discount":0,"minimum":0,
        "net":38.1,"tax":7.62,"total":45.72})"));
}

TEST_CASE("riband suggest keeps no rest of which it says that nothing can be made", "[app][suggest]") {
    const DemoShop shop;
    int finished = 0;
    for (int width = 12; width <= 19; ++width) { // of 43 mm; T10 is listed from 12 on: under 19.5 is dead
        const auto said = QStringLiteral("2 x T10 880 %1").arg(width);
        const auto best = run({"suggest", "--shop", shop.file, said, "--json"}).json()["best"].toObject();
        const auto mountings = best["mountings"].toArray();
        if (mountings.size() != 1 || !best["reason"].toString().contains("nothing more can be made"))
            continue;
        INFO(said.toStdString());
        ++finished;
        CHECK(mountings[0].toObject()["left_is"] == "scrap");
        CHECK(best["reason"].toString().contains(
            QString::number(mountings[0].toObject()["left_mm"].toDouble()) + " mm"));
    }
    CHECK(finished > 0);
}

TEST_CASE("riband suggest takes a ready belt from the shelf", "[app][suggest]") {
    const DemoShop shop;
    const auto best = run({"suggest", "--shop", shop.file, "470J6", "--json"}).json()["best"].toObject();
    CHECK(best["mountings"].toArray().isEmpty());
    CHECK(best["taken"].toArray().size() == 1);
}

TEST_CASE("riband suggest says no where the shop can't give it, and asks where the words leave it open",
          "[app][suggest]") {
    const DemoShop shop;
    CHECK(run({"suggest", "--shop", shop.file, "H5M 1000 15"}).exit == 1);  // not kept here
    CHECK(run({"suggest", "--shop", shop.file, "20 x 322L300"}).exit == 1); // not enough
    const Answer asked = run({"suggest", "--shop", shop.file, "8M 1200 30"});
    CHECK(asked.exit == 1);
    CHECK(asked.out.contains("S8M 1200"));
    CHECK(run({"suggest", "--shop", shop.file, "H8M 1200"}).exit == 1); // how wide?
    CHECK(run({"suggest", "--shop", shop.file, "nonsense"}).exit == 2);
    CHECK(run({"suggest", "H8M 1200 30"}).exit == 2);
}

TEST_CASE("Where a length is in no list, riband suggest names the nearest", "[app][suggest]") {
    const DemoShop shop;
    const Answer answer = run({"suggest", "--shop", shop.file, "XL 416 025"});
    CHECK(answer.exit == 1);
    CHECK(answer.out.contains("XL 414 and XL 424"));
}

TEST_CASE("riband suggest changes nothing of the shop", "[app][suggest]") {
    const DemoShop shop;
    const QByteArray before = shop.folder.content("shop.riband");
    run({"suggest", "--shop", shop.file, "3 x H8M 1200 30"});
    CHECK(shop.folder.content("shop.riband") == before);
}

TEST_CASE("riband verify agrees with a sound shop and names what is wrong in another", "[app][verify]") {
    const DemoShop shop;
    const Answer sound = run({"verify", shop.file, "--json"});
    CHECK(sound.exit == 0);
    CHECK(sound.json()["agrees"] == true);
    CHECK(sound.json()["movements"].toInteger() > 100);
    QByteArray damaged = shop.folder.content("shop.riband");
    damaged.replace(4096 * 3, 4096, QByteArray(4096, 'x'));
    const Answer unsound = run({"verify", shop.folder.with("damaged.riband", damaged)});
    CHECK(unsound.exit != 0);
    CHECK(unsound.exit != -1);
}

TEST_CASE("What is no shop is refused by every verb and left as it was", "[app]") {
    const Folder folder;
    const QString text = folder.with("letter.txt", "Dear shop");
    const QString csv = folder.with("stock.csv", "belt,kind,width_mm,ribs\n");
    for (const QString& file : {text, folder.file("nowhere.riband"), folder.file("")}) {
        INFO(file.toStdString());
        for (const QStringList& call : {QStringList{"verify", file},
                                        {"suggest", "--shop", file, "H8M 1200 30"},
                                        {"backup", file, folder.file("copy.riband")},
                                        {"restore", file, folder.file("to.riband")},
                                        {"import", "stock", csv, "--shop", file},
                                        {"export", "stock", "--shop", file}}) {
            const Answer answer = run(call);
            CHECK(answer.exit == 2);
            CHECK_FALSE(answer.err.isEmpty());
        }
    }
    CHECK(folder.content("letter.txt") == "Dear shop");
    CHECK_FALSE(QFile::exists(folder.file("nowhere.riband")));
    CHECK(run({"verify", folder.file("")}).err.contains("This is a folder."));
    CHECK(run({"verify", folder.file("nowhere.riband")}).err.contains("There is no such file."));
}

TEST_CASE("A backup is verified, never over another file, and restores to the same shop", "[app][backup]") {
    const DemoShop shop;
    const QString copy = shop.folder.file("copy.riband");
    CHECK(run({"backup", shop.file, copy}).exit == 0);
    CHECK(run({"backup", shop.file, copy}).exit == 2); // a file is in the way
    CHECK(
        run({"backup", shop.file, shop.folder.file("away/copy.riband")}).err.contains("There is no folder"));
    const Answer itself = run({"restore", shop.file, shop.file});
    CHECK(itself.exit == 2);
    CHECK(itself.err.contains("FROM and TO at once"));
    const QByteArray stock = run({"export", "stock", "--shop", shop.file}).out;
    const QString csv = shop.folder.with("more.csv", "belt,kind,width_mm,ribs\nH8M 1200,sleeve,470,\n");
    REQUIRE(run({"import", "stock", csv, "--shop", shop.file}).exit == 0);
    REQUIRE(run({"export", "stock", "--shop", shop.file}).out != stock);
    const Answer restored = run({"restore", copy, shop.file, "--json"});
    CHECK(restored.exit == 0);
    CHECK(run({"export", "stock", "--shop", shop.file}).out == stock);
    CHECK(QFile::exists(restored.json()["kept"].toString())); // what was there before
}

TEST_CASE("A stock export read back into an empty shelf is the same stock", "[app][import][export]") {
    const DemoShop shop;
    const QByteArray before = run({"export", "stock", "--shop", shop.file}).out;
    const Answer taken =
        run({"import", "stock", shop.folder.with("stock.csv", before), "--shop", shop.file, "--json"});
    CHECK(taken.exit == 0);
    const auto rows = static_cast<qsizetype>(taken.json()["rows"].toInteger());
    CHECK(rows == before.count('\n') - 1);
    CHECK(taken.json()["pieces"].toArray().size() == rows);
    CHECK(run({"export", "stock", "--shop", shop.file}).out.count('\n') == 2 * rows + 1);
    CHECK(run({"verify", shop.file}).exit == 0);
}

TEST_CASE("An import with one bad row takes in nothing and names the row", "[app][import]") {
    const DemoShop shop;
    const QByteArray before = run({"export", "ledger", "--shop", shop.file}).out;
    const auto [row, told] = GENERATE(table<const char*, const char*>({
        {"H8M 1200,sleeve,-470,,,,", "line 3, column 3 (width_mm)"},
        {"H8M 1203,sleeve,470,,,,", "line 3, column 1 (belt)"},
        {"H8M 1200,roll,470,,,,", "line 3, column 2 (kind)"},
        {"PJ 1194,sleeve,,6.5,,,", "line 3, column 4 (ribs)"},
        {"H8M 1200,sleeve,470,,31.6.2026,,", "line 3, column 5 (made)"},
        {"H8M 1200,sleeve,470,,,,-3", "line 3, column 7 (cost)"},
        {"H8M 1200,sleeve,470,,,", "line 3"},
        {"=cmd|' /C calc'!A0,sleeve,470,,,,", "line 3, column 1 (belt)"},
    }));
    const QString csv = shop.folder.with(
        "bad.csv",
        QByteArray("belt,kind,width_mm,ribs,made,place,cost\nH8M 1200,sleeve,470,,,,\n") + row + "\n");
    const Answer answer = run({"import", "stock", csv, "--shop", shop.file});
    CHECK(answer.exit == 2);
    CHECK(answer.err.contains(told));
    CHECK(run({"export", "ledger", "--shop", shop.file}).out == before);
}

TEST_CASE("An import with a column that is not understood is refused, not half read", "[app][import]") {
    const DemoShop shop;
    const Answer answer =
        run({"import", "stock", shop.folder.with("x.csv", "belt,kind,width_mm,ribs,colour\n"), "--shop",
             shop.file});
    CHECK(answer.exit == 2);
    CHECK(answer.err.contains("line 1, column 5"));
    CHECK(run({"import", "prices", shop.folder.file("x.csv"), "--shop", shop.file}).exit == 2);
}

TEST_CASE("Belts are added and changed by a table, all or none", "[app][import]") {
    const DemoShop shop;
    const QString good = shop.folder.with(
        "belts.csv", "belt,price,listed,delivery_days\nH8M 1200,0.50,20 30,4\nH5M 1000,0.36,15 25,6\n");
    CHECK(run({"import", "belts", good, "--shop", shop.file}).exit == 0);
    // 90 mm at 0.50 and three cuts at 2.50.
    CHECK(run({"suggest", "--shop", shop.file, "3 x H8M 1200 30", "--json"})
              .json()["price"]
              .toObject()["net"] == 52.5);
    const QString bad = shop.folder.with(
        "bad.csv", "belt,price,listed,delivery_days\nH8M 1200,0.90,20,4\nH8M 1200,cheap,20 0,soon\n");
    const Answer refused = run({"import", "belts", bad, "--shop", shop.file});
    CHECK(refused.exit == 2);
    for (const char* fault : {"line 3, column 1 (belt)", "line 3, column 2 (price)",
                              "line 3, column 3 (listed)", "line 3, column 4 (delivery_days)"})
        CHECK(refused.err.contains(fault));
    CHECK(run({"suggest", "--shop", shop.file, "3 x H8M 1200 30", "--json"})
              .json()["price"]
              .toObject()["net"] == 52.5);
}

TEST_CASE("What a spreadsheet would run as a formula leaves the program as text, and comes back as it was",
          "[app][export]") {
    const DemoShop shop;
    const QString csv = shop.folder.with(
        "x.csv", "belt,kind,width_mm,ribs,place,batch\nH8M 1200,sleeve,470,,=1+2,\"@SUM(A1), \"\"x\"\"\"\n");
    REQUIRE(run({"import", "stock", csv, "--shop", shop.file}).exit == 0);
    const QByteArray stock = run({"export", "stock", "--shop", shop.file}).out;
    CHECK(stock.contains(",'=1+2,"));
    CHECK(stock.contains(",\"'@SUM(A1), \"\"x\"\"\","));
    CHECK(stock.contains("\r\n"));
    REQUIRE(run({"import", "stock", shop.folder.with("again.csv", stock), "--shop", shop.file}).exit == 0);
    CHECK_FALSE(run({"export", "stock", "--shop", shop.file}).out.contains("''=1+2"));
}

TEST_CASE("The ledger leaves as a row a posting, and each movement sums to nothing", "[app][export]") {
    const DemoShop shop;
    const QByteArray csv = run({"export", "ledger", "--shop", shop.file}).out;
    CHECK(csv.startsWith(
        "movement,at,act,person,belt,account,piece,order,width_mm,ribs,cost,reason,note,undoes,cutter\r\n"));
    const Answer answer = run({"export", "ledger", "--shop", shop.file, "--json"});
    const auto rows = QJsonDocument::fromJson(answer.out).array();
    CHECK(rows.size() == csv.count("\r\n") - 1);
    QMap<QString, qint64> sums; // in thousandths, read from the text without rounding errors
    for (const auto& row : rows) {
        const auto fields = row.toObject();
        const QString amount =
            fields["width_mm"].isNull() ? fields["ribs"].toString() : fields["width_mm"].toString();
        sums[fields["movement"].toString()] += qRound64(amount.toDouble() * 1000);
    }
    CHECK(sums.size() > 100);
    for (const qint64 sum : sums)
        CHECK(sum == 0);
}

TEST_CASE("A plan can be made from what the shop exports", "[app][export][plan]") {
    const DemoShop shop;
    const QByteArray stock = run({"export", "stock", "--shop", shop.file}).out;
    const QString orders =
        shop.folder.with("orders.csv", "line,belt,width_mm,ribs,quantity\n1,H8M 1200,30,,3\n");
    const Answer answer =
        run({"plan", "--stock", shop.folder.with("stock.csv", stock), "--orders", orders, "--json"});
    CHECK(answer.exit == 0);
    CHECK(answer.json()["proven"] == true);
}
