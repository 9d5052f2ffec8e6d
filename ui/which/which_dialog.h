#pragma once

#include "ui/counter/measured_belt.h"
#include "ui/desk/stock_reader.h"
#include "ui/which/identifier.h"

#include <QDialog>

class QAction;
class QListView;

namespace riband::ui {

class AnswerCard;
class CandidatesModel;
class KeyButton;
class SampleForm;

/// Which belt is this? Opened over any page: what can be measured on the old belt at the left, what it may be
/// at the right, while one types. What is found goes to the Counter, or to the field it was called from.
/// Escape closes it: nobody else knows of it, and what was typed stays until it is cleared.
class WhichDialog final : public QDialog {
    Q_OBJECT
public:
    explicit WhichDialog(Session& session, QWidget* parent = nullptr);

    /// Shows it, with the stock and the sales of now; what is found goes to the Counter.
    void bring();
    /// The same, but what is found goes to where it was called from, "the Rack".
    void bringFor(const QString& where);
    SampleForm& form() { return *form_; }
    /// Nothing while nothing is answered yet.
    const Identifier::Answer* answer() const { return answer_.get(); }
    /// No answer is on its way.
    bool settled() const;
    /// What the chosen candidate comes to; nothing while there is none, or the measures disagree.
    std::optional<MeasuredBelt> chosen() const;

signals:
    /// The chosen belt goes to where the helper was called from.
    void taken(const riband::ui::MeasuredBelt& measured);
    /// The chosen belt goes onto the Counter's line.
    void sent(const riband::ui::MeasuredBelt& measured);
    /// The Counter's line stays, and is compared with the chosen belt.
    void compared(const riband::ui::MeasuredBelt& measured);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildView();
    void goesTo(const QString& where);
    void showNow();
    QWidget* buildAnswer();
    QWidget* buildKeys();
    QAction* act(const QString& name, const QKeySequence& key, const std::function<void()>& does);
    void ask();
    void take(const Identifier::Shared& answer);
    void showNothing();
    void choose(int by);
    void send();
    void sendOtherwise();
    void clear();
    void readErrors();
    void setErrors();
    void showGauge();
    void printGauge();

    Session& session_;
    StockReader stock_;
    Identifier* identifier_;
    Identifier::Shared answer_;
    SampleForm* form_;
    AnswerCard* card_;
    CandidatesModel* model_;
    QListView* list_;
    KeyButton* send_ = nullptr;
    QAction* otherwise_ = nullptr; ///< compares; if called from elsewhere, goes to the Counter all the same
    bool elsewhere_ = false;       ///< not the Counter wants the belt
    bool entered_ = false;         ///< Enter was pressed before the answer was there
};

} // namespace riband::ui
