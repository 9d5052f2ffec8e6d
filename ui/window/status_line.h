#pragma once

#include "core/store/verify.h"
#include "ui/desk/session.h"

#include <QWidget>

class QLabel;

namespace riband::ui {

/// Below the cards: whether the book is right, and the keys that work everywhere.
class StatusLine final : public QWidget {
    Q_OBJECT
public:
    explicit StatusLine(QWidget* parent = nullptr);
    void showChecking();
    void show(const store::Verification& verification);
    void showFailure(const QString& words);
    QString words() const;

private:
    QLabel *book_, *rest_, *keys_;
};

} // namespace riband::ui
