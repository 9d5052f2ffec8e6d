#include "core/foresight/best_fit.h"
#include "core/foresight/contest.h"
#include "tests/catch.h"
#include "tests/core/foresight/shops.h"

#include <glpk.h>

using namespace riband::foresight;

namespace {

/// The bound with every pattern of a sleeve written down, solved by GLPK at once: no column generation.
class AllPatterns {
public:
    AllPatterns(const Setting& setting, std::vector<Size> widths, const std::vector<double>& orders)
        : widths_{std::move(widths)}, count_(widths_.size(), 0), setting_{setting}, lp_{glp_create_prob()} {
        glp_set_obj_dir(lp_, GLP_MIN);
        glp_add_rows(lp_, static_cast<int>(widths_.size()));
        for (std::size_t i = 0; i < widths_.size(); ++i)
            glp_set_row_bnds(lp_, static_cast<int>(i) + 1, GLP_LO, orders[i], 0);
        list(0, setting.sleeve - setting.rules.end);
        glp_smcp how;
        glp_init_smcp(&how);
        how.msg_lev = GLP_MSG_OFF;
        REQUIRE(glp_simplex(lp_, &how) == 0);
    }
    ~AllPatterns() { glp_delete_prob(lp_); }
    AllPatterns(const AllPatterns&) = delete;
    AllPatterns& operator=(const AllPatterns&) = delete;
    double optimum() const { return glp_get_obj_val(lp_); }

private:
    void list(std::size_t at, Size room) {
        if (at == widths_.size()) return add();
        const Size lump = widths_[at] + setting_.rules.trim;
        for (count_[at] = 0; count_[at] * lump <= room; ++count_[at])
            list(at + 1, room - count_[at] * lump);
        count_[at] = 0;
    }
    void add() {
        const int column = glp_add_cols(lp_, 1);
        glp_set_obj_coef(lp_, column, setting_.sleeve);
        glp_set_col_bnds(lp_, column, GLP_LO, 0, 0);
        std::vector<int> rows{0};
        std::vector<double> values{0};
        for (std::size_t i = 0; i < widths_.size(); ++i)
            if (count_[i] > 0) {
                rows.push_back(static_cast<int>(i) + 1);
                values.push_back(count_[i]);
            }
        glp_set_mat_col(lp_, column, static_cast<int>(rows.size()) - 1, rows.data(), values.data());
    }
    std::vector<Size> widths_;
    std::vector<int> count_;
    Setting setting_;
    glp_prob* lp_;
};

std::vector<Order> ordersOfOne(const std::vector<Size>& widths, const std::vector<double>& counts) {
    std::vector<Order> orders;
    for (std::size_t i = 0; i < widths.size(); ++i)
        for (int n = 0; n < counts[i]; ++n)
            orders.push_back({0, {{widths[i], 1}}});
    return orders;
}

} // namespace

TEST_CASE("Orders of one width: a sleeve gives as many lumps of belt and trim as fit before the end",
          "[foresight]") {
    // 400 - 5 = 395; belt and trim 52.5: seven go in. 14 orders are two sleeves.
    const auto setting = eightMillimetre();
    const Hindsight hindsight{setting, ordersOfOne({50000}, {14})};
    CHECK(hindsight.converged());
    CHECK(hindsight.bound() == Approx(800000));
    // A remnant of 57.5 can still give one belt, a seventh of a sleeve; a micrometre less can't.
    CHECK(hindsight.worthOfRemnant(57500) == Approx(400000 / 7.0));
    CHECK(hindsight.worthOfRemnant(57499) == Approx(0));
    CHECK(hindsight.worthOfRemnant(400000) == Approx(400000));
}

TEST_CASE("The bound equals the linear programme over all patterns", "[foresight]") {
    Dice dice{42};
    for (int trial = 0; trial < 25; ++trial) {
        auto setting = eightMillimetre();
        setting.sleeve = static_cast<Size>(dice.between(200, 320)) * 1000;
        std::vector<Size> widths;
        std::vector<double> counts;
        for (int i = 0; i < 4; ++i) {
            const auto width = static_cast<Size>(dice.between(60, 280)) * 500;
            if (std::find(widths.begin(), widths.end(), width) != widths.end()) continue;
            widths.push_back(width);
            counts.push_back(static_cast<double>(dice.between(1, 30)));
        }
        const Hindsight hindsight{setting, ordersOfOne(widths, counts)};
        CHECK(hindsight.converged());
        CHECK(hindsight.bound() == Approx(AllPatterns(setting, widths, counts).optimum()).epsilon(1e-6));
        CHECK(hindsight.dualValue() == Approx(hindsight.bound()));
    }
}

TEST_CASE("Stopped early the bound is lower, and still a bound", "[foresight]") {
    const auto shop = eightMillimetreShop();
    const auto orders = ordersOf(shop, Dice{9});
    const Hindsight whole{shop.setting, orders}, early{shop.setting, orders, 5};
    CHECK(whole.converged());
    CHECK_FALSE(early.converged());
    CHECK(early.bound() < whole.bound());
    CHECK(early.bound() > 0);
}

TEST_CASE("Two belts of one order pay one trim, of two orders two", "[foresight]") {
    auto setting = eightMillimetre();
    setting.sleeve = 107500; // 2.5 + 50 + 50 + 5: a pair exactly
    const std::vector<Order> pair{{0, {{50000, 2}}}}, apart{{0, {{50000, 1}}}, {0, {{50000, 1}}}};
    CHECK(Hindsight(setting, pair).bound() == Approx(107500));
    CHECK(Hindsight(setting, apart).bound() == Approx(2 * 107500));
}

TEST_CASE("Two lines of an order may share a trim as well", "[foresight]") {
    auto setting = eightMillimetre();
    setting.sleeve = 87500;
    CHECK(Hindsight(setting, {{0, {{50000, 1}, {30000, 1}}}}).bound() == Approx(87500));
}

TEST_CASE("Ready belts are credited at their width, no more of them than were asked for", "[foresight]") {
    const Hindsight hindsight{eightMillimetre(), ordersOfOne({50000}, {2})};
    CHECK(hindsight.worthOfReady({{50000, 5}, {20000, 3}}) == Approx(100000));
}

TEST_CASE("No rule without a shelf goes below the bound", "[foresight]") {
    for (std::uint64_t number = 0; number < 12; ++number) {
        auto shop = drawnScenario(number);
        shop.years = std::min(shop.years, 150 / shop.trueOrdersPerYear);
        const auto orders = ordersOf(shop, Dice::of(number, 2));
        BestFit player{shop.setting};
        CAPTURE(shop.name);
        const auto outcome =
            play(shop.setting, orders, player, Hindsight{shop.setting, orders, 60}); // throws if below
        CHECK(outcome.net() >= outcome.bound * (1 - 1e-9));
        CHECK(outcome.bound > outcome.sold() * 0.8);
    }
}
