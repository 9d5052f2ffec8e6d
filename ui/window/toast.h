#pragma once

#include <QFrame>
#include <QTimer>

class QLabel;

namespace riband::ui {

/// Says what was done, or why not, in the room beside the tabs, and goes away by itself. Only what has
/// no room in the whole row of the tabs hangs down over the page, so that every word can be read.
class Toast final : public QFrame {
    Q_OBJECT
public:
    /// `room` is laid out by whoever owns it; the toast lies over it.
    explicit Toast(QWidget* room);
    void tell(const QString& words) { say(words, "gain", 8000); }
    void warn(const QString& words) { say(words, "warn", 12000); }
    QString words() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    void place();
    void say(const QString& words, const char* role, int forMs);
    QWidget* room_;
    QLabel* words_;
    QTimer gone_;
};

} // namespace riband::ui
