#include "core/shop/spread.h"
#include "tests/catch.h"

#include <numeric>

namespace riband::shop {

namespace {

std::vector<std::int64_t> minor(const std::vector<Money>& amounts) {
    std::vector<std::int64_t> values;
    for (const Money amount : amounts)
        values.push_back(amount.inMinor());
    return values;
}

} // namespace

TEST_CASE("Cost follows width: a third of the width carries a third of the cost", "[spread]") {
    CHECK(minor(spread(Money::minor(9000), {100, 100, 100})) == std::vector<std::int64_t>{3000, 3000, 3000});
    CHECK(minor(spread(Money::minor(8000), {30'000, 2'500, 67'500})) ==
          std::vector<std::int64_t>{2400, 200, 5400});
}

TEST_CASE("No cent is lost where it does not divide", "[spread]") {
    // Running sums of 100/3: 33.33, 66.67, 100, rounded 33, 67, 100.
    CHECK(minor(spread(Money::minor(100), {1, 1, 1})) == std::vector<std::int64_t>{33, 34, 33});
    // One cent over two equal widths: the running half is rounded away from zero.
    CHECK(minor(spread(Money::minor(1), {5, 5})) == std::vector<std::int64_t>{1, 0});
}

TEST_CASE("No width carries no cost", "[spread]") {
    CHECK(minor(spread(Money::minor(500), {0, 10, 0})) == std::vector<std::int64_t>{0, 500, 0});
}

TEST_CASE("The dearest sleeve that can be written spreads without overflow", "[spread]") {
    const std::vector<std::int64_t> shares =
        minor(spread(Money::minor(1'000'000'000'001), {60'000'000, 40'000'000}));
    CHECK(shares == std::vector<std::int64_t>{600'000'000'001, 400'000'000'000});
}

TEST_CASE("Money can't be spread over nothing, nor over less than nothing", "[spread]") {
    CHECK_THROWS_AS(spread(Money::minor(1), {0, 0}), std::invalid_argument);
    CHECK_THROWS_AS(spread(Money::minor(1), {5, -1}), std::invalid_argument);
}

} // namespace riband::shop
