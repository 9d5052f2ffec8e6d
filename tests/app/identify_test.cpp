#include "tests/app/printing.h"
#include "tests/app/program.h"

#include <QJsonArray>

using namespace riband::tests;

namespace {

QJsonObject best(const Answer& answer) { return answer.json()["candidates"].toArray()[0].toObject(); }

} // namespace

TEST_CASE("riband identify gives a settled belt in the documented form", "[app][identify]") {
    const Answer answer = run({"identify", "--pitch-over", "20=160.1", "--teeth", "150", "--thickness", "5.8",
                               "--shape", "half-round", "--width", "30", "--json"});
    CHECK(answer.exit == 0);
    CHECK(answer.err.isEmpty());
    QJsonObject candidate = best(answer);
    CHECK(candidate.take("probability").toDouble() > .95);
    CHECK(candidate == jsonOf(R"({"profile":"H8M","teeth":150,"length_mm":1200,"width_mm":30})"));
    CHECK(answer.json()["settled"] == true);
    CHECK(answer.json()["next"].isNull());
    CHECK(answer.json()["why"].toString().contains("H8M 1200"));
    CHECK(answer.json().size() == 4);
}

TEST_CASE("riband identify says with exit 1 what to measure next and over how many teeth",
          "[app][identify]") {
    const Answer answer = run({"identify", "--pitch-over", "10=50.4", "--shape", "trapezoid", "--json"});
    CHECK(answer.exit == 1);
    CHECK(answer.json()["settled"] == false);
    CHECK(answer.json()["next"].toObject() == jsonOf(R"({"option":"pitch-over","over":20})"));
    const QString why = answer.json()["why"].toString();
    CHECK(why.contains("differ by 0.8 mm; over 20 by 1.6 mm: measure 20"));
    CHECK(best(answer)["teeth"].isNull());
    CHECK(best(answer)["length_mm"].isNull());
}

TEST_CASE("riband identify asks for a measure that is not over anything", "[app][identify]") {
    const Answer answer = run({"identify", "--pitch-over", "20=100.1", "--thickness", "2.7", "--json"});
    CHECK(answer.exit == 1);
    CHECK(best(answer)["profile"] == "AT5");
    CHECK(answer.json()["next"].toObject() == jsonOf(R"({"option":"teeth","over":null})"));
}

TEST_CASE("riband identify says with exit 2 which readings disagree and by how much", "[app][identify]") {
    const Answer answer = run({"identify", "--pitch-over", "10=80", "--teeth", "175", "--outside", "1210",
                               "--shape", "half-round", "--json"});
    CHECK(answer.exit == 2);
    CHECK(answer.json()["settled"] == false);
    CHECK(answer.json()["next"].isNull());
    const QString why = answer.json()["why"].toString();
    CHECK(why.contains("25 teeth more than the 150 teeth of H8M 1200"));
    CHECK(why.contains("less than"));
    CHECK(QString::fromUtf8(answer.err).contains("25 teeth more"));
}

TEST_CASE("riband identify knows ribs", "[app][identify]") {
    const auto candidate =
        best(run({"identify", "--ribs-over", "5=9.4", "--ribs", "6", "--outside", "1209", "--json"}));
    CHECK(candidate["profile"] == "PJ");
    CHECK(candidate["teeth"].isNull());
    CHECK(candidate["width_mm"] == 14.04); // six ribs of 2.34 mm, ISO 9982
}

TEST_CASE("riband identify keeps a width if asked, and takes other errors", "[app][identify]") {
    const QStringList call{"identify", "--pitch-over", "20=160", "--teeth",
                           "150",      "--width",      "29.4",   "--json"};
    CHECK(best(run(call))["width_mm"] == 30);
    CHECK(best(run(call + QStringList{"--keep-width"}))["width_mm"] == 29.4);
    const QStringList ruler{"identify", "--pitch-over", "10=50.75", "--shape", "trapezoid", "--json"};
    const double byRule = best(run(ruler))["probability"].toDouble();
    const double byCalliper =
        best(run(ruler + QStringList{"--error", "pitch-over=0.1"}))["probability"].toDouble();
    CHECK(byCalliper > byRule + .1);
}

TEST_CASE("riband identify takes a decimal comma and several distances", "[app][identify]") {
    const Answer answer = run({"identify", "--pitch-over", "10=50,4", "--pitch-over", "50=254,0", "--json"});
    CHECK(best(answer)["profile"] == "XL");
}

