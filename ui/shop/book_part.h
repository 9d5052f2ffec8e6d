#pragma once

#include "ui/desk/session.h"

#include "core/store/verify.h"

#include <QWidget>

class QAction;
class QLabel;
class QListWidget;
class QProgressBar;

namespace riband::ui {

class BookCheck;

/// The book itself: checked on demand, copied to a file that is checked too.
class BookPart final : public QWidget {
    Q_OBJECT
public:
    explicit BookPart(Session& session, QWidget* parent = nullptr);

private:
    void buildActions();
    void buildView();
    void check();
    void stop();
    void copy();
    void copyTo(const QString& target);
    void show(const store::Verification& verification);
    void setBusy(bool busy);

    Session& session_;
    BookCheck* book_;
    QAction *check_ = nullptr, *stop_ = nullptr, *copy_ = nullptr;
    QProgressBar* progress_;
    QLabel* result_;
    QListWidget* found_;
};

} // namespace riband::ui
