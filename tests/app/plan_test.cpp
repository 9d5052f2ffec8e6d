#include "tests/app/printing.h"
#include "tests/app/program.h"

#include <QJsonArray>

using namespace riband::tests;

namespace {

const QByteArray stockHead = "piece,belt,kind,width_mm,ribs,received\n";
const QByteArray ordersHead = "line,belt,width_mm,ribs,quantity\n";

Answer planned(const QByteArray& stock, const QByteArray& orders, const QStringList& options = {}) {
    const Folder folder;
    return run(QStringList{"plan", "--stock", folder.with("stock.csv", stockHead + stock), "--orders",
                           folder.with("orders.csv", ordersHead + orders), "--json"} +
               options);
}

} // namespace

TEST_CASE("riband plan gives the documented form, worked out by hand", "[app][plan]") {
    // 400 - 2.5 trim - 2 x 30 = 337.5 goes back; nothing is scrapped; 62.5 of worth is spent.
    const Answer answer = planned("S1,H8M 1200,sleeve,400,,2025-03-01\n", "1,H8M 1200,30,,2\n");
    CHECK(answer.exit == 0);
    CHECK(answer.json() == jsonOf(R"({"mountings":[{"piece":"S1","belt":"H8M 1200","trim_mm":2.5,
        "cuts":[{"line":"1","width_mm":30,"count":2}],"stops_mm":[30,60],"left_mm":337.5,"left_is":"remnant"}],
        "taken":[],"unserved":[],
        "totals":{"sold_mm":60,"trim_mm":2.5,"kerf_mm":0,"end_mm":0,"mountings":1,"new_sleeves":1},
        "worth_spent_mm":62.5,"bound_mm":62.5,"proven":true})"));
}

TEST_CASE("Ribbed belts are planned in whole ribs and say so", "[app][plan]") {
    // 60 - 1 trim - 2 x 6 = 47 ribs.
    const auto json = planned("P1,PJ 1194,sleeve,,60,2025-01-10\n", "1,PJ 1194,,6,2\n").json();
    const auto mounting = json["mountings"].toArray()[0].toObject();
    CHECK(mounting["trim_ribs"] == 1);
    CHECK(mounting["left_ribs"] == 47);
    CHECK(mounting["stops_ribs"] == QJsonArray{6, 12});
    CHECK(json["totals"].toObject()["sold_ribs"] == 12);
    CHECK_FALSE(json["totals"].toObject().contains("sold_mm"));
    CHECK(json["worth_spent_ribs"] == 13);
}

TEST_CASE("Toothed and ribbed belts in one stock have totals in both units", "[app][plan]") {
    const auto json = planned("S1,H8M 1200,sleeve,400,,2025-03-01\nP1,PJ 1194,sleeve,,60,2025-01-10\n",
                              "1,H8M 1200,30,,1\n2,PJ 1194,,6,1\n")
                          .json();
    CHECK(json["totals"].toObject()["sold_mm"] == 30);
    CHECK(json["totals"].toObject()["sold_ribs"] == 6);
    CHECK(json["totals"].toObject()["mountings"] == 2);
}

TEST_CASE("Ready belts of the asked width go first and need no mounting", "[app][plan]") {
    const auto json = planned("S1,H8M 1200,sleeve,400,,2025-03-01\nB1,H8M 1200,ready,30,,2025-03-02\n",
                              "1,H8M 1200,30,,1\n")
                          .json();
    CHECK(json["mountings"].toArray().isEmpty());
    CHECK(json["taken"].toArray() ==
          QJsonArray{QJsonObject{{"piece", "B1"}, {"belt", "H8M 1200"}, {"line", "1"}}});
    CHECK(json["totals"].toObject()["sold_mm"] == 30);
}

TEST_CASE("What can't be served is named with its reason, and the answer is no", "[app][plan]") {
    const Answer answer =
        planned("S1,H8M 1200,sleeve,100,,2025-03-01\n", "1,H8M 1200,200,,1\n2,T10 1250,27,,3\n");
    CHECK(answer.exit == 1);
    const auto unserved = answer.json()["unserved"].toArray();
    REQUIRE(unserved.size() == 2);
    CHECK(unserved[0].toObject()["line"] == "1");
    CHECK(unserved[1].toObject()["count"] == 3);
    CHECK(unserved[1].toObject()["why"].toString().contains("no piece"));
}

