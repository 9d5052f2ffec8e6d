#pragma once

#include <QFrame>
#include <QTimer>

class QLabel;

namespace riband::ui {

/// Says what was done, or why not, beside the tabs where it covers nothing, and goes away by itself.
class Toast final : public QFrame {
    Q_OBJECT
public:
    explicit Toast(QWidget* parent = nullptr);
    void tell(const QString& words) { say(words, "gain", 8000); }
    void warn(const QString& words) { say(words, "warn", 12000); }
    QString words() const;

protected:
    void mousePressEvent(QMouseEvent* event) override;

private:
    void say(const QString& words, const char* role, int forMs);
    QLabel* words_;
    QTimer gone_;
};

} // namespace riband::ui
