#pragma once

#include "ui/desk/session.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QListWidget;

namespace riband::ui {

/// Moving by scanner: piece, place, piece, place, as many as there are. Each pair is booked at once. A place
/// holds for the pieces scanned behind it when it was scanned first.
class ScanMoveDialog final : public QDialog {
    Q_OBJECT
public:
    /// `marked`: the piece that is chosen on the page, which a key takes in the hand. Nothing is to begin
    /// with.
    ScanMoveDialog(Session& session, std::optional<store::PieceId> marked, QWidget* parent = nullptr);
    int moved() const { return moved_; }

private:
    void buildView();
    void scanned();
    void pieceScanned(const store::StockPiece& piece);
    void placeScanned(const std::string& place);
    bool isPlace(const std::string& place);
    void put(const store::StockPiece& piece, const std::string& place);
    void takeMarked();
    void back();
    void ask();

    Session& session_;
    QLineEdit* scan_;
    QLabel *in_hand_, *asks_, *advice_;
    QListWidget* list_;
    std::vector<store::StockPiece> hand_;
    std::optional<store::StockPiece> marked_;
    std::optional<std::string> place_; ///< of a row of pieces that go there
    std::string newPlace_;             ///< named once: a second time makes it one
    std::vector<store::PieceId> done_;
    int moved_ = 0;
};

} // namespace riband::ui
