#pragma once

#include <QAbstractButton>

class QAction;

namespace riband::ui {

/// A button with its key written on it. It shows, enables and triggers its action.
class KeyButton final : public QAbstractButton {
    Q_OBJECT
public:
    enum class Weight { Main, Plain };
    explicit KeyButton(QAction* action, Weight weight = Weight::Plain, QWidget* parent = nullptr);
    /// Without an action: `key` is only written on it.
    KeyButton(const QString& text, const QString& key, QWidget* parent = nullptr);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }
    /// True if all of text and key can be read at the present size.
    bool fits() const { return width() >= sizeHint().width(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void follow(QAction* action);
    QFont textFont() const;
    QFont keyFont() const;
    Weight weight_ = Weight::Plain;
    QString key_;
};

} // namespace riband::ui
