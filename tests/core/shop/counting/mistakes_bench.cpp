// How often the first proposal names what really happened: precision and recall over shops of known mistakes.
#include "tests/core/shop/counting/mistaken_shop.h"

#include <cstdio>
#include <cstdlib>

namespace riband::shop {

namespace {

struct Score {
    int made = 0;  ///< mistakes
    int named = 0; ///< of them: an accepted proposal says so of their piece
    int said = 0;  ///< accepted proposals
    int right = 0; ///< of them: somebody did that to the piece
};

/// How hard the shops are to read.
struct Set {
    const char* name;
    int belts, piecesEach, mistakes;
    MistakenShop::Fall fall;
};

void play(const Set& set, std::int64_t noise) {
    std::map<store::Explanation, Score> scores;
    std::size_t pieces = 0, true_ = 0, several = 0;
    for (unsigned seed = 100; seed < 120; ++seed) {
        MistakenShop shop{seed, set.belts, set.piecesEach, set.mistakes, noise, set.fall};
        shop.count();
        shop.acceptFirstProposals();
        std::map<store::PieceId, int> on;
        for (const MistakenShop::Made& made : shop.made()) {
            ++on[made.piece];
            Score& score = scores[MistakenShop::rightFor(made.mistake)];
            ++score.made;
            if (shop.settledAs(made.piece) == MistakenShop::rightFor(made.mistake)) ++score.named;
        }
        for (const auto& [piece, what] : shop.settled()) {
            ++scores[what].said;
            if (shop.happened(piece, what)) ++scores[what].right;
        }
        for (const auto& [piece, mistakes] : on) {
            ++pieces;
            several += mistakes > 1 ? 1 : 0;
            const std::int64_t off = shop.at(piece).extent.count() - shop.truth().at(piece);
            true_ += std::abs(off) <= noise ? 1 : 0;
        }
    }
    constexpr MistakenShop::Mistake mistakes[] = {
        MistakenShop::Mistake::CutNotRecorded, MistakenShop::Mistake::CutFromOther,
        MistakenShop::Mistake::WrongPiece,     MistakenShop::Mistake::SaleWithoutOrder,
        MistakenShop::Mistake::Transposed,     MistakenShop::Mistake::TrimForgotten,
        MistakenShop::Mistake::LostLabel,      MistakenShop::Mistake::Gone};
    std::printf("%s, measured to %.2f mm\n", set.name, static_cast<double>(noise) / 1000);
    int made = 0, named = 0;
    for (const auto mistake : mistakes) {
        const Score& score = scores[MistakenShop::rightFor(mistake)];
        std::printf("  %-38s %4d  recall %5.1f %%  precision %5.1f %%\n", MistakenShop::nameOf(mistake),
                    score.made, 100.0 * score.named / std::max(1, score.made),
                    100.0 * score.right / std::max(1, score.said));
        made += score.made;
        named += score.named;
    }
    std::printf("  %-38s %4d  named  %5.1f %%\n", "all", made, 100.0 * named / std::max(1, made));
    std::printf("  pieces with mistakes %zu, with several %zu; the book ends at what is there for %.1f %%\n",
                pieces, several,
                100.0 * static_cast<double>(true_) / static_cast<double>(std::max<std::size_t>(1, pieces)));
}

} // namespace

TEST_CASE("Precision and recall of the first proposals") {
    constexpr Set sets[] = {
        {"each mistake on its own piece", 12, 6, 24, MistakenShop::Fall::Apart},
        {"few belts, mistakes anywhere", 4, 6, 24, MistakenShop::Fall::Anywhere},
    };
    for (const Set& set : sets)
        for (const std::int64_t noise : {0, 150, 250})
            play(set, noise);
}

} // namespace riband::shop
