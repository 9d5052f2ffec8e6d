#pragma once

#include "core/cutting/setup.h"
#include "core/shop/shop.h"

#include <map>
#include <string>
#include <tuple>

namespace riband::shop {

/// The entry that a belt new to the shop would get: the standard widths that its usual sleeve can give, no
/// price yet. Refuses NoSuchBelt if the profile is in no table. Its id is 0.
store::StockedBelt usualEntry(const belt::Tables& tables, const belt::Belt& belt);

/// The belt's entry in the catalogue, else the usual one. Of a construction some words are enough where only
/// one belt of that size has them all; so in all that is below.
store::StockedBelt entryOf(const Shop& shop, const belt::Belt& belt);

/// The belt's entry in the catalogue, added if it is new; inside the caller's transaction.
store::StockedBelt keptBelt(const Shop& shop, const belt::Belt& belt);

/// Of what this belt is made of, what the cutter is not made for.
std::vector<cutting::SetUp::Remark> notMadeFor(const cutting::Cutter& cutter, const store::StockedBelt& belt);
/// What no cutter of the shop is made for.
std::vector<cutting::SetUp::Remark> notMadeFor(const std::vector<store::ShopCutter>& cutters,
                                               const store::StockedBelt& belt);

/// The entries of many deliveries, each looked up once.
class KeptBelts {
public:
    explicit KeptBelts(const Shop& shop) : shop_{shop} {}
    /// As keptBelt; who changes the entry in the catalogue changes it here, too.
    store::StockedBelt& of(const belt::Belt& belt);

private:
    using Key = std::tuple<std::string, std::int64_t, std::string>;
    const Shop& shop_;
    std::map<Key, store::StockedBelt> known_;
};

} // namespace riband::shop
