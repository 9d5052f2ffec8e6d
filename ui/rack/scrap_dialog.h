#pragma once

#include "core/store/ledger.h"
#include "core/store/pieces.h"

#include <QDialog>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace riband::ui {

/// What to throw away of a piece, and why.
class ScrapDialog final : public QDialog {
    Q_OBJECT
public:
    explicit ScrapDialog(const store::StockPiece& piece, QWidget* parent = nullptr);
    Extent extent() const;
    store::ScrapReason reason() const;
    std::string note() const;

private:
    std::optional<Extent> typed() const;
    store::StockPiece piece_;
    QLineEdit *extent_, *note_;
    QComboBox* reason_;
    QPushButton* scrap_ = nullptr;
};

} // namespace riband::ui
