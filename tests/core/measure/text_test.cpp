#include "core/measure/text.h"
#include "tests/catch.h"

using namespace riband;

namespace {

void checkWidth(const char* text, std::int64_t micrometres) {
    INFO(text);
    const auto width = readWidth(text);
    REQUIRE(width.ok());
    CHECK(width->inMicrometres() == micrometres);
}

void checkNoWidth(const char* text, TextFault fault) {
    INFO(text);
    const auto width = readWidth(text);
    REQUIRE_FALSE(width.ok());
    CHECK(width.reason() == fault);
}

} // namespace

TEST_CASE("A width is read exactly, with point or comma", "[measure]") {
    checkWidth("30", 30'000);
    checkWidth(" 30 mm ", 30'000);
    checkWidth("19.05", 19'050);
    checkWidth("19,05mm", 19'050);
    checkWidth("0.001", 1);
    checkWidth(".5", 500);
    checkWidth("3.2cm", 32'000);
    checkWidth("0.47 m", 470'000);
    checkWidth("30.000000", 30'000);
    checkWidth("100 m", 100'000'000);
}

TEST_CASE("Inches are read as decimals and as fractions", "[measure]") {
    // the width codes of ISO 5296 and ARPM IP-24: 025, 031, 037, 050, 075, 100
    checkWidth("1/4\"", 6'350);
    checkWidth("5/16 in", 7'938); // 7937.5: the half micrometre goes up
    checkWidth("3/8\"", 9'525);
    checkWidth("1/2 inch", 12'700);
    checkWidth("3/4", 19'050); // nobody writes a fraction of a millimetre
    checkWidth("0.75 in", 19'050);
    checkWidth("1 1/2\"", 38'100);
    checkWidth("3/16\"", 4'763); // 4762.5
    checkWidth("1 in", 25'400);
}

TEST_CASE("What is no width says why", "[measure]") {
    checkNoWidth("", TextFault::Empty);
    checkNoWidth("   ", TextFault::Empty);
    checkNoWidth("wide", TextFault::NotANumber);
    checkNoWidth("-", TextFault::NotANumber);
    checkNoWidth("-3", TextFault::Negative);
    checkNoWidth("30.0005", TextFault::TooFine);
    checkNoWidth("30 km", TextFault::UnknownUnit);
    checkNoWidth("30 30", TextFault::UnknownUnit);
    checkNoWidth("3/4 mm", TextFault::UnknownUnit);
    checkNoWidth("3/0", TextFault::NotANumber);
    checkNoWidth("101 m", TextFault::TooLarge);
    checkNoWidth("99999999999999999999999", TextFault::TooLarge);
    checkNoWidth("1.2.3", TextFault::UnknownUnit);
    checkNoWidth("1e3", TextFault::UnknownUnit);
    checkNoWidth("NaN", TextFault::NotANumber);
}

TEST_CASE("Half a rib is too fine", "[measure]") {
    CHECK(readRibs("6 ribs")->count() == 6);
    CHECK(readRibs("1 Rib")->count() == 1);
    CHECK(readRibs("6.5").reason() == TextFault::TooFine);
    CHECK(readRibs("6 mm").reason() == TextFault::UnknownUnit);
    CHECK(readExtent("6", Unit::Rib).value() == Extent{Ribs{6}});
    CHECK(readExtent("6", Unit::Micrometre).value() == Extent{Width::millimetres(6)});
}

TEST_CASE("A length is read down to the nanometre", "[measure]") {
    CHECK(readLength("1200").value() == Length::millimetres(1200));
    CHECK(readLength("1.2 m").value() == Length::millimetres(1200));
    CHECK(readLength("47\"").value() == Length::micrometres(1'193'800));
    CHECK(readLength("207.26").value() == Length::micrometres(207'260));
    CHECK(readLength("2.0726").value() == Length::nanometres(2'072'600));
}

TEST_CASE("Money is read and written with the currency's decimals", "[measure]") {
    const Currency euro{"EUR", 2};
    CHECK(readMoney("105.54", euro).value() == Money::minor(10554));
    CHECK(readMoney("105,5", euro).value() == Money::minor(10550));
    CHECK(readMoney("-3", euro).value() == Money::minor(-300));
    CHECK(readMoney("0.005", euro).reason() == TextFault::TooFine);
    CHECK(readMoney("-5t", euro).reason() == TextFault::NotANumber); // no unit that could be another one
    CHECK(readMoney("5 mm", euro).reason() == TextFault::NotANumber);
    CHECK(readMoney("7", Currency("JPY", 0)).value() == Money::minor(7));
    CHECK(printMoney(Money::minor(10554), euro) == "105.54");
    CHECK(printMoney(Money::minor(-5), euro) == "-0.05");
    CHECK(printMoney(Money::minor(7), Currency("JPY", 0)) == "7");
}

TEST_CASE("A price for width may be finer than a cent", "[measure]") {
    const Currency euro{"EUR", 2};
    CHECK(readWidthPrice("0.0855", euro)->inThousandths() == 8550);
    CHECK(readWidthPrice("0.000001", euro).reason() == TextFault::TooFine);
    CHECK(printWidthPrice(WidthPrice::thousandths(8550), euro) == "0.0855");
    CHECK(printWidthPrice(WidthPrice::thousandths(51'000), euro) == "0.51");
}

TEST_CASE("A percentage has one decimal at most", "[measure]") {
    CHECK(readPercent("20 %")->count() == 200);
    CHECK(readPercent("2,5")->count() == 25);
    CHECK(readPercent("2.55").reason() == TextFault::TooFine);
    CHECK(printPercent(Permille{25}) == "2.5");
    CHECK(printPercent(Permille{200}) == "20");
}

TEST_CASE("What is written reads back as the same width", "[measure]") {
    for (std::int64_t um = 0; um < 1'000'000; um += 37) {
        const Width width = Width::micrometres(um);
        if (readWidth(printMillimetres(width)).value() != width) FAIL(printMillimetres(width));
    }
    CHECK(printMillimetres(Width::micrometres(19'050)) == "19.05");
    CHECK(printMillimetres(Width::millimetres(30)) == "30");
    CHECK(printMillimetres(std::int64_t{-30'500}) == "-30.5");
    CHECK(printMillimetres(Length::nanometres(207'260'000)) == "207.26");
    CHECK(printCount(Ribs{6}) == "6");
}
