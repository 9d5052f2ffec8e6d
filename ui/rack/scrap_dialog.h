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
    std::optional<std::int64_t> grams() const; ///< none was told
    void suggest(store::ScrapReason reason);

private:
    std::optional<Extent> typed() const;
    store::StockPiece piece_;
    void check();
    QLineEdit *extent_, *note_, *grams_;
    QComboBox* reason_;
    QPushButton* scrap_ = nullptr;
};

} // namespace riband::ui
