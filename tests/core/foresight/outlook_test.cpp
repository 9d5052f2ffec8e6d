#include "core/foresight/outlook.h"
#include "tests/catch.h"
#include "tests/core/foresight/shops.h"

#include <numeric>

using namespace riband::foresight;

namespace {

double shareOf(const Outlook& outlook, Size width) {
    for (const auto& each : outlook.widths())
        if (each.width == width) return each.share;
    return 0;
}

} // namespace

TEST_CASE("Before the first order the listed widths share 85 percent", "[foresight]") {
    const Outlook outlook{eightMillimetre()};
    double listed = 0, all = 0;
    for (Size width : eightMillimetre().listed)
        listed += shareOf(outlook, width);
    for (const auto& each : outlook.widths())
        all += each.share;
    CHECK(all == Approx(1));
    CHECK(listed == Approx(0.85).margin(0.02)); // an odd width of the grid may fall on a listed one
    CHECK(outlook.shareOfQuantity(1) == Approx(0.55));
    CHECK(outlook.shareOfQuantity(5) == Approx(0.06));
    CHECK(outlook.ordersPerYear() == Approx(52));
}

TEST_CASE("The rate is (N + 2) / (T + 2 / guess), the past forgotten by one percent an order",
          "[foresight]") {
    auto setting = eightMillimetre();
    setting.ordersPerYear = 100;
    Outlook outlook{setting};
    outlook.learn({30, {{30000, 1}}}); // a tenth of a year
    outlook.learn({90, {{30000, 1}}}); // two tenths more
    // N = 1 * 0.99 + 1 = 1.99, T = 0.1 * 0.99 + 0.2 = 0.299
    CHECK(outlook.ordersPerYear() == Approx(3.99 / (0.299 + 0.02)));
}

TEST_CASE("A guess three times too high is put right within fifty orders", "[foresight]") {
    auto setting = eightMillimetre();
    setting.ordersPerYear = 156;
    Outlook outlook{setting};
    for (int i = 1; i <= 50; ++i)
        outlook.learn({i * 300.0 / 52, {{30000, 1}}});
    CHECK(outlook.ordersPerYear() == Approx(52).epsilon(0.05));
}

TEST_CASE("What is asked for often is expected often, and a swing of the mix is followed", "[foresight]") {
    Outlook outlook{eightMillimetre()};
    for (int i = 0; i < 200; ++i)
        outlook.learn({double(i), {{i % 4 == 0 ? 50000 : 20000, 1}}});
    CHECK(shareOf(outlook, 20000) == Approx(0.75).margin(0.05));
    CHECK(shareOf(outlook, 50000) == Approx(0.25).margin(0.05));
    for (int i = 0; i < 60; ++i)
        outlook.learn({200.0 + i, {{85000, 1}}});
    // Plain counting would say 60 of 266 and 6 more: under a quarter.
    CHECK(shareOf(outlook, 85000) > 0.6);
}

TEST_CASE("An odd width seen three times stands for itself", "[foresight]") {
    Outlook outlook{eightMillimetre()};
    for (int i = 0; i < 2; ++i)
        outlook.learn({double(i), {{27123, 1}}});
    const double twice = shareOf(outlook, 27123);
    outlook.learn({3, {{27123, 1}}});
    CHECK(shareOf(outlook, 27123) > 2.5 * twice);
}

TEST_CASE("Drawn orders follow the shares", "[foresight]") {
    Outlook outlook{eightMillimetre()};
    for (int i = 0; i < 50; ++i)
        outlook.learn({double(i), {{30000, 2}}});
    Dice dice{1};
    std::vector<Line> lines;
    int thirties = 0, twos = 0, count = 0;
    for (int i = 0; i < 20000; ++i) {
        outlook.draw(dice, lines);
        for (const auto& line : lines) {
            thirties += line.width == 30000;
            twos += line.quantity == 2;
            ++count;
        }
    }
    // Four standard errors of a share of 20000 are at most 0.014.
    CHECK(double(thirties) / count == Approx(shareOf(outlook, 30000)).margin(0.014));
    CHECK(double(twos) / count == Approx(outlook.shareOfQuantity(2)).margin(0.014));
}

TEST_CASE("Lines of a drawn order have different widths and fit on a sleeve", "[foresight]") {
    auto setting = eightMillimetre();
    Outlook outlook{setting};
    for (int i = 0; i < 20; ++i)
        outlook.learn({double(i), {{30000, 2}, {50000, 1}, {392000, 1}}});
    Dice dice{2};
    std::vector<Line> lines;
    for (int i = 0; i < 2000; ++i) {
        outlook.draw(dice, lines);
        REQUIRE_FALSE(lines.empty());
        for (std::size_t a = 0; a < lines.size(); ++a) {
            CHECK(lines[a].width <= 392500);
            for (std::size_t b = 0; b < a; ++b)
                CHECK(lines[a].width != lines[b].width);
        }
    }
}
