#include "core/measure/currency.h"
#include "tests/catch.h"

using namespace riband;

TEST_CASE("A currency is named by its three letters and has its own decimals", "[money]") {
    CHECK(currencyNamed("EUR") == Currency{"EUR", 2});
    CHECK(currencyNamed("chf") == Currency{"CHF", 2});
    CHECK(currencyNamed("JPY") == Currency{"JPY", 0}); // ISO 4217: no minor unit
    CHECK(currencyNamed("KWD") == Currency{"KWD", 3}); // a thousand fils
    for (const char* wrong : {"", "EU", "EURO", "E1R", "€", "EÜR"})
        CHECK_FALSE(currencyNamed(wrong));
}
