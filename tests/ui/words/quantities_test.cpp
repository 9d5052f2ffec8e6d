#include "tests/catch.h"

#include "ui/words/report_words.h"
#include "ui/words/words.h"

#include <QLocale>

using namespace riband;

namespace {

/// The screen's language for the time of a test.
class Speaking {
public:
    explicit Speaking(QLocale::Language language) { QLocale::setDefault(QLocale{language}); }
    ~Speaking() { QLocale::setDefault(QLocale::c()); }
};

} // namespace

TEST_CASE("Widths are shown exactly, with their unit", "[words]") {
    CHECK(ui::shown(Extent{Width::millimetres(30)}) == "30 mm");
    CHECK(ui::shown(Extent{Width::micrometres(19'050)}) == "19.05 mm");
    CHECK(ui::shownNumber(Extent{Width::micrometres(19'050)}) == "19.05");
    CHECK(ui::shown(Extent{Ribs{1}}) == "1 rib");
    CHECK(ui::shown(Extent{Ribs{6}}) == "6 ribs");
    CHECK(ui::shownNumber(Extent{Ribs{6}}) == "6");
}

TEST_CASE("The decimal sign is the local one", "[words]") {
    const Speaking german{QLocale::German};
    CHECK(ui::shown(Extent{Width::micrometres(19'050)}) == "19,05 mm");
    CHECK(ui::shown(Length::micrometres(819'150)) == "819,15 mm");
    CHECK(ui::shown(Money::minor(10'554), Currency{"EUR", 2}) == "105,54");
    CHECK(ui::shown(belt::WidthTolerance{Width::micrometres(800), Width::micrometres(1'300), "", {}}) ==
          "+0,8 -1,3");
}

TEST_CASE("Sums of a report are exact and in groups of three", "[words]") {
    CHECK(ui::shownSum(Unit::Micrometre, 5'847'539'977) == u"5\u202f847\u202f539.977 mm");
    CHECK(ui::shownSum(Unit::Micrometre, -10'000'500) == u"\u221210\u202f000.5 mm");
    CHECK(ui::shownSum(Unit::Micrometre, 9'999'000) == "9999 mm");
    CHECK(ui::shownSum(Unit::Rib, 131'466) == u"131\u202f466 ribs");
    CHECK(ui::shownSum(Money::minor(-6'444'972), Currency{"EUR", 2}) == u"\u221264\u202f449.72");
}

TEST_CASE("Money has the decimals of its currency", "[words]") {
    CHECK(ui::shown(Money::minor(10'554), Currency{"EUR", 2}) == "105.54");
    CHECK(ui::shown(Money::minor(7), Currency{"JPY", 0}) == "7");
}

TEST_CASE("A day is shown as the international standard writes it where no country is set", "[words]") {
    CHECK(ui::shown(Date{std::chrono::year{2026} / 3 / 31}) == "2026-03-31");
}
