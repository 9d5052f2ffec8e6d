#include "tests/app/demo_shop_file.h"
#include "tests/catch.h"

#include <QDate>
#include <QJsonArray>

using namespace riband::tests;

namespace {

/// Both sides of a group's book, in thousandths.
std::pair<qint64, qint64> sidesOf(const QJsonObject& group) {
    const auto sum = [&group](const QStringList& names, const QJsonObject& scrap) {
        double all = 0;
        for (const QString& name : names)
            all += group[name].toDouble();
        for (const QJsonValue value : scrap)
            all += value.toDouble();
        return qRound64(1000 * all);
    };
    return {
        sum({"opening", "bought", "found"}, {}),
        sum({"sold", "ready", "trim", "kerf", "end", "difference", "closing"}, group["scrap"].toObject())};
}

} // namespace

TEST_CASE("Each group of the waste stands beside its earlier periods, or null where the book begins later",
          "[app][report]") {
    const DemoShop shop;
    const QString today = QDate::currentDate().toString(Qt::ISODate),
                  first = QDate::currentDate().addDays(-30).toString(Qt::ISODate);
    const Answer answer = run(
        {"report", "waste", "--shop", shop.file, "--from", first, "--to", today, "--by", "belt", "--json"});
    REQUIRE(answer.exit == 0);
    const QJsonObject report = answer.json();
    CHECK(report["period_before"].toObject()["told"] == "whole"); // four months are told
    CHECK(report["year_before"].toObject()["told"] == "nothing");
    double before = 0, total = 0;
    const QJsonArray groups = report["groups"].toArray();
    REQUIRE(groups.size() > 5);
    for (const QJsonValue each : groups) {
        const QJsonObject group = each.toObject();
        INFO(group["group"].toString().toStdString());
        const auto [in, out] = sidesOf(group);
        CHECK(in == out);
        CHECK(group["year_before"].isNull());
        REQUIRE(group["before"].isObject());
        if (group["unit"] == "mm") before += group["before"].toObject()["sold"].toDouble();
    }
    for (const QJsonValue each : report["period_before"].toObject()["total"].toArray())
        if (each.toObject()["unit"] == "mm") total = each.toObject()["sold"].toDouble();
    CHECK(before > 0);
    CHECK(before == Approx(total));
    const Answer clerk =
        run({"report", "waste", "--shop", shop.file, "--by", "belt", "--person", "CL", "--csv"});
    CHECK(clerk.exit == 0);
    CHECK(clerk.out.contains("yield_before_percent"));
    CHECK_FALSE(clerk.out.contains("cost"));
}

TEST_CASE(
    "The report of overrides tells each decision with the person's own words, and who refused the shelf",
    "[app][report]") {
    const DemoShop shop;
    const QStringList call{"report", "overrides", "--shop", shop.file, "--from", "2000-01-01"};
    const Answer answer = run(call + QStringList{"--json"});
    REQUIRE(answer.exit == 0);
    const QJsonObject report = answer.json();
    QString words;
    double replayed = 0, all = 0;
    for (const QJsonValue each : report["decisions"].toArray()) {
        words += each.toObject()["words"].toString() + QLatin1Char('\n');
        replayed += each.toObject()["replayed_mm"].toString().toDouble();
    }
    CHECK(words.contains("a pallet stood before the other one"));
    for (const QJsonValue each : report["rows"].toArray())
        if (each.toObject()["kind"] == "all") all = each.toObject()["replayed_mm"].toString().toDouble();
    CHECK(replayed == Approx(all).margin(0.0005));
    const Answer csv = run(call + QStringList{"--by", "order", "--csv"});
    CHECK(csv.out.startsWith("at,order,belt,person,reason,words,suggested_from,taken_from,"));
    CHECK(run(call + QStringList{"--by", "moon"}).exit == 2);
    const Answer clerk = run(call + QStringList{"--by", "order", "--person", "CL", "--csv"});
    CHECK(clerk.out.contains("a pallet stood before the other one"));
    CHECK_FALSE(clerk.out.contains("cost"));
}
