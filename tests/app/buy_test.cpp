#include "tests/app/demo_shop_file.h"
#include "tests/app/printing.h"

#include <QJsonArray>

using namespace riband::tests;

namespace {

QJsonObject lineOf(const QJsonObject& list, const QString& belt) {
    for (const auto& line : list["lines"].toArray())
        if (line.toObject()["belt"] == belt) return line.toObject();
    FAIL("no line of " << belt.toStdString());
    return {};
}

double sumOf(const QJsonObject& list) {
    double sum = 0;
    for (const auto& line : list["lines"].toArray())
        sum += line.toObject()["cost"].toDouble();
    return sum;
}

} // namespace

TEST_CASE("The purchase list says of every belt what to buy and why", "[app][buy]") {
    const DemoShop shop;
    const Answer answer = run({"report", "buy", "--shop", shop.file, "--json"});
    REQUIRE(answer.exit == 0);
    const QJsonObject list = answer.json();
    CHECK(list["lines"].toArray().size() > 5);
    CHECK(list["service"] == 0.95);
    CHECK(list["cost"].toDouble() == Approx(sumOf(list)));
    const QJsonObject line = lineOf(list, "H8M 1200");
    for (const char* key : {"sleeves", "wanted", "sleeve_mm", "risk", "reorder_point", "lot", "orders_a_year",
                            "asked_a_year_mm", "forecast", "widths", "keeping", "pre_cut", "why"})
        CHECK(line.contains(key));
    CHECK_FALSE(line["why"].toString().isEmpty());
    CHECK(line["widths"].toArray().first().toObject()["waste_percent"].toDouble() > 0);
    CHECK(run({"report", "buy", "--shop", shop.file, "--json"}).out == answer.out);
}

TEST_CASE("A budget is kept, and less of it buys no more", "[app][buy]") {
    const DemoShop shop;
    const double whole = run({"report", "buy", "--shop", shop.file, "--json"}).json()["cost"].toDouble();
    double before = whole;
    for (const double share : {0.6, 0.3, 0.0}) {
        const QString budget = QString::number(whole * share, 'f', 2);
        const QJsonObject list =
            run({"report", "buy", "--shop", shop.file, "--json", "--budget", budget}).json();
        CHECK(list["cost"].toDouble() <= budget.toDouble());
        CHECK(list["cost"].toDouble() <= before);
        CHECK(list["proven"] == true);
        before = list["cost"].toDouble();
    }
    CHECK(run({"report", "buy", "--shop", shop.file, "--budget", "much"}).exit == 2);
    CHECK(run({"report", "buy", "--shop", shop.file, "--budget", "-3"}).exit == 2);
}

TEST_CASE("The purchase list is a table and a paper, for the owner alone", "[app][buy]") {
    const DemoShop shop;
    const Answer csv = run({"report", "buy", "--shop", shop.file, "--csv"});
    CHECK(csv.out.startsWith("belt,sleeve_mm,sleeve_ribs,sleeves,each,cost,delivery_days,why\r\n"));
    const QString pdf = shop.folder.file("list.pdf");
    CHECK(run({"report", "buy", "--shop", shop.file, "--pdf", pdf}).exit == 0);
    QFile file(pdf);
    REQUIRE(file.open(QIODevice::ReadOnly));
    CHECK(file.read(5) == "%PDF-");
    CHECK(run({"report", "buy", "--shop", shop.file, "--person", "CL"}).exit == 1);
}

TEST_CASE("A year is played again, both ways on the same orders", "[app][replay]") {
    const DemoShop shop;
    const Answer answer = run({"replay", "--what-if", "trim=2.5", "--what-if", "trim=1,least=40", "--shop",
                               shop.file, "--seeds", "4", "--json"});
    REQUIRE(answer.exit == 0);
    const QJsonArray alternatives = answer.json()["alternatives"].toArray();
    REQUIRE(alternatives.size() == 3);
    const auto difference = [&](int i, const char* figure) {
        return alternatives[i].toObject()["difference"].toObject()[figure].toObject()["mean"].toDouble();
    };
    CHECK(difference(1, "yield_percent") == 0); // trim is 2.5 mm already
    CHECK(difference(1, "mountings") == 0);
    CHECK(alternatives[2].toObject()["what_if"] == "trim=1,least=40");
    CHECK(alternatives[0].toObject()["figures"].toObject()["sleeves"].toObject()["mean"].toDouble() > 0);
}

TEST_CASE("What can't be changed is told with what can", "[app][replay]") {
    const DemoShop shop;
    for (const char* what : {"colour=red", "trim", "trim=-1", "service=40%", "price=cheap", "together=maybe",
                             "sleeve=9999", "lead=0"}) {
        INFO(what);
        const Answer answer = run({"replay", "--what-if", what, "--shop", shop.file});
        CHECK(answer.exit == 2);
        CHECK(answer.err.contains("--what-if"));
    }
    CHECK(run({"replay", "--shop", shop.file}).exit == 2);
    CHECK(run({"replay", "--what-if", "trim=2", "--from", "dreams", "--shop", shop.file}).exit == 2);
    CHECK(run({"replay", "--what-if", "trim=2", "--seeds", "0", "--shop", shop.file}).exit == 2);
}

TEST_CASE("What makers offer is taken in whole or not at all", "[app][import][buy]") {
    const DemoShop shop;
    const QString good = shop.folder.with("offers.csv", "belt,sleeve_mm,cost\nH8M 1200,500,30.00\n");
    CHECK(run({"import", "offers", good, "--shop", shop.file}).exit == 0);
    const auto widths = [&] {
        return lineOf(run({"report", "buy", "--shop", shop.file, "--json"}).json(), "H8M 1200")["widths"]
            .toArray()
            .size();
    };
    CHECK(widths() == 2);
    const QString bad = shop.folder.with(
        "bad.csv", "belt,sleeve_mm,sleeve_ribs,cost\nH8M 1200,450,,30\nH8M 1200,450,,31\nH8M 1200,,9,dear\n");
    const Answer refused = run({"import", "offers", bad, "--shop", shop.file});
    CHECK(refused.exit == 2);
    for (const char* fault :
         {"line 3, column 1 (belt)", "line 4, column 3 (sleeve_ribs)", "line 4, column 4 (cost)"})
        CHECK(refused.err.contains(fault));
    CHECK(widths() == 2);
}
