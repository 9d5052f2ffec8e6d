#pragma once

#include "core/belt/identify/next.h"
#include "ui/which/measure_field.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QLabel;

namespace riband::belt {
class Tables;
}

namespace riband::ui {

class ShapeTiles;

/// All that can be said of the belt on the counter, in any part and order.
class SampleForm final : public QWidget {
    Q_OBJECT
public:
    explicit SampleForm(const belt::Tables& tables, QWidget* parent = nullptr);

    belt::identify::Sample sample() const;
    /// Something is typed that is no figure: its name; "" if all is right.
    QString wrong() const;
    bool isEmpty() const;
    bool keepWidth() const;
    void clear();
    void setInstruments(const belt::identify::Instruments& shop);
    /// The errors by which a next measurement is weighed.
    belt::identify::Errors errors() const;
    /// Marks what to measure next, and puts the focus there when asked to.
    void setAsked(const std::optional<belt::identify::Next>& next);
    void enterAsked();
    /// Of the field that has the focus: taken with another instrument.
    void changeInstrument();
    ShapeTiles& shapes() { return *shapes_; }
    MeasureField& field(belt::identify::Measure what);

signals:
    void changed();

private:
    QWidget* buildFields();
    QWidget* buildState();
    void tellErrors();

    ShapeTiles* shapes_;
    QLabel* shapesName_;
    std::vector<MeasureField*> fields_;
    QComboBox* condition_;
    QCheckBox *double_, *open_, *keep_;
    belt::identify::Instruments shop_;
    std::optional<belt::identify::Next> asked_;
    bool clearing_ = false;
};

} // namespace riband::ui
