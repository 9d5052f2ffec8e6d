#include "core/foresight/fit.h"
#include "core/foresight/price_rule.h"
#include "tests/catch.h"
#include "tests/core/foresight/shops.h"

#include <functional>
#include <limits>
#include <map>

using namespace riband::foresight;

namespace {

Stock stockOf(const std::vector<Size>& sizes) {
    Stock stock;
    for (Size size : sizes)
        stock.add({size, 1, 0});
    return stock;
}

/// Worth that rises in uneven steps, so that wrong choices cost.
WorthTable steppedTable(const Setting& setting, Dice& dice) {
    WorthTable table{setting};
    float worth = 0;
    for (int i = 0; i <= table.grid.cells(); ++i) {
        const auto width = static_cast<float>(i * table.grid.cell());
        if (dice.share() < 0.1) worth += (width - worth) * static_cast<float>(dice.share());
        table.piece[static_cast<std::size_t>(i)] =
            i * table.grid.cell() < setting.leastUseful() ? 0.0F : std::min(worth, width);
    }
    return table;
}

/// Least cost by trying everything: first new sleeves, all but the last cut so far that no belt of what is
/// still wanted can be added; then each remnant takes any part.
double byTryingAll(const Setting& setting, const WorthTable& table, const Stock& stock,
                   std::vector<Line> wanted) {
    constexpr int sleeves = 5;
    double least = std::numeric_limits<double>::infinity();
    const auto canTakeMore = [&](Size rest, Size widest, const std::vector<Line>& left) {
        return std::any_of(left.begin(), left.end(), [&](const Line& line) {
            return line.quantity > 0 && rest - line.width - setting.rules.kerf >=
                                            setting.rules.reserve(std::max(widest, line.width));
        });
    };
    const std::function<void(int, std::vector<Line>, double)> go = [&](int piece, std::vector<Line> left,
                                                                       double cost) {
        if (std::all_of(left.begin(), left.end(), [](const Line& line) { return line.quantity == 0; })) {
            least = std::min(least, cost);
            return;
        }
        if (piece == sleeves + stock.count) return;
        const bool remnant = piece >= sleeves;
        const Size size =
            remnant ? stock.remnants[static_cast<std::size_t>(piece - sleeves)].size : setting.sleeve;
        const double before = remnant ? table.of(size) : table.sleeve;
        std::vector<int> part(left.size(), 0);
        for (;;) { // every part of what is left, nothing first
            Size used = setting.rules.trim, widest = 0;
            auto after = left;
            for (std::size_t i = 0; i < left.size(); ++i) {
                used += part[i] * (left[i].width + setting.rules.kerf);
                if (part[i] > 0) widest = std::max(widest, left[i].width);
                after[i].quantity -= part[i];
            }
            const bool open = !remnant && (widest == 0 || canTakeMore(size - used, widest, after));
            const int next = open ? sleeves : piece + 1;
            if (widest == 0)
                go(next, after, cost);
            else if (size - used >= setting.rules.reserve(widest))
                go(next, after, cost + before + table.mounting - table.of(size - used));
            std::size_t at = 0;
            while (at < part.size() && part[at] == left[at].quantity)
                part[at++] = 0;
            if (at == part.size()) return;
            ++part[at];
        }
    };
    go(0, std::move(wanted), 0);
    return least;
}

} // namespace

TEST_CASE("A way costs the least that trying all ways can find", "[foresight]") {
    Dice dice{7};
    auto setting = eightMillimetre();
    setting.sleeve = 200000;
    for (int trial = 0; trial < 300; ++trial) {
        setting.rules.kerf = trial % 3 == 0 ? 300 : 0;
        const auto table = steppedTable(setting, dice);
        std::vector<Size> sizes;
        for (int i = dice.below(4); i > 0; --i)
            sizes.push_back(static_cast<Size>(dice.between(25000, 190000)));
        const auto stock = stockOf(sizes);
        std::vector<Line> lines{{static_cast<Size>(dice.between(8000, 90000)), 1 + dice.below(3)}};
        if (dice.share() < 0.5)
            lines.push_back({static_cast<Size>(dice.between(90001, 120000)), 1 + dice.below(2)});
        PriceRule rule{setting};
        Way way;
        rule.choose(table, stock, Asked{setting, lines}, way);
        CAPTURE(trial);
        CHECK(way.cost == Approx(byTryingAll(setting, table, stock, lines)).epsilon(1e-5));
    }
}