TEST_CASE("The rules of the cutter are options", "[app][plan]") {
    // 200 - 3 - 2 x (50 + 0.5) = 96 left; comma and point are both decimal signs.
    const auto json =
        planned("S1,T5 500,sleeve,200,,\n", "1,T5 500,50,,2\n", {"--trim", "3", "--kerf", "0,5"}).json();
    const auto mounting = json["mountings"].toArray()[0].toObject();
    CHECK(mounting["left_mm"] == 96);
    CHECK(mounting["trim_mm"] == 3);
    CHECK(json["totals"].toObject()["kerf_mm"] == 1);
    const auto ribs = planned("P1,PJ 1194,sleeve,,20,\n", "1,PJ 1194,,6,1\n", {"--trim-ribs", "2"}).json();
    CHECK(ribs["mountings"].toArray()[0].toObject()["left_ribs"] == 12);
}

TEST_CASE("A left-over under the stub is scrap and counts as end", "[app][plan]") {
    // 100 - 2.5 - 85 = 12.5 is less than the stub of 15.
    const auto json = planned("R1,H8M 1200,remnant,100,,\n", "1,H8M 1200,85,,1\n").json();
    CHECK(json["mountings"].toArray()[0].toObject()["left_is"] == "scrap");
    CHECK(json["totals"].toObject()["end_mm"] == 12.5);
}

TEST_CASE("A worth table can make another piece the better one", "[app][plan]") {
    const QByteArray stock = "R1,H8M 1200,remnant,101,,\nR2,H8M 1200,remnant,140,,\n",
                     orders = "1,H8M 1200,30,,1\n";
    const Folder folder;
    // Plain: both spend 32.5; R1 leaves 68.5, R2 107.5. With nothing under 100 worth anything, R1 would cost
    // its 80.
    const QString curve = folder.with("worth.csv", "width_mm,worth_mm\n100,80\n130,81\n");
    const auto json = planned(stock, orders, {"--worth", curve}).json();
    CHECK(json["mountings"].toArray()[0].toObject()["piece"] == "R2");
    CHECK(json["worth_spent_mm"] == 1); // 81 - 80
    const QString falling = folder.with("falling.csv", "width_mm,worth_mm\n100,80\n130,79\n");
    const Answer refused = planned(stock, orders, {"--worth", falling});
    CHECK(refused.exit == 2);
    CHECK(refused.err.contains("line 3, column 2"));
}

TEST_CASE("A time limit of nothing still gives a plan that serves, with an honest bound", "[app][plan]") {
    QByteArray stock, orders;
    for (int i = 1; i <= 30; ++i)
        stock += "S" + QByteArray::number(i) + ",H8M 1200,sleeve," + QByteArray::number(380 + i) + ",,\n";
    for (int i = 1; i <= 60; ++i)
        orders += QByteArray::number(i) + ",H8M 1200," + QByteArray::number(15 + i) + ",,3\n";
    const Answer answer = planned(stock, orders, {"--time-limit", "0"});
    CHECK(answer.exit >= 0);
    CHECK(answer.json()["bound_mm"].toDouble() <= answer.json()["worth_spent_mm"].toDouble());
    CHECK(answer.json()["totals"].toObject()["sold_mm"].toDouble() > 0);
}

TEST_CASE("The designation of a belt may be written in any way that has one meaning", "[app][plan]") {
    CHECK(planned("S1,h8m-1200,sleeve,400,,\n", "1,1200 H8M,30,,1\n").exit == 0);
    const Answer asked = planned("S1,8M 1200,sleeve,400,,\n", "1,H8M 1200,30,,1\n");
    CHECK(asked.exit == 2);
    CHECK(asked.err.contains("H8M 1200")); // names what it may be
}

