#pragma once

#include "core/foresight/fill.h"

namespace riband::foresight {

/// Serves an order at least cost by the worth table: over the pieces, sum of worth before - worth after +
/// mounting.
///
/// A dynamic programme over parts of the order: f[j] is the cost of serving part j from the pieces seen so
/// far; new sleeves come last, as many as it takes. Ties fall to the smaller rest since pieces are gone
/// through by size. One object is one desk: it keeps its scratch space, so it is not shared between threads.
class PriceRule {
public:
    explicit PriceRule(const Setting& setting);

    /// Cost of each part of the order without the shelf; f[0] = 0. Valid until the next call. `wanted`: the
    /// part that is still to be cut. A mounting that gives all of it is priced with what it can do for the
    /// shelf, others without: the shelf's room would be counted on once for each of them (a bulk order then
    /// opened sleeve after sleeve).
    std::span<const float> costs(const WorthTable& table, const Stock& stock, const Asked& asked, int wanted);

    /// The cheapest way.
    void choose(const WorthTable& table, const Stock& stock, const Asked& asked, Way& way);

    /// A way for each part of the order, neither none nor all, that this piece (-1: a new sleeve) can give:
    /// that part from it and the others at least cost.
    void addParts(const WorthTable& table, const Stock& stock, const Asked& asked, int remnant,
                  std::vector<Way>& ways);

    /// Everything from one piece (-1: new sleeve), if it takes it.
    bool wholeFrom(const WorthTable& table, const Stock& stock, const Asked& asked, int remnant, Way& way);

    struct Done {
        int sleeves = 0, mountings = 0;
        Worth dropped = 0; ///< worth of what went since the rack was too full
    };
    /// Books a way on the stock; over the rack limit the least worth goes. `rests`: what became of each
    /// share's rest.
    Done apply(const WorthTable& table, Stock& stock, const Asked& asked, const Way& way,
               std::vector<Fill::Choice>* rests = nullptr);

    const Fill& fill() const { return fill_; }

private:
    void begin(const WorthTable& table, const Stock& stock, const Asked& asked);
    void usePieces(const WorthTable& table, const Stock& stock, const Asked& asked);
    void usePiece(const Asked& asked, int number);
    void useSleeves(const Asked& asked);
    std::array<std::uint8_t, mostParts> linesToAdd(const Asked& asked) const;
    void priceParts(const WorthTable& table, const Asked& asked, Size size, float before, float place = 0);
    float placeOnRack(const WorthTable& table, const Stock& stock) const;
    float afterwards(const WorthTable& table, int cell, bool shelf, float place) const;
    bool takeAllReady(const Stock& stock, const Asked& asked, Way& way) const;
    int afterTaking(const Asked& asked, const std::array<int, mostLines>& take) const;
    Worth priceOfTaking(const WorthTable& table, const Stock& stock, const Asked& asked,
                        const std::array<int, mostLines>& take) const;
    void readBack(int part, Way& way) const;
    Fill::Choice useRest(const WorthTable& table, Stock& stock, const Asked& asked, const Share& share,
                         Size size, bool fills);

    Setting setting_;
    Fill fill_;
    const float* rest_ = nullptr; ///< G by cell
    int wanted_ = 0;
    std::array<float, mostParts> cost_{};
    std::array<float, mostParts> price_{};      ///< of taking a part from the piece at hand
    int fits_ = 0;                              ///< parts of a single line that the piece at hand can give
    std::array<int, mostRemnants + 1> order_{}; ///< pieces that were of use, -1 for a sleeve
    int used_ = 0;
    std::array<std::array<std::uint8_t, mostParts>, mostRemnants + 2> from_; ///< part taken from each piece
};

/// Place of the remnant that goes first when the rack is too full.
int leastWorth(const WorthTable& table, const Stock& stock);

} // namespace riband::foresight