TEST_CASE("riband identify tells of a piece by the metre and of teeth on both sides", "[app][identify]") {
    const Answer metre =
        run({"identify", "--pitch-over", "20=100", "--thickness", "2.7", "--open-ended", "--json"});
    CHECK(metre.exit == 0);
    CHECK(metre.json()["why"].toString().contains("by the metre"));
    const Answer both =
        run({"identify", "--pitch-over", "20=100", "--thickness", "3.4", "--double-sided", "--json"});
    CHECK(best(both)["profile"] == "T5-DL");
    CHECK(both.json()["why"].toString().contains("double-sided sleeve"));
}

TEST_CASE("riband identify thinks what a shop sells likelier", "[app][identify]") {
    const Folder folder;
    REQUIRE(run({"demo", "--shop-only", "--out", folder.file("")}).exit == 0);
    const QStringList call{"identify", "--pitch-over", "20=160", "--teeth", "150", "--json"};
    const auto share = [](const Answer& answer, const QString& profile) {
        for (const QJsonValue& each : answer.json()["candidates"].toArray())
            if (each["profile"] == profile) return each["probability"].toDouble();
        return 0.0;
    };
    // The demo shop sells H8M 1200 and S8M 1200, no R8M and no G8M.
    const Answer lists = run(call), shop = run(call + QStringList{"--shop", folder.file("demo.riband")});
    CHECK(shop.exit == 1);
    CHECK(share(shop, "R8M") + share(shop, "G8M") < share(lists, "R8M") + share(lists, "G8M"));
    CHECK(run(call + QStringList{"--shop", folder.file("none.riband")}).exit == 2);
}

TEST_CASE("riband identify refuses what is no measure and says how it is written", "[app][identify]") {
    const auto call = GENERATE(
        QStringList{}, QStringList{"--pitch-over", "100"}, QStringList{"--pitch-over", "x=100"},
        QStringList{"--pitch-over", "20=abc"}, QStringList{"--pitch-over", "=100"},
        QStringList{"--pitch-over", "0=100"}, QStringList{"--pitch-over", "99999999999=100"},
        QStringList{"--teeth", "99.5"}, QStringList{"--teeth", "-3"}, QStringList{"--thickness", "nan"},
        QStringList{"--thickness", "inf"}, QStringList{"--outside", "1e300"}, QStringList{"--outside", ""},
        QStringList{"--shape", "square"}, QStringList{"--ribs-over", "1=3"},
        QStringList{"--teeth", "100", "--error", "teeth"},
        QStringList{"--teeth", "100", "--error", "colour=1"},
        QStringList{"--teeth", "100", "--error", "teeth=0"}, QStringList{"--teeth", "100", "--new", "--used"},
        QStringList{"--colour", "red"}, QStringList{"100"}, QStringList{"--teeth", "100", "--teeth", "101"},
        QStringList{"--shape", "trapezoid", "--shape", "ribs"},
        QStringList{"--teeth", "100", "--error", "flat=1", "--error", "flat=2"});
    INFO(call.join(' ').toStdString());
    const Answer answer = run(QStringList{"identify"} + call + QStringList{"--json"});
    CHECK(answer.exit == 2);
    CHECK(answer.out.isEmpty());
    CHECK(answer.err.startsWith("riband identify: "));
}

TEST_CASE("An option that is given twice is refused by both values, and a measure names its teeth",
          "[app][identify]") {
    CHECK(run({"identify", "--outside", "1200", "--outside", "1300"})
              .err.contains("--outside is given twice, 1200 and 1300: give it once."));
    CHECK(run({"drive", "--profile", "T5", "--z1", "20", "--z1", "30", "--z2", "40", "--centre", "300"})
              .err.contains("--z1 is given twice, 20 and 30"));
    CHECK(run({"identify", "--pitch-over", "20=1e300"}).err.contains("over 20 teeth: no belt is as large"));
}

TEST_CASE("riband identify says how far a count alone is off all belts, not that ribs have no teeth",
          "[app][identify]") {
    const Answer few = run({"identify", "--teeth", "1"});
    CHECK(few.exit == 2);
    CHECK(few.err.contains("9 teeth less than the 10 teeth of")); // the fewest that are reckoned with
    const Answer many = run({"identify", "--teeth", "19999"});
    CHECK(many.exit == 2);
    CHECK(many.err.contains(" teeth more than the "));
    const Answer ribs = run({"identify", "--ribs", "6", "--teeth", "150"});
    CHECK(ribs.exit == 2);
    CHECK(ribs.err.contains("The number of teeth does not go with P")); // a profile: no length was measured
    CHECK_FALSE(ribs.err.contains("PJ 4"));
}
