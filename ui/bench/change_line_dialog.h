#pragma once

#include "core/store/orders.h"

#include <QDialog>

class QLineEdit;
class QPushButton;
class QSpinBox;

namespace riband::ui {

/// Another width or quantity for a line of a booked order; no belts means: not this line.
class ChangeLineDialog final : public QDialog {
    Q_OBJECT
public:
    ChangeLineDialog(const store::OrderLine& line, const QString& belt, QWidget* parent = nullptr);
    Extent extent() const;
    std::int64_t quantity() const;

private:
    std::optional<Extent> typed() const;
    Extent before_;
    QLineEdit* width_;
    QSpinBox* quantity_;
    QPushButton* change_ = nullptr;
};

} // namespace riband::ui
