#include "core/foresight/fit.h"
#include "tests/catch.h"
#include "tests/core/foresight/shops.h"

using namespace riband::foresight;

namespace {

std::vector<Setting> settings() {
    std::vector<Setting> all;
    for (const auto mode : {Shelf::None, Shelf::Stub, Shelf::Listed}) {
        all.push_back(eightMillimetre(mode));
        all.push_back(ribbedShop(mode).setting);
    }
    for (std::uint64_t number = 0; number < 6; ++number)
        all.push_back(drawnScenario(number).setting);
    return all;
}

} // namespace

TEST_CASE("The worth curve rises, never above the width, from nothing below the least useful width",
          "[foresight]") {
    for (auto& setting : settings()) {
        Fit fit{setting, {}, Dice{1}};
        fit.run(Outlook{setting}, 3);
        const auto& table = fit.table();
        float last = 0;
        for (int i = 0; i <= table.grid.cells(); ++i) {
            const float worth = table.piece[static_cast<std::size_t>(i)];
            const Size width = i * table.grid.cell();
            CHECK(worth >= last);
            CHECK(worth <= static_cast<float>(width) + 0.01F);
            if (width < setting.leastUseful()) CHECK(worth == 0.0F);
            last = worth;
        }
        CHECK(last > 0.5F * static_cast<float>(setting.sleeve));
    }
}

TEST_CASE("The curve is a fixed point: what an extra piece gains pays for waiting, at every width",
          "[foresight]") {
    for (const auto& setting : settings()) {
        Fit fit{setting, {}, Dice{2}};
        fit.run(Outlook{setting}, 2);
        for (int cell = 1; cell <= fit.table().grid.cells(); ++cell) {
            const double worth = fit.solved(cell);
            const double unused = cell * static_cast<double>(fit.table().grid.cell()) - worth;
            if (worth <= 0 || unused <= 0.01) continue; // held at a limit
            // Micrometres an order (or thousandths of a rib), over a worth of tens of thousands.
            const double error = fit.residual(cell), margin = 0.02 + 1e-4 * worth;
            if (error < -margin && worth == fit.solved(cell - 1)) {
                CHECK(setting.shelf != Shelf::None); // held up by what a narrower piece is good for
                continue;
            }
            CHECK(error == Approx(0).margin(margin));
        }
    }
}

TEST_CASE("Each ready belt more of a width is worth no more than the one before", "[foresight]") {
    for (const auto& setting : settings()) {
        if (setting.shelf == Shelf::None) continue;
        Fit fit{setting, {}, Dice{4}};
        fit.run(Outlook{setting}, 2);
        for (std::size_t l = 0; l < setting.listed.size(); ++l) {
            const auto& ready = fit.table().ready[l];
            CHECK(ready[0] == 0.0F);
            for (std::size_t n = 2; n < ready.size(); ++n)
                CHECK(ready[n] - ready[n - 1] <= ready[n - 1] - ready[n - 2] + 0.05F);
        }
    }
}

TEST_CASE("With a shelf the rounds settle, they don't go to and fro", "[foresight]") {
    // Keep everything, cut everything, keep everything: a table that had learned from one of the two was made
    // for a rack that the next round did not have.
    const auto setting = eightMillimetre(Shelf::Listed);
    Fit fit{setting, {}, Dice{7}};
    const Outlook outlook{setting};
    fit.run(outlook, 8);
    std::vector<double> worths;
    for (int round = 0; round < 6; ++round) {
        fit.run(outlook, 1);
        double sum = 0;
        for (const float each : fit.table().piece)
            sum += each;
        worths.push_back(sum);
    }
    for (std::size_t i = 1; i < worths.size(); ++i)
        CHECK(worths[i] == Approx(worths[i - 1]).epsilon(0.01));
}

TEST_CASE("Fitting in slices gives the table that fitting at once gives", "[foresight]") {
    const auto setting = eightMillimetre();
    const Outlook outlook{setting};
    Fit whole{setting, {}, Dice{5}}, slices{setting, {}, Dice{5}};
    whole.run(outlook, 2);
    int ended = 0;
    while (ended < 2)
        ended += slices.advance(outlook, 37) ? 1 : 0;
    CHECK(whole.table().piece == slices.table().piece);
}

TEST_CASE("The best use of a rest is what trying all uses finds", "[foresight]") {
    // Rests up to 150 mm, belts of 20, 30, 50, 85, up to six of each beyond what lies there; any number in a
    // mounting, or one, or three.
    const std::pair<Shelf, int> kinds[] = {
        {Shelf::Stub, 0}, {Shelf::Stub, 1}, {Shelf::Stub, 3}, {Shelf::Listed, 0}, {Shelf::Listed, 3}};
    for (const auto& [mode, atOnce] : kinds) {
        auto setting = eightMillimetre(mode);
        setting.shelfAtOnce = atOnce;
        Fit fit{setting, {}, Dice{6}};
        fit.run(Outlook{setting}, 1);
        const auto& table = fit.table();
        Fill fill{setting};
        const std::array<std::int8_t, mostReady> shelf{4, 0, 6, 5};
        fill.prepare(table, shelf, 20000);
        for (Size rest = 5000; rest <= 150000; rest += 3500) {
            double best = table.of(rest);
            const std::array<int, 4> room{2, 6, 0, 1};
            for (int a = 0; a <= room[0]; ++a)
                for (int b = 0; b <= room[1]; ++b)
                    for (int d = 0; d <= room[3]; ++d) {
                        const Size left = rest - a * 20000 - b * 30000 - d * 85000;
                        if (left < 5000 || (atOnce > 0 && a + b + d > atOnce)) continue;
                        const auto more = [&](std::size_t l, int n) {
                            const auto there = static_cast<std::size_t>(shelf[l]);
                            return double{table.ready[l][there + static_cast<std::size_t>(n)]} -
                                   table.ready[l][there];
                        };
                        const double kept = mode == Shelf::Listed ? table.of(left) : 0;
                        best = std::max(best, more(0, a) + more(1, b) + more(3, d) + kept);
                    }
            CAPTURE(rest);
            CHECK(fill.worth()[table.grid.at(rest)] == Approx(best).margin(0.5));
            const auto choice = fill.choose(table, rest);
            CHECK(choice.left ==
                  rest - choice.cut[0] * 20000 - choice.cut[1] * 30000 - choice.cut[3] * 85000);
            CHECK(choice.left >= 5000);
            CHECK(choice.cut[2] == 0);
            if (atOnce > 0) CHECK(choice.cut[0] + choice.cut[1] + choice.cut[3] <= atOnce);
        }
    }
}
