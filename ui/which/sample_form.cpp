#include "ui/which/sample_form.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"
#include "ui/which/shape_tiles.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

using belt::identify::Condition;
using belt::identify::Measure;
using belt::identify::Sample;

namespace {
constexpr int columnsOfFields = 2;
} // namespace

SampleForm::SampleForm(const belt::Tables& tables, QWidget* parent)
    : QWidget{parent}, shapes_{new ShapeTiles{tables}}, shapesName_{label(tr("The tooth from the side"),
                                                                          "remark")},
      condition_{new QComboBox}, double_{new QCheckBox{tr("Teeth on both sides (&U)")}},
      open_{new QCheckBox{tr("Open ends, by the &metre")}}, keep_{new QCheckBox{
                                                                tr("&Keep the width as measured")}} {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addWidget(shapesName_);
    column->addWidget(shapes_);
    column->addWidget(buildFields());
    column->addWidget(buildState());
    column->addStretch();
    connect(shapes_, &ShapeTiles::changed, this, [this] {
        if (!clearing_) emit changed();
    });
}

/// Down first, then across, so that Tab goes through what belongs together.
QWidget* SampleForm::buildFields() {
    auto* box = new QWidget;
    auto* grid = new QGridLayout{box};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(5 * step);
    grid->setVerticalSpacing(step);
    const auto asked = askedMeasures();
    const int rows = static_cast<int>(asked.size()) / columnsOfFields;
    for (const AskedMeasure& each : asked) {
        auto* field = new MeasureField{each};
        connect(field, &MeasureField::changed, this, [this] {
            if (!clearing_) emit changed();
        });
        const int index = static_cast<int>(fields_.size());
        grid->addWidget(field, index % rows, index / rows);
        grid->setColumnStretch(index / rows, 1);
        fields_.push_back(field);
    }
    return box;
}

QWidget* SampleForm::buildState() {
    condition_->addItem(tr("new or used: not known"), static_cast<int>(Condition::Unknown));
    condition_->addItem(tr("new, it never ran"), static_cast<int>(Condition::New));
    condition_->addItem(tr("used: long, its teeth thin"), static_cast<int>(Condition::Used));
    condition_->setAccessibleName(tr("New or used"));
    connect(condition_, &QComboBox::currentIndexChanged, this, [this] {
        tellErrors();
        if (!clearing_) emit changed();
    });
    for (QCheckBox* box : {double_, open_, keep_})
        connect(box, &QCheckBox::toggled, this, [this] {
            if (!clearing_) emit changed();
        });
    auto* box = new QWidget;
    auto* grid = new QGridLayout{box};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(5 * step);
    grid->setVerticalSpacing(0);
    auto* name = label(tr("&New or used"), "remark");
    name->setBuddy(condition_);
    auto* state = new QVBoxLayout;
    state->setSpacing(2);
    state->addWidget(name);
    state->addWidget(condition_);
    grid->addLayout(state, 0, 0, 2, 1);
    grid->addWidget(keep_, 2, 0);
    grid->addWidget(double_, 0, 1);
    grid->addWidget(open_, 1, 1);
    for (int i = 0; i < columnsOfFields; ++i)
        grid->setColumnStretch(i, 1);
    return box;
}

Sample SampleForm::sample() const {
    Sample sample;
    for (const MeasureField* field : fields_)
        if (const auto taken = field->measurement()) sample.measured.push_back(*taken);
    sample.shape = shapes_->shape();
    sample.condition = static_cast<Condition>(condition_->currentData().toInt());
    if (double_->isChecked()) sample.doubleSided = true;
    sample.openEnded = open_->isChecked();
    return sample;
}

QString SampleForm::wrong() const {
    const auto field =
        std::find_if(fields_.begin(), fields_.end(), [](const auto* each) { return each->isWrong(); });
    return field == fields_.end() ? QString{} : (*field)->figure().accessibleName();
}

bool SampleForm::isEmpty() const {
    return !shapes_->shape() &&
           std::all_of(fields_.begin(), fields_.end(), [](const auto* each) { return each->isEmpty(); });
}

bool SampleForm::keepWidth() const { return keep_->isChecked(); }

void SampleForm::clear() {
    {
        const QScopedValueRollback quiet{clearing_, true};
        for (MeasureField* field : fields_)
            field->clear();
        shapes_->setShape(std::nullopt);
        condition_->setCurrentIndex(0);
        for (QCheckBox* box : {double_, open_, keep_})
            box->setChecked(false);
    }
    emit changed();
}

void SampleForm::setInstruments(const belt::identify::Instruments& shop) {
    shop_ = shop;
    tellErrors();
}

belt::identify::Errors SampleForm::errors() const { return errorsOf(shop_, sample().condition); }

void SampleForm::tellErrors() {
    const auto condition = static_cast<Condition>(condition_->currentData().toInt());
    for (MeasureField* field : fields_)
        field->setErrors(shop_, condition);
}

void SampleForm::setAsked(const std::optional<belt::identify::Next>& next) {
    asked_ = next;
    for (MeasureField* field : fields_)
        field->setAsked(next && next->what == field->what(), next ? next->over : 0);
    const bool shape = next && next->what == Measure::Shape;
    setSheetProperty(*shapesName_, "role", shape ? QStringLiteral("gain") : QStringLiteral("remark"));
}

void SampleForm::enterAsked() {
    if (!asked_) return;
    if (asked_->what == Measure::Shape) return shapes_->enter();
    MeasureField& asked = field(asked_->what);
    if (asked_->over > 0) {
        asked.figure().clear(); // over so many teeth it is another figure
        asked.setOver(asked_->over);
    }
    asked.enter();
}

void SampleForm::changeInstrument() {
    for (MeasureField* field : fields_)
        if (field->holdsFocus()) field->changeInstrument();
}

MeasureField& SampleForm::field(Measure what) {
    return **std::find_if(fields_.begin(), fields_.end(),
                          [what](const auto* each) { return each->what() == what; });
}

} // namespace riband::ui
