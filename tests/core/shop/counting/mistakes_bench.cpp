// How often the first proposal names what really happened: precision and recall over shops of known mistakes.
#include "tests/core/shop/counting/mistaken_shop.h"

#include <cstdio>

namespace riband::shop {

namespace {

struct Score {
    int made = 0, right = 0, said = 0;
};

void play(std::int64_t noise) {
    std::map<store::Explanation, Score> scores;
    for (unsigned seed = 100; seed < 120; ++seed) {
        MistakenShop shop{seed, 12, 6, 24, noise};
        shop.count();
        shop.acceptFirstProposals();
        for (const MistakenShop::Made& made : shop.made()) {
            Score& score = scores[MistakenShop::rightFor(made.mistake)];
            ++score.made;
            const auto settled = shop.settledAs(made.piece);
            if (!settled) continue;
            ++scores[*settled].said;
            if (settled == MistakenShop::rightFor(made.mistake)) ++score.right;
        }
    }
    constexpr MistakenShop::Mistake mistakes[] = {
        MistakenShop::Mistake::CutNotRecorded, MistakenShop::Mistake::CutFromOther,
        MistakenShop::Mistake::WrongPiece,     MistakenShop::Mistake::SaleWithoutOrder,
        MistakenShop::Mistake::Transposed,     MistakenShop::Mistake::TrimForgotten,
        MistakenShop::Mistake::LostLabel,      MistakenShop::Mistake::Gone};
    std::printf("measured to %.2f mm\n", static_cast<double>(noise) / 1000);
    int made = 0, right = 0;
    for (const auto mistake : mistakes) {
        const Score& score = scores[MistakenShop::rightFor(mistake)];
        std::printf("  %-38s %4d  recall %5.1f %%  precision %5.1f %%\n", MistakenShop::nameOf(mistake),
                    score.made, 100.0 * score.right / std::max(1, score.made),
                    100.0 * score.right / std::max(1, score.said));
        made += score.made;
        right += score.right;
    }
    std::printf("  %-38s %4d  right  %5.1f %%\n", "all", made, 100.0 * right / std::max(1, made));
}

} // namespace

TEST_CASE("Precision and recall of the first proposals") {
    play(0);
    play(150);
    play(250);
}

} // namespace riband::shop
