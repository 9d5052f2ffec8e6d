#pragma once

#include "ui/which/measures.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QSpinBox;
class QToolButton;

namespace riband::ui {

/// One measure to type: its name, over how many teeth where that is asked, the figure, and what it was taken
/// with. What is typed may hold its own error: "100.1 ±0.3".
class MeasureField final : public QWidget {
    Q_OBJECT
public:
    explicit MeasureField(const AskedMeasure& asked, QWidget* parent = nullptr);

    belt::identify::Measure what() const { return asked_.what; }
    /// Nothing if nothing is typed, or what is no figure.
    std::optional<belt::identify::Measurement> measurement() const;
    bool isEmpty() const;
    /// Something is typed, and it is no figure that could be measured.
    bool isWrong() const;
    void clear();
    /// The errors that are known of the instruments here and now.
    void setErrors(const belt::identify::Instruments& shop, belt::identify::Condition condition);
    /// Marks it as the one to measure next; `over` where it is over other teeth than now.
    void setAsked(bool asked, int over = 0);
    /// The focus to the figure, all of it selected.
    void enter();
    /// Calliper, rule, tape, and again.
    void changeInstrument();
    bool holdsFocus() const;
    QLineEdit& figure() { return *figure_; }
    void setOver(int over);

signals:
    void changed();

private:
    void buildView();
    void showError();
    void edited();

    AskedMeasure asked_;
    belt::identify::Instrument with_;
    belt::identify::Instruments shop_;
    belt::identify::Condition condition_ = belt::identify::Condition::Unknown;
    QLabel* name_;
    QSpinBox* over_ = nullptr;
    QLineEdit* figure_;
    QToolButton* instrument_ = nullptr;
};

} // namespace riband::ui
