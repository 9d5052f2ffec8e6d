#pragma once

#include "core/store/pieces.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QPushButton;

namespace riband::ui {

/// How a piece is divided in two.
class SplitDialog final : public QDialog {
    Q_OBJECT
public:
    explicit SplitDialog(const store::StockPiece& piece, QWidget* parent = nullptr);
    std::optional<Extent> apart() const; ///< width of the new piece
    std::string place() const;

private:
    void check();
    store::StockPiece piece_;
    QLineEdit *apart_, *place_;
    QLabel* stays_;
    QPushButton* split_ = nullptr;
};

} // namespace riband::ui
