#pragma once

#include <QFrame>
#include <QTimer>

class QLabel;

namespace riband::ui {

/// Says what was done, or why not, over the lower edge of the window, and goes away by itself.
class Toast final : public QFrame {
    Q_OBJECT
public:
    explicit Toast(QWidget* over);
    void tell(const QString& words) { say(words, "gain", 6000); }
    void warn(const QString& words) { say(words, "warn", 10000); }
    QString words() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    void say(const QString& words, const char* role, int forMs);
    void place();
    QLabel* words_;
    QTimer gone_;
};

} // namespace riband::ui
