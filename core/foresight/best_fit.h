#pragma once

#include "core/foresight/answer.h"

#include <memory>

namespace riband::foresight {

/// The reference: what clerks do. The smallest remnant that takes the whole order, else a new sleeve; an
/// order that no sleeve takes alone is cut widest belts first, as many as fit. Rests that can't give the
/// narrowest listed belt are scrapped; over the rack limit the smallest goes. Knows nothing of the shelf.
class BestFit final : public Player {
public:
    explicit BestFit(Setting setting) : setting_{std::make_shared<const Setting>(std::move(setting))} {}
    Answer answer(const Order& order) override;
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
    void cutFrom(Answer& answer, const std::vector<Line>& lines, double day);
    void keepRest(Mounting& mounting, double opened);
    std::vector<Line> asMuchAsFits(std::vector<Line>& lines) const;

    std::shared_ptr<const Setting> setting_; ///< of all copies: what might be is tried on hundreds of them
    std::vector<Piece> rack_;                ///< by name, that is, by when they came
    PieceName nextName_ = 1;
};

} // namespace riband::foresight