TEST_CASE("A way says what it costs: the worth that the stock loses by it, sleeves and mountings",
          "[foresight]") {
    // One and the same G in choice and execution, also when the rest is cut for the shelf.
    for (const auto mode : {Shelf::None, Shelf::Stub, Shelf::Listed}) {
        auto setting = eightMillimetre(mode);
        setting.rackLimit = mode == Shelf::None ? 4 : 20;
        Fit fit{setting, {}, Dice{3}};
        fit.run(Outlook{setting}, 2);
        const auto& table = fit.table();
        const auto worthOf = [&](const Stock& stock) {
            double worth = 0;
            for (const auto& remnant : stock.all())
                worth += table.of(remnant.size);
            for (std::size_t l = 0; l < setting.listed.size(); ++l)
                worth += table.ready[l][static_cast<std::size_t>(stock.ready[l])];
            return worth;
        };
        PriceRule rule{setting};
        Dice dice{11};
        Stock stock;
        Way way;
        int checked = 0;
        for (int i = 0; i < 800; ++i) {
            const auto width = setting.listed[static_cast<std::size_t>(dice.below(4))];
            const std::vector<Line> lines{{dice.share() < 0.8 ? width : width + 1500, 1 + dice.below(3)}};
            const Asked asked{setting, lines};
            rule.choose(table, stock, asked, way);
            const double before = worthOf(stock);
            const int remnants = stock.count;
            const auto done = rule.apply(table, stock, asked, way);
            // Each of several mountings was priced for the rack and the shelf as they stood. What a full rack
            // drops is in the price, but where the rest goes to the shelf as well.
            if (done.mountings > 1) continue;
            if (mode != Shelf::None && remnants + 1 > setting.rackLimit) continue;
            // Ready belts that are taken make room, which the price of the rest did not count on.
            if (mode != Shelf::None && done.mountings == 1 && way.take[0] > 0) continue;
            const double spent = before - worthOf(stock) + static_cast<double>(done.sleeves) * table.sleeve +
                                 static_cast<double>(done.mountings) * table.mounting;
            CAPTURE(static_cast<int>(mode), i);
            CHECK(spent ==
                  Approx(way.cost).margin(1.0)); // a thousandth of a millimetre: the tables are floats
            ++checked;
        }
        CHECK(checked > 100);
    }
}

TEST_CASE("A bulk order counts on the room of the shelf once, not once for every sleeve", "[foresight]") {
    // Seven of 50 go on a sleeve, twenty need three or more. What is done never costs more than was reckoned.
    for (const auto mode : {Shelf::Stub, Shelf::Listed}) {
        const auto setting = eightMillimetre(mode);
        Fit fit{setting, {}, Dice{3}};
        fit.run(Outlook{setting}, 2);
        const auto& table = fit.table();
        PriceRule rule{setting};
        Way way;
        Stock stock;
        const Asked asked{setting, std::vector<Line>{{50000, 20}}};
        rule.choose(table, stock, asked, way);
        const auto done = rule.apply(table, stock, asked, way);
        double after = 0;
        for (const auto& remnant : stock.all())
            after += table.of(remnant.size);
        for (std::size_t l = 0; l < setting.listed.size(); ++l)
            after += table.ready[l][static_cast<std::size_t>(stock.ready[l])];
        const double spent = done.sleeves * static_cast<double>(table.sleeve) +
                             done.mountings * static_cast<double>(table.mounting) - after;
        CHECK(done.sleeves >= 3);
        CHECK(spent <= way.cost + 1);
    }
}

TEST_CASE("A bulk order does not count on every one of many rests that are alike", "[foresight]") {
    // Three of 85 and 118.5 left, or four and 33: by a table that takes all width for good, thirty belts
    // would open ten sleeves and leave ten such rests on a rack of eight. Eight sleeves do, one left half
    // used.
    auto setting = eightMillimetre();
    setting.sleeve = 380000;
    setting.rackLimit = 8;
    const WorthTable table{setting};
    PriceRule rule{setting};
    Way way;
    Stock stock;
    const Asked asked{setting, std::vector<Line>{{85000, 30}}};
    rule.choose(table, stock, asked, way);
    CHECK(rule.apply(table, stock, asked, way).sleeves == 8);
}

TEST_CASE("Ready belts come first when they serve the whole order", "[foresight]") {
    const auto setting = eightMillimetre(Shelf::Listed);
    Fit fit{setting, {}, Dice{3}};
    fit.run(Outlook{setting}, 1);
    auto stock = stockOf({100000});
    stock.ready[1] = 2;
    PriceRule rule{setting};
    Way way;
    rule.choose(fit.table(), stock, Asked{setting, std::vector<Line>{{30000, 2}}}, way);
    CHECK(way.shares.empty());
    CHECK(way.take[0] == 2);
}

TEST_CASE("Over the rack limit the least worth goes, not the oldest place", "[foresight]") {
    auto setting = eightMillimetre();
    setting.rackLimit = 2;
    const WorthTable table{setting};
    auto stock = stockOf({200000, 40000});
    PriceRule rule{setting};
    Way way;
    const Asked asked{setting, std::vector<Line>{{300000, 1}}}; // only a new sleeve: 97.5 are left
    rule.choose(table, stock, asked, way);
    const auto done = rule.apply(table, stock, asked, way);
    CHECK(done.sleeves == 1);
    REQUIRE(stock.count == 2);
    CHECK(std::min(stock.remnants[0].size, stock.remnants[1].size) == 97500);
    CHECK(std::max(stock.remnants[0].size, stock.remnants[1].size) == 200000);
}

TEST_CASE("Large orders are taken apart into what can be weighed, nothing lost", "[foresight]") {
    const auto setting = eightMillimetre();
    std::vector<Line> lines;
    for (int i = 0; i < 9; ++i)
        lines.push_back({10000 + i, 1 + 17 * i});
    std::map<Size, int> belts;
    for (const auto& asked : weighable(setting, lines)) {
        CHECK(asked.parts() <= mostParts);
        CHECK(asked.items().size() <= mostLines);
        for (const auto& item : asked.items())
            belts[item.width] += item.quantity;
    }
    for (const auto& line : lines)
        CHECK(belts[line.width] == line.quantity);
}
