#pragma once

#include "core/belt/reader.h"
#include "core/shop/counting/count.h"
#include "ui/desk/session.h"

#include <optional>

namespace riband::ui {

/// What one person does at the rack, step by step: place, piece, width, next piece. It keeps no figure of its
/// own: all that was scanned is in the shop, so that a count is taken up where it was left. The book is not
/// shown before the width is told.
class Tally {
public:
    enum class Step { Place, Piece, Width };
    enum class Tone { Plain, Good, Warn };

    explicit Tally(Session& session) : session_{session} {}

    Step step() const;
    store::Method method() const { return method_; }
    void nextMethod();
    std::optional<store::CountId> count() const { return count_; }
    const QString& place() const { return place_; }

    /// What was scanned or typed at this step; false if it was not understood (it can be typed on then).
    bool enter(const QString& words);
    /// Begins to count this place, or goes on with its count.
    bool take(const std::string& place) { return begin(place); }
    /// One step back; nothing that was noted is lost.
    void back();
    /// Nothing must be measured again first; if it must, that is said.
    bool canClose();
    /// What would be missing if the place were done now.
    std::vector<store::StockPiece> unseen() const;
    /// The place is done. False if it can't be yet.
    bool close();

    QString asks() const;                         ///< "Scan a piece"
    QString large() const;                        ///< what it is about, to be read from two metres
    QString about() const;                        ///< the belt of the piece
    const QString& said() const { return said_; } ///< what came of the last entry
    Tone tone() const { return tone_; }

private:
    bool enterPlace(const QString& words);
    bool enterPiece(const QString& words);
    bool enterFind(const QString& words);
    std::optional<belt::Reading> findOf(const QString& words) const;
    bool goesOn(const QString& words) const;
    bool thereAndNext(const QString& words);
    bool enterWidth(const QString& words);
    bool noteWidth(std::optional<Extent> measured);
    bool noteFind(Extent measured);
    bool outOfBook() const;
    std::optional<store::StockPiece> pieceOf(const QString& words) const;
    bool begin(const std::string& place);
    std::optional<std::string> knownPlace(const QString& words) const;
    Unit unit() const;
    bool tell(Tone tone, const QString& words);

    Session& session_;
    store::Method method_ = store::Method::Calliper;
    std::optional<store::CountId> count_;
    QString place_, newPlace_;
    std::optional<store::StockPiece> piece_;
    std::optional<belt::Belt> find_;
    QString belt_;
    QString said_;
    Tone tone_ = Tone::Plain;
};

} // namespace riband::ui
