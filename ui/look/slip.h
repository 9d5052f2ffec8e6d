#pragma once

#include <QFrame>

namespace riband::ui {

/// A slip of paper with a torn upper edge, as the order lies beside the card. Put a layout in it.
class Slip final : public QFrame {
    Q_OBJECT
public:
    explicit Slip(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace riband::ui
