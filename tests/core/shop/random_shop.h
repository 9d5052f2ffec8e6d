#pragma once

#include "tests/core/shop/random_counts.h"
#include "tests/core/shop/shop_fixture.h"

#include <map>
#include <random>

namespace riband::shop {

/// A shop in which acts happen as they could come, sensible and not.
class RandomShop {
public:
    explicit RandomShop(unsigned seed) : random_{seed} { shop_.addCutter("Long bench"); }

    /// One act; a refused one changes nothing.
    void act();
    void checkBook();
    int refused() const { return refused_; }
    int undone() const { return undone_; }
    int forShelf() const { return forShelf_; }
    const RandomCounts& counts() const { return counts_; }
    std::int64_t cutMountings() const { return cuts_; }
    std::size_t voided() const { return voided_; }

private:
    std::int64_t number(std::int64_t from, std::int64_t to);
    bool oneIn(std::int64_t many) { return number(1, many) == 1; }

    template <class Thing>
    const Thing* any(const std::vector<Thing>& things) {
        if (things.empty()) return nullptr;
        return &things[static_cast<std::size_t>(number(0, static_cast<std::int64_t>(things.size()) - 1))];
    }

    const belt::Belt& anyBelt();
    static Unit unitOf(const belt::Belt& belt) { return belt.teeth ? Unit::Micrometre : Unit::Rib; }

    /// Mostly a usual width, sometimes an odd one, now and then nonsense.
    Extent anyWidth(Unit unit);
    std::optional<store::Order> anyOrder();
    void deliver();
    void newOrder();
    std::optional<BenchMounting> anyMounting();
    /// A little more or less than the figures say; seldom far less.
    Extent measured(Extent planned);
    void cut();
    void miscut();
    /// A piece into ready belts without an order, or the last such ticket given up.
    void fillShelf();
    void changeMind();
    void giveUp();
    void takeBack();
    void collect();
    void throwAway();
    void divide();
    void putElsewhere();
    /// The last act or any; goods in that are undone were not bought.
    void undoAny();
    void goodsIn();
    /// What a count finds comes from nowhere, as what is bought does.
    void count();
    void planAgain();
    /// What came in is what lies there, what was sold, and what was lost on the way; nothing else.
    void checkWidths();
    /// Every belt that is wanted of an open order is cut, on a ticket, or said to be missing.
    void checkOrders();
    /// Every line of the waste report holds in width and money, whatever the period and the groups; what it
    /// says lies on the rack lies there.
    void checkReports();
    TestShop shop_;
    std::mt19937 random_;
    RandomCounts counts_{shop_, random_};
    std::map<bool, std::int64_t> bought_; ///< by whether ribbed
    int refused_ = 0, undone_ = 0, forShelf_ = 0;
    std::int64_t cuts_ = 0;
    std::size_t voided_ = 0;
};

} // namespace riband::shop
