#include "core/measure/money.h"
#include "tests/catch.h"

using namespace riband;

TEST_CASE("Halves are rounded away from zero", "[measure]") {
    CHECK(roundedQuotient(5, 10) == 1);
    CHECK(roundedQuotient(-5, 10) == -1);
    CHECK(roundedQuotient(4, 10) == 0);
    CHECK(roundedQuotient(-4, 10) == 0);
    CHECK(roundedQuotient(15, 10) == 2);
    CHECK(roundedQuotient(1, 3) == 0);
    CHECK(roundedQuotient(2, 3) == 1);
    CHECK(roundedQuotient(0, 7) == 0);
    CHECK_THROWS_AS(roundedQuotient(1, 0), std::invalid_argument);
}

TEST_CASE("A price for width is multiplied out before it is rounded", "[measure]") {
    // 90 mm at 0.51 are 45.90
    CHECK(WidthPrice::thousandths(51'000) * Extent{Width::millimetres(90)} == Money::minor(4590));
    // 19.05 mm at 0.0855 are 1.628775, so 1.63
    CHECK(WidthPrice::thousandths(8'550) * Extent{Width::micrometres(19'050)} == Money::minor(163));
    // 6 ribs at 0.395 are 2.37
    CHECK(WidthPrice::thousandths(39'500) * Extent{Ribs{6}} == Money::minor(237));
}

TEST_CASE("A share in thousandths is exact", "[measure]") {
    CHECK(Money::minor(8795) * Permille{200} == Money::minor(1759));
    CHECK(Money::minor(999) * Permille{25} == Money::minor(25)); // 24.975
}

TEST_CASE("A total can be rounded to the coins there are", "[measure]") {
    CHECK(roundedTo(Money::minor(10552), 5) == Money::minor(10550));
    CHECK(roundedTo(Money::minor(10553), 5) == Money::minor(10555));
    CHECK(roundedTo(Money::minor(10553), 1) == Money::minor(10553));
}

TEST_CASE("A currency is three capital letters", "[measure]") {
    CHECK_THROWS_AS(Currency("eur", 2), std::invalid_argument);
    CHECK_THROWS_AS(Currency("EURO", 2), std::invalid_argument);
    CHECK_THROWS_AS(Currency("EUR", 5), std::invalid_argument);
    CHECK(Currency("JPY", 0).decimals() == 0);
}
