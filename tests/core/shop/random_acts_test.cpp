// Hundreds of acts as they could come, sensible and not: after each the book agrees with itself, and all
// width is somewhere.
#include "tests/core/shop/random_shop.h"

namespace riband::shop {

TEST_CASE("Whatever people do, the book agrees and no width is lost", "[random]") {
    const unsigned seed = GENERATE(1u, 2u, 3u, 4u);
    INFO("seed " << seed);
    RandomShop shop{seed};
    for (int i = 0; i < 330; ++i) {
        INFO("act " << i);
        shop.act();
        shop.checkBook();
    }
    // The acts were of both kinds, done and refused.
    CHECK(shop.refused() > 5);
    CHECK(shop.cutMountings() > 10);
    CHECK(shop.undone() > 1);
    CHECK(shop.forShelf() > 0);
    CHECK(shop.counts().approved() > 0);
    CHECK(shop.counts().scans() > 10);
    CHECK(shop.counts().settled() > 5);
    CHECK(shop.counts().countered() > 0);
}

} // namespace riband::shop
