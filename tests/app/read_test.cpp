#include "tests/app/printing.h"
#include "tests/app/program.h"

#include <QJsonArray>

using namespace riband::tests;

TEST_CASE("riband read gives the one reading of a designation in the documented form", "[app][read]") {
    const Answer answer = run({"read", "3 x H8M 1200 30", "--json"});
    CHECK(answer.exit == 0);
    CHECK(answer.err.isEmpty());
    // ISO 13050, 150 teeth of 8 mm: 1200 mm; for 838 to 1676 mm long belts up to 40 wide +0.8 -1.2
    // (width_tolerances.csv).
    CHECK(answer.json() == jsonOf(R"({"readings":[{"profile":"H8M","teeth":150,"length_mm":1200,"width_mm":30,
        "ribs":null,"quantity":3,"standard":"ISO 13050","text":"1200H8M30",
        "width_tolerance_mm":{"minus":1.2,"plus":0.8}}],"question":null,"error":null})"));
}

TEST_CASE("riband read gives inch widths and lengths exactly", "[app][read]") {
    const auto reading = run({"read", "322L075", "--json"}).json()["readings"].toArray()[0].toObject();
    CHECK(reading["teeth"] == 86);
    CHECK(reading["length_mm"] == 819.15);
    CHECK(reading["width_mm"] == 19.05);
    CHECK(reading["text"] == "322L075");
}

TEST_CASE("riband read counts the ribs of a ribbed belt and knows no width tolerance for it", "[app][read]") {
    const auto reading = run({"read", "6PJ1194", "--json"}).json()["readings"].toArray()[0].toObject();
    CHECK(reading["ribs"] == 6);
    CHECK(reading["width_mm"] == 14.04); // six ribs of 2.34 mm, ISO 9982
    CHECK(reading["teeth"].isNull());
    CHECK(reading["width_tolerance_mm"].isNull());
}

TEST_CASE("riband read asks with exit 1 where a text has several meanings", "[app][read]") {
    const Answer answer = run({"read", "8m-1200-30", "--json"});
    CHECK(answer.exit == 1);
    CHECK(answer.json()["readings"].toArray().size() == 4); // H, S, R and G
    CHECK_FALSE(answer.json()["question"].toString().isEmpty());
    CHECK(answer.json()["error"].isNull());
}

TEST_CASE("riband read asks for the width of a single reading without one, and that is one reading",
          "[app][read]") {
    const Answer answer = run({"read", "H8M 1200", "--json"});
    CHECK(answer.exit == 0);
    CHECK(answer.json()["readings"].toArray().size() == 1);
    CHECK_FALSE(answer.json()["question"].toString().isEmpty());
}

TEST_CASE("riband read says with exit 2 what is wrong and where", "[app][read]") {
    const Answer answer = run({"read", "H8M 1203 30", "--json"});
    CHECK(answer.exit == 2);
    CHECK(answer.json()["readings"].toArray().isEmpty());
    CHECK(answer.json()["error"].toString().contains("1203"));
    CHECK(answer.json()["error"].toString().contains("H8M 1200"));
    CHECK(answer.err.contains("column 5")); // "H8M 1203": the number begins there
}

TEST_CASE("riband read survives whatever it is given", "[app][read]") {
    const QString text = GENERATE(QString(), QString(" "), QString(9'999, 'x'), QString("=1+1"),
                                  QString("'; DROP TABLE piece;--"), QString("H8M 99999999999999999999 30"),
                                  QString("H8M 1200 -30"), QString("\u0661\u0662 T5"),
                                  QString("H8M 1200 1e300"), QString("0 x H8M 1200 30"));
    INFO(text.left(60).toStdString());
    const Answer answer = run({"read", "--json", "--", text});
    CHECK(answer.exit == 2);
    CHECK_FALSE(answer.json()["error"].toString().isEmpty());
}

TEST_CASE("A verb without what it needs, with too much or with an unknown option is bad input", "[app]") {
    CHECK(run({"read"}).exit == 2);
    CHECK(run({"read", "H8M", "1200"}).exit == 2);
    CHECK(run({"read", "H8M 1200 30", "--colour"}).exit == 2);
    CHECK(run({"read", "H8M 1200 30", "--json=yes"}).exit == 2);
    CHECK(run({"frobnicate"}).exit == 2);
    CHECK_FALSE(run({"frobnicate"}).err.isEmpty());
}

TEST_CASE("Help and version are answers, for every verb", "[app]") {
    CHECK(run({"--version"}).out.startsWith("Riband "));
    const Answer help = run({"--help"});
    CHECK(help.exit == 0);
    for (const char* verb : {"read", "plan", "suggest", "identify", "gauge", "verify", "backup", "restore",
                             "import", "receive", "move", "export", "demo"}) {
        CHECK(help.out.contains(verb));
        const Answer told = run({verb, "--help"});
        CHECK(told.exit == 0);
        CHECK(told.out.contains(QByteArray("Usage: riband ") + verb));
        CHECK(told.out.contains("--json"));
    }
}
