#pragma once

#include "ui/tally/tally.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QListWidget;

namespace riband::ui {

/// Counting: one line for scanner and keys, what it is about large enough to be read from two metres, and
/// what nobody has seen yet (codes and belts, no figures).
class CountView final : public QWidget {
    Q_OBJECT
public:
    CountView(Session& session, Tally& tally, QWidget* parent = nullptr);
    QLineEdit& line() { return *line_; }
    void refresh();

signals:
    /// The shop's pieces are not what they were.
    void noted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* buildLeft();
    QWidget* buildRight();
    void enter();
    void showStep();
    void showList();
    void listOpen();
    void listUnseen();

    Session& session_;
    Tally& tally_;
    QLineEdit* line_;
    QLabel *asks_, *large_, *typed_, *about_, *said_, *method_, *listHead_;
    QListWidget* list_;
};

} // namespace riband::ui
