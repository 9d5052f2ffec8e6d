#pragma once

#include "core/foresight/setting.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::foresight {

struct Line {
    Size width;
    int quantity;
    friend bool operator==(const Line&, const Line&) = default;
};

/// What one customer asks for; its lines have different widths.
struct Order {
    double day = 0; ///< shop days since the run began
    std::vector<Line> lines;
};

using PieceName = std::int64_t; ///< never used twice in a run

enum class For : std::uint8_t { Order, Shelf };

struct Cut {
    Size width;
    int count;
    For use;
    friend bool operator==(const Cut&, const Cut&) = default;
};

/// One piece put on the cutter once.
struct Mounting {
    PieceName piece;
    bool opensSleeve = false;
    std::vector<Cut> cuts;
    Size left = 0;
    std::optional<PieceName> keepAs; ///< nothing: the rest is scrapped
    friend bool operator==(const Mounting&, const Mounting&) = default;
};

/// Why this and not the smallest piece that fits. The screen makes a line of it; the core holds no words.
struct Reason {
    enum class Kind : std::uint8_t {
        FromShelf,        ///< no cutting at all
        OnlyWay,          ///< nothing else can serve it
        SmallestThatFits, ///< it is the best as well
        AboutTheSame,     ///< another piece, but it hardly matters
        FinishesPiece,    ///< `figure` is all that is thrown away of the piece
        AvoidsDeadEnd,    ///< the smallest that fits would leave a dead `figure`
        WorthMore,        ///< `figure` of width saved, expected
    };
    Kind kind = Kind::OnlyWay;
    Size figure = 0;
    friend bool operator==(const Reason&, const Reason&) = default;
};

struct Answer {
    std::vector<Line> take; ///< ready belts from the shelf
    std::vector<Mounting> mountings;
    std::vector<PieceName> scrap;
    Reason why;
    friend bool operator==(const Answer&, const Answer&) = default;
};

/// Whoever decides what to cut. Made for one run of one belt.
class Player {
public:
    virtual ~Player() = default;
    virtual Answer answer(const Order& order) = 0;
};

} // namespace riband::foresight
