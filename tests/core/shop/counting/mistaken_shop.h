#pragma once

#include "core/shop/counting/count.h"
#include "core/shop/counting/settle.h"
#include "tests/core/shop/shop_fixture.h"

#include <map>
#include <random>
#include <set>

namespace riband::shop {

/// A shop in which people made mistakes that are known here and not in its book: each on a piece of its own,
/// or, harder to tell, wherever they fall, several on one piece.
/// The book is then counted, and the first proposal of each difference is accepted.
class MistakenShop : public TestShop {
public:
    enum class Mistake {
        CutNotRecorded,   ///< cut for its ticket, nobody recorded it
        CutFromOther,     ///< cut for a ticket of another piece, nobody recorded it
        WrongPiece,       ///< recorded of the ticket's piece, cut from another
        SaleWithoutOrder, ///< a belt of a listed width was cut and sold, no order
        Transposed,       ///< the rest was typed with two digits in the wrong order
        TrimForgotten,    ///< the edge was straightened once more
        LostLabel,
        Gone, ///< nobody knows where
    };
    struct Made {
        Mistake mistake;
        store::PieceId piece;
        std::optional<store::OrderId> order; ///< whose belts were really cut
    };

    enum class Fall { Apart, Anywhere };
    /// `noise`: every measurement is off by up to so many micrometres.
    MistakenShop(unsigned seed, int belts, int piecesEach, int mistakes, std::int64_t noise,
                 Fall fall = Fall::Apart);

    void count();
    void acceptFirstProposals();

    const std::vector<Made>& made() const { return made_; }
    /// What is really there, by the label that it has or had.
    const std::map<store::PieceId, std::int64_t>& truth() const { return truth_; }
    using Settled = std::map<store::PieceId, store::Explanation>;
    /// What each piece's difference was settled as.
    const Settled& settled() const { return settled_; }
    std::optional<store::Explanation> settledAs(store::PieceId piece) const;
    /// Whether somebody did that to the piece.
    bool happened(store::PieceId piece, store::Explanation what) const;
    static store::Explanation rightFor(Mistake mistake);
    static const char* nameOf(Mistake mistake);

private:
    std::int64_t number(std::int64_t from, std::int64_t to);
    void furnish(int belts, int piecesEach);
    bool make(Mistake mistake);
    bool mayBeTouched(store::PieceId piece) const;
    std::optional<store::PieceId> untouched(const belt::Belt& belt);
    std::optional<store::PieceId> anyUntouched();
    std::int64_t used(store::PieceId piece) const;
    bool cutWithoutRecord(bool fromOther);
    bool cutWrongPiece();
    bool mistypeRest();
    void note(store::CountId count, store::PieceId piece);

    std::mt19937 random_;
    std::int64_t noise_;
    Fall fall_;
    store::PersonId manager_{0};
    std::vector<belt::Belt> belts_;
    std::map<store::PieceId, std::int64_t> truth_;
    std::map<store::PieceId, belt::Belt> beltOf_;
    std::set<store::PieceId> touched_, lost_;
    std::vector<Made> made_;
    Settled settled_;
};

} // namespace riband::shop