TEST_CASE("One of the tables may come from standard input", "[app][plan]") {
    const Folder folder;
    const QString stock = folder.with("stock.csv", stockHead + "S1,H8M 1200,sleeve,400,,\n");
    CHECK(
        run({"plan", "--stock", stock, "--orders", "-", "--json"}, ordersHead + "1,H8M 1200,30,,1\n").exit ==
        0);
    CHECK(run({"plan", "--stock", "-", "--orders", "-"}, "").exit == 2);
}

TEST_CASE("The faults of both tables are told at once", "[app][plan]") {
    const Answer answer = planned("S1,H8M 1200,sleeve,-400,,2025-01-01\n", "1,H8M 1200,30,,0\n");
    CHECK(answer.exit == 2);
    CHECK(answer.err.contains("(width_mm)"));
    CHECK(answer.err.contains("(quantity)"));
}

TEST_CASE("Every bad row is told at once, with line, column and reason", "[app][plan]") {
    const Answer answer = planned("S1,H8M 1200,sleeve,-400,,2025-01-01\n" // line 2
                                  "S1,H8M 1200,sleeve,400,,2025-01-01\n"  // the code again
                                  "S2,H8M 1200,roll,400,,31.31.2025\n"    // no kind, no day
                                  "S3,=1+1,sleeve,400,,\n"                // no belt
                                  "S4,PJ 1194,sleeve,300,,\n"             // a ribbed belt in mm
                                  ",H8M 1200,sleeve,400,,\n",             // no code
                                  "1,H8M 1200,30,,1\n");
    CHECK(answer.exit == 2);
    CHECK(answer.out.isEmpty());
    for (const char* fault :
         {"line 2, column 4 (width_mm)", "line 3, column 1 (piece)", "line 4, column 3 (kind)",
          "line 4, column 6 (received)", "line 5, column 2 (belt)", "line 6, column 4 (width_mm)",
          "line 7, column 1 (piece)"})
        CHECK(answer.err.contains(fault));
}

TEST_CASE("Hostile tables are refused and never crash", "[app][plan]") {
    const QByteArray row = "S1,H8M 1200,sleeve,400,,2025-01-01\n";
    const QByteArray stock = GENERATE_COPY(
        QByteArray(), QByteArray("piece,belt\nS1,H8M 1200\n"), stockHead + "S1,H8M 1200,sleeve\n",
        QByteArray(10 << 20, 'x'), stockHead + QByteArray(10 << 20, ',') + "\n",
        stockHead + QByteArray("S\0,H8M 1200,sleeve,400,,\n", 26), stockHead + "S1,\"H8M 1200,sleeve,400,,\n",
        stockHead + "S1,H8M 1200,sleeve,99999999999999999999,,\n",
        stockHead + "S1,H8M 1200,sleeve,5000.001,,\n", stockHead + "S1,H8M 1200,sleeve,0,,\n",
        stockHead + "S1,H8M 1200,sleeve,1e3,,\n", stockHead + "S1,H8M 1200,sleeve,nan,,\n",
        stockHead + "\xff\xfe,H8M 1200,sleeve,400,,\n",
        QByteArray("piece,piece,belt,kind,width_mm,ribs,received\n"), row + stockHead);
    const Folder folder;
    const Answer answer = run({"plan", "--stock", folder.with("stock.csv", stock), "--orders",
                               folder.with("orders.csv", ordersHead + "1,H8M 1200,30,,1\n")});
    CHECK(answer.exit == 2);
    CHECK_FALSE(answer.err.isEmpty());
    CHECK(answer.out.isEmpty());
}

TEST_CASE("Bad options of plan are refused", "[app][plan]") {
    const QStringList options =
        GENERATE(QStringList{"--trim", "-1"}, QStringList{"--kerf", "thin"},
                 QStringList{"--trim-ribs", "1.5"}, QStringList{"--time-limit", "-1"},
                 QStringList{"--time-limit", "nan"}, QStringList{"--worth", "/nowhere.csv"},
                 QStringList{"--stock", "/"}, QStringList{"--orders", "/nowhere.csv"}, QStringList{"--end"});
    CHECK(planned("S1,H8M 1200,sleeve,400,,\n", "1,H8M 1200,30,,1\n", options).exit == 2);
}
