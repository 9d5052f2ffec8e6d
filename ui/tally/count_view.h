#pragma once

#include "ui/desk/list_file.h"
#include "ui/tally/tally.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QListWidget;
class QStackedWidget;

namespace riband::ui {

class PlanView;

/// Counting: one line for scanner and keys, what it is about large enough to be read from two metres, and
/// what nobody has seen yet (codes and belts, no figures). Before a place is named: what to count today.
class CountView final : public QWidget {
    Q_OBJECT
public:
    CountView(Session& session, Tally& tally, QWidget* parent = nullptr);
    QLineEdit& line() { return *line_; }
    /// The keys go to the line; what was refused there is typed over.
    void focusLine();
    void refresh();
    /// Counts the marked place of the day's plan.
    void start();
    const PlanView& plan() const { return *plan_; }
    /// What nobody has seen yet at the place that is counted, without figures; else the day's plan.
    ListRows list() const;

signals:
    /// The shop's pieces are not what they were.
    void noted();
    /// It may be at another step.
    void stepped();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* buildLeft();
    QWidget* buildRight();
    QWidget* buildFigures();
    void enter();
    bool keyPressed(int key);
    void showStep();
    void showList();
    void listMarked();
    void listUnseen(store::CountId count);
    QString seenWords(store::CountId count, std::size_t unseen) const;
    void listAgain(store::CountId count);

    Session& session_;
    Tally& tally_;
    QLineEdit* line_;
    QLabel *asks_, *large_, *typed_, *about_, *said_, *method_, *listHead_;
    QListWidget* list_;
    PlanView* plan_;
    QStackedWidget* face_;
    bool refused_ = false; ///< what stands on the line
};

} // namespace riband::ui
