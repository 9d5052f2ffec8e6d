#pragma once

#include "core/foresight/answer.h"

#include <limits>
#include <memory>

namespace riband::foresight {

/// The reference: what clerks do. The smallest remnant that takes the whole order, else a new sleeve; an
/// order that no sleeve takes alone is cut widest belts first, as many as fit. Rests that can't give the
/// narrowest listed belt are scrapped; over the rack limit the smallest goes. Knows nothing of the shelf.
class BestFit final : public Player {
public:
    explicit BestFit(Setting setting) : setting_{std::make_shared<const Setting>(std::move(setting))} {}
    Answer answer(const Order& order) override;
    /// The same without an answer: how many sleeves were opened. Nothing if that would be more than `most`:
    /// then the order goes elsewhere and the rack is as it was.
    std::optional<std::size_t> serve(const std::vector<Line>& lines, double day, std::size_t most);
    static constexpr std::size_t anyNumber = std::numeric_limits<std::size_t>::max();
    /// A remnant that lies on the rack at the start; its sleeve was opened on that day.
    void keep(Size remnant, double opened) { rack_.push_back({nextName_++, remnant, opened}); }
    void scrapBelow(Size least); ///< remnants that are narrower
    double held() const;         ///< width of all remnants

private:
    struct Piece {
        PieceName name;
        Size size;
        double opened;
    };
    struct Cut {
        PieceName piece;
        bool opensSleeve;
        Size left;
        std::optional<PieceName> keepAs;
    };
    void clearAged(double day);
    std::vector<Piece>::iterator smallestFor(const std::vector<Line>& lines);
    Cut cutFrom(std::vector<Piece>::iterator piece, const std::vector<Line>& lines, double day);
    std::vector<Line> asMuchAsFits(std::vector<Line>& lines) const;
    template <class Told>
    void cutOut(std::vector<Line> lines, double day, Told told);
    template <class Told>
    void keepLimit(Told told);

    std::shared_ptr<const Setting> setting_; ///< of all copies: what might be is tried on hundreds of them
    std::vector<Piece> rack_;                ///< by name, that is, by when they came
    PieceName nextName_ = 1;
};

} // namespace riband::foresight
