#pragma once

#include <QWidget>

namespace riband::ui {

/// The outline of a bank card, to be made as wide as the card that is held against the screen.
class CardOutline final : public QWidget {
    Q_OBJECT
public:
    explicit CardOutline(QWidget* parent = nullptr);
    double scale() const { return scale_; } ///< pixels a millimetre
    void setScale(double pixelsPerMillimetre);
    /// Makes the outline so many pixels wider.
    void widen(double pixels);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    double scale_ = 96 / 25.4;
};

} // namespace riband::ui
