#pragma once

#include "core/foresight/answer.h"

#include <map>
#include <set>
#include <stdexcept>

namespace riband::foresight {

/// A player broke a rule; the message names it and the order.
class Breach : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// What a run has used up so far.
struct Tally {
    std::int64_t sold = 0; ///< width of the belts that orders got
    std::int64_t orders = 0;
    std::int64_t sleeves = 0; ///< opened
    std::int64_t mountings = 0;
    double remnantDays = 0; ///< remnants held, summed over days
    double readyDays = 0;   ///< ready belts held
    double widthDays = 0;   ///< width held, remnants and ready belts
    double days = 0;
};

/// Books the answers of a player and refuses what a cutter and a rack can't do. Written without any player's
/// code.
class Referee {
public:
    struct Piece {
        Size size;
        double opened; ///< day when its sleeve was opened
    };
    explicit Referee(Setting setting);

    /// Throws Breach; nothing is booked further then.
    void book(const Order& order, const Answer& answer);

    const Tally& tally() const { return tally_; }
    const std::map<PieceName, Piece>& rack() const { return rack_; }
    const std::map<Size, int>& shelf() const { return shelf_; }

private:
    void waitUntil(double day);
    void take(const std::vector<Line>& lines);
    void mount(const Mounting& mounting, double day);
    Referee::Piece lift(const Mounting& mounting, double day);
    void cut(const Cut& cut);
    void checkLimits() const;
    [[noreturn]] void breach(const std::string& rule) const;

    Setting setting_;
    std::map<PieceName, Piece> rack_;
    std::set<PieceName> used_;
    std::map<Size, int> shelf_;
    std::map<Size, int> owed_; ///< belts of the present order still to be given
    Tally tally_;
};

} // namespace riband::foresight
