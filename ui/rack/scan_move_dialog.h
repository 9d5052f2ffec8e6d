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
    /// `first`: the piece that is in the hand already; none: scan one.
    ScanMoveDialog(Session& session, std::optional<store::PieceId> first, QWidget* parent = nullptr);
    int moved() const { return moved_; }

private:
    void buildView();
    void scanned();
    void pieceScanned(const store::StockPiece& piece);
    void placeScanned(const std::string& place);
    bool isPlace(const std::string& place);
    void put(const store::StockPiece& piece, const std::string& place);
    void back();
    void ask();

    Session& session_;
    QLineEdit* scan_;
    QLabel *in_hand_, *asks_, *advice_;
    QListWidget* list_;
    std::vector<store::StockPiece> hand_;
    bool offered_ = false;             ///< what is in the hand was marked on the page, not scanned
    std::optional<std::string> place_; ///< of a row of pieces that go there
    std::string newPlace_;             ///< named once: a second time makes it one
    std::vector<store::PieceId> done_;
    int moved_ = 0;
};

} // namespace riband::ui
