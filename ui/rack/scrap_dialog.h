#pragma once

#include "core/shop/stock.h"

#include <QDialog>

class QComboBox;
class QLineEdit;

namespace riband::ui {

class FieldWords;

/// What to throw away of a piece, and why.
class ScrapDialog final : public QDialog {
    Q_OBJECT
public:
    ScrapDialog(const store::StockPiece& piece, const shop::Spare& spare, QWidget* parent = nullptr);
    Extent extent() const;
    store::ScrapReason reason() const;
    std::string note() const;
    std::optional<std::int64_t> grams() const; ///< none was told
    void suggest(store::ScrapReason reason);
    void accept() override;

private:
    QString needed() const;
    QString wrongWidth(const QString& typed) const;
    store::StockPiece piece_;
    shop::Spare spare_;
    QLineEdit *extent_, *note_, *grams_;
    QComboBox* reason_;
    FieldWords* wrong_;
};

} // namespace riband::ui
