#include "core/foresight/buying/basket.h"
#include "core/foresight/dice.h"
#include "tests/catch.h"

#include <functional>

using namespace riband::foresight;

namespace {

/// Every basket is tried.
double bestByTrying(const std::vector<Wanted>& wanted, std::int64_t budget) {
    double best = 0;
    const std::function<void(std::size_t, std::int64_t, double)> from = [&](std::size_t belt,
                                                                            std::int64_t left, double worth) {
        if (belt == wanted.size()) {
            best = std::max(best, worth);
            return;
        }
        for (std::size_t n = 0; n < wanted[belt].worth.size(); ++n)
            if (const std::int64_t cost = wanted[belt].cost * static_cast<std::int64_t>(n); cost <= left)
                from(belt + 1, left - cost, worth + wanted[belt].worth[n]);
    };
    from(0, budget, 0);
    return best;
}

std::vector<Wanted> drawn(Dice& dice) {
    std::vector<Wanted> wanted(static_cast<std::size_t>(dice.between(1, 6)));
    for (Wanted& belt : wanted) {
        belt.cost = dice.between(500, 9000);
        belt.worth = {0};
        for (auto n = dice.between(1, 4); n > 0; --n)
            belt.worth.push_back(belt.worth.back() + dice.share() * 5000);
    }
    return wanted;
}

} // namespace

TEST_CASE("The basket of a small budget by hand", "[buying][basket]") {
    // 60 buys the second and the third for 70 together; the dear first alone brings 65.
    const std::vector<Wanted> wanted{{50, {0, 65}}, {30, {0, 40}}, {30, {0, 30}}};
    const Basket basket = bestBasket(wanted, 60);
    CHECK(basket.sleeves == std::vector<int>{0, 1, 1});
    CHECK(basket.cost == 60);
    CHECK(basket.worth == Approx(70));
    CHECK(basket.proven);
}

TEST_CASE("No basket that can be tried is better, and none costs more than the budget", "[buying][basket]") {
    Dice dice{11};
    for (int i = 0; i < 300; ++i) {
        const auto wanted = drawn(dice);
        const std::int64_t budget = dice.between(0, 30000);
        const Basket basket = bestBasket(wanted, budget);
        REQUIRE(basket.proven);
        CHECK(basket.cost <= budget);
        CHECK(basket.worth == Approx(bestByTrying(wanted, budget)).margin(1e-3));
        CHECK(basket.bound == Approx(basket.worth).margin(1e-3));
    }
}

TEST_CASE("A budget for everything buys everything; none buys nothing", "[buying][basket]") {
    const std::vector<Wanted> wanted{{50, {0, 65, 66}}, {30, {0, 0}}};
    CHECK(bestBasket(wanted, 130).sleeves == std::vector<int>{2, 1});
    CHECK(bestBasket(wanted, 0).sleeves == std::vector<int>{0, 0});
    CHECK(bestBasket(wanted, -5).sleeves == std::vector<int>{0, 0});
    CHECK(bestBasket({}, 100).sleeves.empty());
}
