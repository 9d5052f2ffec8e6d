#include "tests/catch.h"

#include "ui/which/measures.h"

#include <set>

using namespace riband;
using namespace riband::ui;

TEST_CASE("A figure is read as people type it, with its own error if they know it", "[which]") {
    CHECK(readFigure("100.1")->value == Approx(100.1));
    CHECK(readFigure(" 100,1 mm ")->value == Approx(100.1));
    CHECK_FALSE(readFigure("100.1")->error);
    CHECK(readFigure("100.1 ±0.3")->error == Approx(.3));
    CHECK(readFigure("100,1 +-0,3 mm")->error == Approx(.3));
    CHECK(readFigure("100.1+/-0.3")->error == Approx(.3));
    CHECK(readFigure("1 in")->value == Approx(25.4));
    CHECK(readFigure("0.5\"")->value == Approx(12.7));
    for (const char* none : {"", "abc", "1.2.3", "-4", "5 ±", "5 ±0", "10 cm of it"}) {
        INFO(none);
        CHECK_FALSE(readFigure(QString::fromUtf8(none)));
    }
}

TEST_CASE("Everything that can be measured is asked for once, but the shape, which is drawn", "[which]") {
    std::set<int> asked;
    std::set<QChar> keys;
    for (const AskedMeasure& each : askedMeasures()) {
        CHECK(asked.insert(static_cast<int>(each.what)).second);
        const auto at = each.name.indexOf('&');
        REQUIRE(at >= 0);
        INFO(each.name.toStdString());
        CHECK(keys.insert(each.name[at + 1].toLower()).second); // no key twice
    }
    CHECK(asked.size() == belt::identify::measureCount - 1);
    CHECK(asked.count(static_cast<int>(belt::identify::Measure::Shape)) == 0);
}
