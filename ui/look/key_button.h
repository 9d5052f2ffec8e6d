#pragma once

#include <QAbstractButton>
#include <QAction>
#include <QKeySequence>
#include <QPointer>

namespace riband::ui {

/// A key as it is written on what it presses: "F9", "Ctrl+1", "Enter".
QString keyName(const QKeySequence& key);

/// A button with its key written on it at the right. The likely next act is large and filled with cool; the
/// others are outlined cards. A checkable one shows its box.
class KeyButton final : public QAbstractButton {
    Q_OBJECT
public:
    enum class Rank { Likely, Plain, Danger };
    /// The button owns the key.
    KeyButton(const QString& text, const QKeySequence& key, Rank rank = Rank::Plain,
              QWidget* parent = nullptr);
    /// Shows and triggers an action that is shared with menus; the action keeps the key. Text, key, enabled,
    /// checkable and checked follow it.
    explicit KeyButton(QAction* action, Rank rank = Rank::Plain, QWidget* parent = nullptr);

    void setRank(Rank rank);
    /// Written on the button only, for a key that someone else listens to.
    void setShownKey(const QKeySequence& key);
    const QKeySequence& shownKey() const { return key_; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    /// The act follows its key at once: Qt would show the button pressed for a tenth of a second first.
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void prepare();
    void followAction();
    void paintFace(QPainter& painter) const;
    void paintWords(QPainter& painter) const;
    QFont wordFont() const;
    QColor wordColour() const;

    Rank rank_;
    QKeySequence key_;
    QPointer<QAction> action_;
};

} // namespace riband::ui
