#include "core/shop/price.h"
#include "tests/catch.h"

namespace riband::shop {

namespace {

constexpr WidthPrice halfEuro = WidthPrice::thousandths(51'000); // 0.51 a millimetre

store::PriceRules plainRules() {
    store::PriceRules rules;
    rules.cuttingCharge = Money::minor(250);
    return rules;
}

std::int64_t totalOf(const store::PriceRules& rules, Extent extent, std::int64_t quantity) {
    return priceOf(rules, halfEuro, extent, quantity).total.inMinor();
}

Extent mm(std::int64_t millimetres) { return Width::millimetres(millimetres); }

} // namespace

TEST_CASE("A line costs its width, all belts, and the cutting charge of each", "[price]") {
    // 3 belts of 30 mm: 90 mm x 0.51 = 45.90; 3 x 2.50 = 7.50; together 53.40.
    const store::LinePrice price = priceOf(plainRules(), halfEuro, mm(30), 3);
    CHECK(price.width == Money::minor(4590));
    CHECK(price.cutting == Money::minor(750));
    CHECK(price.discount == Money::minor(0));
    CHECK(price.minimum == Money::minor(0));
    CHECK(price.net == Money::minor(5340));
    CHECK(price.tax == Money::minor(0));
    CHECK(price.total == Money::minor(5340));
}

TEST_CASE("The width of a line is priced once, not belt by belt", "[price]") {
    // 19.05 mm x 0.51 = 9.7155; three belts are 29.1465 = 29.15, where three times 9.72 would be 29.16.
    const store::LinePrice price = priceOf(plainRules(), halfEuro, Width::micrometres(19'050), 3);
    CHECK(price.width == Money::minor(2915));
}

TEST_CASE("A half of the minor unit is rounded away from zero", "[price]") {
    store::PriceRules rules;
    rules.cuttingCharge = Money::minor(0);
    // 2.5 mm x 0.01 = 2.5 cents; 2.4 mm = 2.4 cents.
    CHECK(priceOf(rules, WidthPrice::thousandths(1000), Width::micrometres(2500), 1).width ==
          Money::minor(3));
    CHECK(priceOf(rules, WidthPrice::thousandths(1000), Width::micrometres(2400), 1).width ==
          Money::minor(2));
}

TEST_CASE("Ribs are priced by the rib", "[price]") {
    // 2 belts of 6 ribs x 0.51 = 6.12.
    CHECK(priceOf(plainRules(), halfEuro, Ribs{6}, 2).width == Money::minor(612));
}

TEST_CASE("The highest quantity step that is reached takes off the width, not the cutting", "[price]") {
    store::PriceRules rules = plainRules();
    rules.steps = {{5, Permille{50}}, {10, Permille{100}}};
    SECTION("4 belts reach none") { CHECK(priceOf(rules, halfEuro, mm(30), 4).discount == Money::minor(0)); }
    SECTION("5 belts reach the first: 5 % of 76.50 is 3.825, so 3.83") {
        const store::LinePrice price = priceOf(rules, halfEuro, mm(30), 5);
        CHECK(price.discount == Money::minor(-383));
        CHECK(price.net == Money::minor(7650 - 383 + 1250));
    }
    SECTION("10 belts reach the second: 10 % of 153.00") {
        CHECK(priceOf(rules, halfEuro, mm(30), 10).discount == Money::minor(-1530));
    }
}

TEST_CASE("A line below the least price is filled up to it before tax", "[price]") {
    store::PriceRules rules = plainRules();
    rules.minimumLine = Money::minor(1500);
    rules.tax = Permille{200};
    // 10 mm: 5.10 + 2.50 = 7.60; 7.40 more make 15.00; 20 % are 3.00.
    const store::LinePrice price = priceOf(rules, halfEuro, mm(10), 1);
    CHECK(price.minimum == Money::minor(740));
    CHECK(price.net == Money::minor(1500));
    CHECK(price.tax == Money::minor(300));
    CHECK(price.total == Money::minor(1800));
    SECTION("A line at or over it is left alone") {
        // 24.5 mm: 12.495, so 12.50, and 2.50 are 15.00.
        CHECK(priceOf(rules, halfEuro, Width::micrometres(24'500), 1).minimum == Money::minor(0));
        CHECK(priceOf(rules, halfEuro, mm(40), 1).minimum == Money::minor(0));
    }
}

TEST_CASE("Tax comes on top, rounded once a line", "[price]") {
    store::PriceRules rules = plainRules();
    rules.tax = Permille{190};
    // 53.40 x 19 % = 10.146.
    const store::LinePrice price = priceOf(rules, halfEuro, mm(30), 3);
    CHECK(price.tax == Money::minor(1015));
    CHECK(price.total == Money::minor(6355));
}

TEST_CASE("Where prices include tax, it is taken out of the total", "[price]") {
    store::PriceRules rules = plainRules();
    rules.tax = Permille{190};
    rules.pricesIncludeTax = true;
    // 53.40 x 19 / 119 = 8.526...
    const store::LinePrice price = priceOf(rules, halfEuro, mm(30), 3);
    CHECK(price.total == Money::minor(5340));
    CHECK(price.tax == Money::minor(853));
    CHECK(price.net == Money::minor(4487));
}

TEST_CASE("The total is rounded to the shop's smallest coin, halves away from zero", "[price]") {
    store::PriceRules rules = plainRules();
    rules.cuttingCharge = Money::minor(0);
    rules.roundTotalTo = 5;
    CHECK(totalOf(rules, mm(1), 1) == 50);                     // 0.51
    CHECK(totalOf(rules, mm(3), 1) == 155);                    // 1.53
    CHECK(totalOf(rules, Width::micrometres(2450), 1) == 125); // 1.2495
    rules.roundTotalTo = 10;
    CHECK(totalOf(rules, mm(5), 1) == 260); // 2.55: a half
}

TEST_CASE("No belts cost nothing, whatever the least price is", "[price]") {
    store::PriceRules rules = plainRules();
    rules.minimumLine = Money::minor(1500);
    CHECK(priceOf(rules, halfEuro, mm(30), 0).total == Money::minor(0));
}

TEST_CASE("An order costs the sum of its lines, amount by amount", "[price]") {
    store::PriceRules rules = plainRules();
    rules.tax = Permille{190};
    const store::LinePrice one = priceOf(rules, halfEuro, mm(30), 3);
    const store::LinePrice other = priceOf(rules, halfEuro, mm(10), 1); // 5.10 + 2.50, tax 1.444
    const store::LinePrice sum = sumOf({one, other});
    CHECK(sum.width == Money::minor(4590 + 510));
    CHECK(sum.cutting == Money::minor(1000));
    CHECK(sum.net == Money::minor(5340 + 760));
    CHECK(sum.tax == Money::minor(1015 + 144));
    CHECK(sum.total == Money::minor(6355 + 904));
}

} // namespace riband::shop
