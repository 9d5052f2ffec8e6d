#pragma once

#include "core/shop/counting/findings.h"
#include "core/store/counts.h"
#include "tests/core/shop/shop_fixture.h"

#include <random>

namespace riband::shop {

/// Counting as people do, right and wrong: scanning what lies there or elsewhere, finds without label,
/// closing, settling by any proposal, countering any settlement. A refused act changes nothing.
class RandomCounts {
public:
    /// The clerk of the shop counts; what is worth more than a little needs the stock manager.
    RandomCounts(TestShop& shop, std::mt19937& random);
    /// `belt` is what a find would be.
    void act(const belt::Belt& belt, Unit unit);

    int scans() const { return scans_; }
    int settled() const { return settled_; }
    int approved() const { return approved_; } ///< settlements that another person allowed
    int countered() const { return countered_; }

private:
    std::int64_t number(std::int64_t from, std::int64_t to);
    bool oneIn(std::int64_t many) { return number(1, many) == 1; }
    std::string anyPlace();
    std::optional<Extent> measured(Extent book);
    std::optional<store::CountId> countAt(const std::string& place);
    void scan();
    void find(const belt::Belt& belt, Unit unit);
    void close();
    void settleAny();
    void settleAs(const Finding& finding, const counting::Proposal& proposal);
    void counterAny();

    /// A piece that is to be measured a second time.
    struct Again {
        store::CountId count;
        store::PieceId piece;
        Extent width;
        store::Method method;
    };

    TestShop& shop_;
    std::mt19937& random_;
    std::optional<Again> again_{};
    store::PersonId owner_{0}, manager_{0};
    int scans_ = 0, settled_ = 0, approved_ = 0, countered_ = 0;
};

} // namespace riband::shop
