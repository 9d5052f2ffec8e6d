#pragma once

#include "core/shop/stock.h"

#include <QDialog>

class QLabel;
class QLineEdit;

namespace riband::ui {

class FieldWords;

/// How a piece is divided in two.
class SplitDialog final : public QDialog {
    Q_OBJECT
public:
    /// `stub`: what is narrower can't be held by a cutter.
    SplitDialog(const store::StockPiece& piece, Extent stub, const shop::Spare& spare,
                QWidget* parent = nullptr);
    std::optional<Extent> apart() const; ///< width of the new piece
    std::string place() const;

    void accept() override;

private:
    QString whyNot() const;
    QString needed() const;
    QString wrongApart(const QString& typed) const;
    void showRest();
    store::StockPiece piece_;
    Extent stub_;
    shop::Spare spare_;
    QLineEdit *apart_, *place_;
    QLabel* stays_;
    FieldWords* wrong_;
};

} // namespace riband::ui
