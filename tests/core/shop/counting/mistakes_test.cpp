// Known mistakes are put into a shop; a count and the first proposals bring the book to the truth.
#include "tests/core/shop/counting/mistaken_shop.h"

#include "core/store/verify.h"

namespace riband::shop {

TEST_CASE("After a count and the first proposals the book says what is there", "[count][random]") {
    const unsigned seed = GENERATE(1u, 2u, 3u, 4u, 5u, 6u);
    INFO("seed " << seed);
    MistakenShop shop{seed, 8, 5, 14, 0};
    shop.count();
    CHECK_FALSE(findings(shop.shop).empty());
    shop.acceptFirstProposals();

    for (const auto& [piece, width] : shop.truth()) {
        INFO(shop.at(piece).code);
        CHECK(shop.at(piece).extent.count() == width); // lost labels too: they were told from each other
    }
    CHECK(store::Pieces{shop.connection}.all().size() ==
          static_cast<std::size_t>(std::count_if(shop.truth().begin(), shop.truth().end(),
                                                 [](const auto& each) { return each.second > 0; })));
    CHECK(shop.disagreements().empty());
    CHECK(store::verify(shop.connection).holes.empty());

    // What the figures tell apart is told apart: whole order lines, pairs, labels, what is gone.
    std::size_t right = 0;
    for (const MistakenShop::Made& made : shop.made()) {
        INFO(MistakenShop::nameOf(made.mistake) << " of " << shop.at(made.piece).code);
        REQUIRE(shop.settledAs(made.piece));
        right += shop.settledAs(made.piece) == MistakenShop::rightFor(made.mistake) ? 1 : 0;
        if (shop.settledAs(made.piece) == store::Explanation::CutNotRecorded && made.order)
            CHECK(shop.at(*made.order).state == store::OrderState::Ready);
    }
    CHECK(10 * right >= 8 * shop.made().size());
}

} // namespace riband::shop
