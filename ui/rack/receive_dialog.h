#pragma once

#include "core/shop/receive.h"
#include "ui/desk/session.h"

#include <QDialog>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace riband::ui {

/// Goods in: one kind of sleeve after the other, as they come out of the box.
class ReceiveDialog final : public QDialog {
    Q_OBJECT
public:
    explicit ReceiveDialog(Session& session, QWidget* parent = nullptr);
    /// All that was booked while the dialog was open.
    const std::vector<store::PieceId>& received() const { return received_; }

private:
    void buildView();
    void addRow(QFormLayout& form, const QString& name, QWidget* field, const char* object);
    void understand();
    void check();
    void book();
    std::optional<shop::Delivery> delivery() const;

    Session& session_;
    QLineEdit *belt_, *width_, *cost_, *batch_, *made_, *place_;
    QSpinBox* count_;
    QComboBox* kind_;
    QLabel *understood_, *done_;
    QPushButton* book_ = nullptr;
    std::optional<belt::Belt> known_;
    std::vector<store::PieceId> received_;
};

} // namespace riband::ui
