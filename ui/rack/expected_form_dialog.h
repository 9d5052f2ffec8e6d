#pragma once

#include "core/shop/expected.h"
#include "ui/desk/session.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QTableWidget;

namespace riband::ui {

class FieldWords;
class GoodsLineForm;
class KeyButton;

/// One delivery that is expected: from whom, when, and its lines; new, or one that is changed.
class ExpectedFormDialog final : public QDialog {
    Q_OBJECT
public:
    /// `before`: what it is now, if it is noted already.
    ExpectedFormDialog(Session& session, std::optional<store::ExpectedDelivery> before,
                       QWidget* parent = nullptr);
    void reject() override;

private:
    void buildView();
    QWidget* buildHead();
    QLayout* buildLines();
    bool addLine();
    void changeLine();
    void removeLine();
    void fromFile();
    void fill();
    void check();
    void keep();
    bool isTouched() const;
    std::int64_t arrivedOf(const shop::ExpectedGoods& line) const;

    Session& session_;
    std::optional<store::ExpectedDelivery> before_;
    std::vector<shop::ExpectedGoods> lines_;
    std::optional<std::size_t> changed_; ///< the line that is in the form
    QLineEdit *supplier_, *reference_, *due_;
    GoodsLineForm* form_;
    QTableWidget* table_;
    QLabel *sum_, *fault_;
    FieldWords* wrong_;
    bool touched_ = false; ///< lines are not what they were
    KeyButton *add_ = nullptr, *change_ = nullptr, *remove_ = nullptr, *keep_ = nullptr;
};

} // namespace riband::ui
