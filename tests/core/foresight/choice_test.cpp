#include "core/foresight/choice.h"

#include "core/foresight/advisor.h"
#include "core/foresight/kept_for.h"
#include "core/foresight/worth_text.h"
#include "tests/catch.h"

using namespace riband::foresight;

namespace {

Setting shop(Shelf shelf) {
    Setting setting;
    setting.listed = {10000, 20000, 30000, 50000};
    setting.shelf = shelf;
    setting.rules.mountingCost = 4000;
    return setting;
}

/// A shop that has learned from its first orders.
struct Learned {
    explicit Learned(Shelf shelf) : setting{shop(shelf)}, fit{setting, {.steps = 600}, Dice{7}} {
        for (int i = 0; i < 12; ++i)
            outlook.learn({static_cast<double>(i), {{i % 3 == 0 ? 50000 : 30000, 1}}});
        fit.run(outlook, 3);
    }
    Setting setting;
    Outlook outlook{setting};
    Fit fit;
};

Stock stockOf(const std::vector<Size>& sizes) {
    Stock stock;
    for (const Size size : sizes)
        stock.add({size, 1, stock.count});
    return stock;
}

Choice choose(const Learned& shop, const Stock& stock, std::vector<Line> lines, int sleeves = 9) {
    Chooser chooser{shop.setting, Layer::LookAhead};
    const Asked asked{shop.setting, lines};
    return chooser.choose(shop.fit.table(), shop.outlook, stock, asked, true, 11, sleeves);
}

} // namespace

TEST_CASE("A worth table comes back from its text exactly", "[foresight][choice]") {
    const Learned learned{Shelf::Listed};
    const auto& table = learned.fit.table();
    const auto read = readWorthTable(learned.setting, print(table));
    REQUIRE(read);
    CHECK(read->piece == table.piece);
    CHECK(read->ready == table.ready);
    CHECK(read->target == table.target);
    CHECK(read->sleeve == table.sleeve);
}

TEST_CASE("A text that is no table of this setting is not taken for one", "[foresight][choice]") {
    const Learned learned{Shelf::Stub};
    const std::string text = print(learned.fit.table());
    CHECK_FALSE(readWorthTable(learned.setting, ""));
    CHECK_FALSE(readWorthTable(learned.setting, text + " 3"));
    CHECK_FALSE(readWorthTable(learned.setting, text.substr(0, text.size() / 2)));
    std::string wrong = text;
    wrong.replace(wrong.find(' ', 6) + 1, 1, "x");
    CHECK_FALSE(readWorthTable(learned.setting, wrong));
    Setting wider = learned.setting;
    wider.sleeve = 450000;
    CHECK_FALSE(readWorthTable(wider, text));
    CHECK(print(wider) != print(learned.setting));
    Setting guess = learned.setting;
    guess.ordersPerYear = 500;
    CHECK(print(guess) == print(learned.setting));
}

TEST_CASE("The choice costs least on the futures, and every other way says how much more",
          "[foresight][choice]") {
    const Learned learned{Shelf::Stub};
    const Choice choice = choose(learned, stockOf({41000, 62000, 118000}), {{30000, 1}});
    REQUIRE(choice.ways.size() > 2);
    REQUIRE(choice.extra.size() == choice.ways.size());
    CHECK(choice.judged);
    CHECK(choice.extra[choice.best] == 0);
    for (const Worth extra : choice.extra)
        CHECK(extra >= 0);
}

TEST_CASE("No sleeve is opened for less than half a millimetre while a begun piece would do",
          "[foresight][choice]") {
    const Learned learned{Shelf::None};
    const auto sleeves = [](const Way& way) {
        return std::count_if(way.shares.begin(), way.shares.end(),
                             [](const Share& share) { return share.remnant < 0; });
    };
    Dice dice{20261130};
    int opened = 0;
    for (int round = 0; round < 60; ++round) {
        std::vector<Size> sizes;
        for (int i = 0; i < 4; ++i)
            sizes.push_back(40000 + 500 * dice.below(660));
        const Choice choice = choose(learned, stockOf(sizes), {{30000, 1 + round % 5}});
        const Way& best = choice.ways[choice.best];
        opened += sleeves(best) > 0 ? 1 : 0;
        for (std::size_t i = 0; i < choice.ways.size(); ++i) {
            INFO("round " << round << ", way " << i);
            const bool begun =
                sleeves(choice.ways[i]) < sleeves(best) && choice.ways[i].shares.size() <= best.shares.size();
            CHECK_FALSE((begun && choice.extra[i] < 500));
        }
    }
    CHECK(opened > 0); // where it pays
}

TEST_CASE("An order of several belts is shared out in any numbers, and no way is weighed twice",
          "[foresight][choice]") {
    const Learned learned{Shelf::None};
    const auto ways = choose(learned, stockOf({108000, 171000}), {{30000, 4}}).ways;
    const auto taking = [&](int remnant, int belts) {
        return std::any_of(ways.begin(), ways.end(), [&](const Way& way) {
            return way.shares.size() == 2 &&
                   std::any_of(way.shares.begin(), way.shares.end(), [&](const Share& share) {
                       return share.remnant == remnant && share.part == belts;
                   });
        });
    };
    CHECK(taking(0, 3)); // all that it can give
    CHECK(taking(0, 2));
    CHECK(taking(0, 1));
    for (std::size_t i = 0; i < ways.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            CHECK_FALSE(std::is_permutation(ways[i].shares.begin(), ways[i].shares.end(),
                                            ways[j].shares.begin(), ways[j].shares.end()));
}

TEST_CASE("Two sleeves are no way where one would do", "[foresight][choice]") {
    const Learned learned{Shelf::None};
    CHECK(choose(learned, {}, {{30000, 2}}).ways.size() == 1);
    CHECK(choose(learned, {}, {{30000, 20}}).ways[0].shares.size() == 2); // 400 mm sleeves
}

TEST_CASE("No sleeve is opened that is not there", "[foresight][choice]") {
    const Learned learned{Shelf::None};
    const Stock stock = stockOf({41000, 118000});
    for (const Way& way : choose(learned, stock, {{30000, 2}}, 0).ways)
        for (const Share& share : way.shares)
            CHECK(share.remnant >= 0);
    CHECK(choose(learned, stock, {{200000, 1}}, 0).ways.empty());
    CHECK_FALSE(choose(learned, stock, {{200000, 1}}, 1).ways.empty());
}

TEST_CASE("A shelf that takes two of a width is never given a third", "[foresight][choice]") {
    Learned learned{Shelf::Listed};
    learned.setting.shelfRoom = 2;
    Fit fit{learned.setting, {.steps = 600}, Dice{7}};
    fit.run(learned.outlook, 2);
    for (const int target : fit.table().target)
        CHECK(target <= 2);
    learned.setting.shelfRoom = shelfLimit + 1;
    CHECK_FALSE(learned.setting.fault().empty());
}

TEST_CASE("A remnant is kept for the order that it saves most, and a useless one for none",
          "[foresight][choice]") {
    const Learned learned{Shelf::None};
    const auto kept = keptFor(learned.setting, learned.fit.table(), learned.outlook, 62000);
    REQUIRE(kept);
    CHECK((kept->line.width == 50000 || kept->line.width == 30000)); // what is asked for here
    CHECK(kept->share > 0.1);
    CHECK(kept->line.width * kept->line.quantity + 2500 + 5000 <= 62000);
    CHECK_FALSE(keptFor(learned.setting, learned.fit.table(), learned.outlook, 12000));
}
