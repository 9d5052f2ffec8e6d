// What to count today: classes, doubt, and the time there is.
#include "core/shop/counting/count.h"
#include "core/shop/counting/settle.h"
#include "core/shop/counting/today.h"
#include "tests/core/shop/shop_fixture.h"

#include <cmath>
#include <random>

namespace riband::shop {

using namespace counting;

namespace {

Candidate candidate(std::int64_t id, const std::string& place, std::int64_t value, double doubt,
                    std::optional<int> days = 0) {
    return {store::PieceId{id}, place, Money::minor(value), Money::minor(0), doubt, days, false};
}

int secondsOf(const std::vector<PlaceTask>& tasks) {
    int sum = 0;
    for (const PlaceTask& task : tasks)
        sum += task.seconds;
    return sum;
}

} // namespace

TEST_CASE("The classes split value and movement at 80 and 95 percent", "[count]") {
    // 70, 15, 8, 5, 2 of 100: the first two reach 80, the third begins at 85, the fourth at 93, the last
    // at 98.
    const auto classes =
        classesOf({candidate(1, "", 800, 0), candidate(2, "", 7'000, 0), candidate(3, "", 1'500, 0),
                   candidate(4, "", 200, 0), candidate(5, "", 500, 0)});
    CHECK(classes == std::vector<Class>{Class::B, Class::A, Class::A, Class::C, Class::B});
}

TEST_CASE("The day's places are the best that fit in its minutes, as trying all shows", "[count]") {
    std::mt19937 random{7};
    for (int round = 0; round < 20; ++round) {
        std::vector<Candidate> candidates;
        for (int i = 0; i < 40; ++i)
            candidates.push_back(candidate(i, std::string(1, static_cast<char>('A' + random() % 9)),
                                           100 + static_cast<std::int64_t>(random() % 9'000),
                                           static_cast<double>(random() % 100) / 1'000));
        const store::CountRules rules;
        const auto chosen = planDay(candidates, rules, 12);
        const auto all = planDay(candidates, rules, 400);
        double best = 0, gain = 0;
        for (std::size_t mask = 0; mask < (std::size_t{1} << all.size()); ++mask) {
            double sum = 0;
            int seconds = 0;
            for (std::size_t i = 0; i < all.size(); ++i)
                if (mask >> i & 1) {
                    sum += all[i].gain;
                    seconds += (all[i].seconds + 4) / 5 * 5;
                }
            if (seconds <= 12 * 60) best = std::max(best, sum);
        }
        for (const PlaceTask& task : chosen)
            gain += task.gain;
        CHECK(gain == Approx(best));
        CHECK(secondsOf(chosen) <= 12 * 60);
    }
}

TEST_CASE("What was not counted for long comes first, and one place at the least", "[count]") {
    const auto plan = planDay({candidate(1, "new", 1'000, 0.01, 1), candidate(2, "old", 1'000, 0.01, 200)},
                              store::CountRules{}, 2);
    REQUIRE(plan.size() == 1);
    CHECK(plan.front().place == "old");
    CHECK(plan.front().overdue == 1);
    CHECK(plan.front().why.front().days == 200);
    CHECK(plan.front().why.front().of == Class::A); // half of the value, the other one is A, too
    std::vector<Candidate> many;
    for (int i = 0; i < 100; ++i)
        many.push_back(candidate(i, "A", 100, 0.1));
    CHECK(planDay(many, store::CountRules{}, 5).size() == 1);
    CHECK(planDay({}, store::CountRules{}, 5).empty());
}

TEST_CASE("With one source the learned rate is the textbook's -ln(1 - share)", "[count]") {
    // Probability of at least one event of a Poisson process, 1 - exp(-rate): every fifth was wrong.
    std::vector<Proof> proofs;
    for (int i = 0; i < 20'000; ++i)
        proofs.push_back({{{{store::PersonId{1}, 1}}, 0}, i % 5 == 0});
    CHECK(Doubt::learn(proofs).aCut(store::PersonId{1}) == Approx(-std::log(0.8)).epsilon(0.01));
}

TEST_CASE("Who makes mistakes is told from who does not, and doubt is what then happens", "[count]") {
    std::mt19937 random{3};
    const store::PersonId careful{1}, hasty{2};
    const auto draw = [&](double rate) { return std::poisson_distribution<int>{rate}(random) > 0; };
    std::vector<Proof> proofs;
    double wrong = 0;
    for (int i = 0; i < 4'000; ++i) {
        const Exposure exposure{{{careful, random() % 6}, {hasty, random() % 6}},
                                static_cast<double>(random() % 100) / 100};
        const double rate = 0.01 * static_cast<double>(exposure.cuts.at(careful)) +
                            0.06 * static_cast<double>(exposure.cuts.at(hasty)) + 0.1 * exposure.years;
        proofs.push_back({exposure, draw(rate)});
        wrong += proofs.back().wrong ? 1 : 0;
    }
    const Doubt doubt = Doubt::learn(proofs);
    CHECK(doubt.aCut(careful) == Approx(0.01).margin(0.008));
    CHECK(doubt.aCut(hasty) == Approx(0.06).margin(0.012));
    CHECK(doubt.aYear() == Approx(0.1).margin(0.05));
    double expected = 0;
    for (const Proof& proof : proofs)
        expected += doubt.of(proof.exposure);
    CHECK(expected == Approx(wrong).epsilon(0.05)); // calibrated
    CHECK(doubt.of({}) == 0);
    CHECK(doubt.aCut(store::PersonId{9}) == Approx(0.01)); // somebody new
}

TEST_CASE("The plan reads the shop: cuts raise the doubt of a piece, a count takes it away", "[count]") {
    TestShop shop;
    const auto at = [&](const std::string& place, std::int64_t cost) {
        const auto made = shop.piece(shop.h8m1200, mm(300), cutting::PieceKind::Remnant, cost);
        move(shop.shop, made, place);
        return made;
    };
    const store::PieceId cut = at("A1", 3'000);
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 1));
    at("B2", 2'000);
    move(shop.shop, shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 900'000), "C3");
    const auto doubtOf = [&](store::PieceId piece) {
        for (const Candidate& each : countOutlook(shop.shop).candidates)
            if (each.piece == piece) return each.doubt;
        return -1.0;
    };
    CHECK(doubtOf(cut) > 0.009);
    const auto plan = countToday(shop.shop, 2);
    REQUIRE(plan.size() == 1);
    CHECK(plan.front().place == "A1");
    REQUIRE(plan.front().why.size() == 1);
    CHECK(plan.front().why.front().piece == cut);
    CHECK(plan.front().why.front().cuts == 1);
    CHECK_FALSE(plan.front().why.front().days); // never counted
    CHECK(plan.front().why.front().overdue);
    for (const PlaceTask& task : countToday(shop.shop, 60))
        CHECK(task.place != "C3"); // measured as it came, today
    const store::CountId count = beginCount(shop.shop, "A1");
    note(shop.shop, count, cut, shop.at(cut).extent, store::Method::Calliper);
    CHECK(doubtOf(cut) < 0.001);
    closeCount(shop.shop, count);
    CHECK(countToday(shop.shop, 2).front().place == "B2");
}

} // namespace riband::shop
