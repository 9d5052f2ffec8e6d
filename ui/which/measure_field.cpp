#include "ui/which/measure_field.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QLocale>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>

namespace riband::ui {

using belt::identify::Instrument;
using belt::identify::Measurement;

namespace {
constexpr int mostOver = 500;
constexpr int overWidth = 96;
constexpr int instrumentWidth = 116;

QString plainName(QString name) { return name.remove('&'); }

QString number(double value) { return QLocale{}.toString(value, 'g', 3); }
} // namespace

MeasureField::MeasureField(const AskedMeasure& asked, QWidget* parent)
    : QWidget{parent}, asked_{asked}, with_{belt::identify::usualInstrument(asked.what)},
      name_{label(asked.name, "remark")}, figure_{new QLineEdit} {
    setObjectName(QStringLiteral("measure-%1").arg(static_cast<int>(asked.what)));
    buildView();
    showError();
}

void MeasureField::buildView() {
    name_->setBuddy(figure_);
    figure_->setAccessibleName(plainName(asked_.name));
    connect(figure_, &QLineEdit::textChanged, this, &MeasureField::edited);
    auto* row = new QHBoxLayout;
    row->setSpacing(step);
    if (asked_.over > 0) {
        over_ = new QSpinBox;
        over_->setRange(asked_.what == belt::identify::Measure::RibsOver ? 2 : 1, mostOver);
        over_->setValue(asked_.over);
        over_->setFixedWidth(overWidth);
        over_->setAccessibleName(tr("%1: over how many").arg(plainName(asked_.name)));
        connect(over_, &QSpinBox::valueChanged, this, &MeasureField::edited);
        row->addWidget(over_);
    }
    row->addWidget(figure_, 1);
    if (!asked_.counted()) {
        instrument_ = new QToolButton;
        instrument_->setFixedWidth(instrumentWidth);
        instrument_->setAccessibleName(tr("%1: measured with").arg(plainName(asked_.name)));
        connect(instrument_, &QToolButton::clicked, this, &MeasureField::changeInstrument);
        row->addWidget(instrument_);
    }
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(name_);
    column->addLayout(row);
}

std::optional<Measurement> MeasureField::measurement() const {
    const auto typed = readFigure(figure_->text());
    if (!typed) return std::nullopt;
    const double usual = belt::identify::errorOf(asked_.what, with_, shop_, condition_);
    const Measurement taken{asked_.what, typed->value, typed->error.value_or(usual),
                            over_ ? over_->value() : 0};
    belt::identify::Sample alone;
    alone.measured = {taken};
    if (belt::identify::faultOf(alone)) return std::nullopt;
    return taken;
}

bool MeasureField::isEmpty() const { return figure_->text().trimmed().isEmpty(); }

bool MeasureField::isWrong() const { return !isEmpty() && !measurement(); }

void MeasureField::clear() {
    figure_->clear();
    with_ = belt::identify::usualInstrument(asked_.what);
    if (over_) over_->setValue(asked_.over);
    showError();
}

void MeasureField::setErrors(const belt::identify::Instruments& shop, belt::identify::Condition condition) {
    shop_ = shop;
    condition_ = condition;
    showError();
}

void MeasureField::showError() {
    setSheetProperty(*figure_, "wrong", isWrong() ? QStringLiteral("true") : QStringLiteral("false"));
    if (!instrument_) return;
    const auto typed = readFigure(figure_->text());
    if (typed && typed->error)
        instrument_->setText(tr("± %1 mm", "an error that was typed").arg(number(*typed->error)));
    else
        instrument_->setText(
            tr("%1 ± %2", "an instrument and its error")
                .arg(nameOf(with_), number(belt::identify::errorOf(asked_.what, with_, shop_, condition_))));
    instrument_->setAccessibleDescription(instrument_->text());
}

void MeasureField::edited() {
    showError();
    emit changed();
}

void MeasureField::setAsked(bool asked, int over) {
    setSheetProperty(*name_, "role", asked ? QStringLiteral("gain") : QStringLiteral("remark"));
    if (asked && over_ && over > 0 && !figure_->hasFocus() && isEmpty()) setOver(over);
}

void MeasureField::setOver(int over) {
    if (over_) over_->setValue(over);
}

void MeasureField::enter() {
    figure_->setFocus(Qt::ShortcutFocusReason);
    figure_->selectAll();
}

void MeasureField::changeInstrument() {
    if (!instrument_) return;
    with_ = static_cast<Instrument>((static_cast<int>(with_) + 1) %
                                    static_cast<int>(belt::identify::instrumentCount));
    edited();
}

bool MeasureField::holdsFocus() const {
    const QWidget* at = QApplication::focusWidget();
    return at && isAncestorOf(at);
}

} // namespace riband::ui
