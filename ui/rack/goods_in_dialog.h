#pragma once

#include "core/shop/receive.h"
#include "ui/desk/session.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;
class QTableView;

namespace riband::ui {

class FieldWords;
class GoodsLineForm;
class GoodsLinesModel;
class KeyButton;

/// Goods in: everything that came off one lorry, line by line or from a file, booked as one.
class GoodsInDialog final : public QDialog {
    Q_OBJECT
public:
    explicit GoodsInDialog(Session& session, QWidget* parent = nullptr);
    /// All that was booked while the dialog was open.
    const std::vector<store::PieceId>& received() const { return received_; }
    void reject() override;

private:
    void buildView();
    QWidget* buildHead();
    void fillExpected();
    void chooseExpected();
    bool addLine();
    void changeLine();
    void removeLine();
    void fromFile();
    void freightTyped();
    void book();
    void tellMislabelled(const shop::Received& received);
    void check();
    std::optional<Money> freight() const;

    Session& session_;
    QLineEdit *supplier_, *reference_, *freight_;
    QComboBox* expected_;
    GoodsLineForm* form_;
    GoodsLinesModel* lines_;
    QTableView* table_;
    QLabel *sum_, *costless_, *done_;
    FieldWords* wrong_;
    KeyButton *add_ = nullptr, *change_ = nullptr, *takeOut_ = nullptr, *book_ = nullptr;
    std::optional<int> changed_; ///< the line that is in the form
    std::vector<store::ExpectedDelivery> waiting_;
    std::vector<store::PieceId> received_;
};

} // namespace riband::ui
