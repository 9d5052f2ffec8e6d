#include "ui/which/errors_dialog.h"

#include "core/store/measuring.h"
#include "ui/desk/field_words.h"
#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/which/measures.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace riband::ui {

namespace {

constexpr double most = 50; ///< mm: more would be no measuring

QString shownFigure(double value) { return QLocale{}.toString(value, 'g', 5); }

/// To the micrometre, as it is kept; nothing if it is no error at all.
std::optional<double> errorIn(const QString& typed) {
    const auto figure = readFigure(typed);
    if (!figure || figure->error) return std::nullopt;
    const double value = std::round(figure->value * 1000) / 1000;
    if (value <= 0 || value > most) return std::nullopt;
    return value;
}

} // namespace

ErrorsDialog::ErrorsDialog(Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, wrong_{new FieldWords} {
    setWindowTitle(tr("How well we measure"));
    setWhatsThis(tr("How far calliper, rule and tape may be off in these hands, and what wear adds. Too "
                    "small, and the right belt is ruled out; too large, and more belts remain in question."));
    belt::identify::Instruments now;
    session.attempt([&] { now = store::readMeasuring(session.shop().connection); });
    calliper_ = field(tr("Calliper"), "calliper", now.calliper);
    rule_ = field(tr("Rule"), "rule", now.rule);
    tape_ = field(tr("Tape"), "tape", now.tape);
    worn_ = field(tr("Worn belt"), "worn", now.worn);
    auto* about = label(
        tr("Two readings in three are nearer than this to the true figure, in mm. What a worn belt adds "
           "counts where the belt is said to be used."));
    about->setWordWrap(true);
    auto* form = new QFormLayout;
    form->addRow(tr("&Calliper ± mm"), calliper_);
    form->addRow(tr("&Rule ± mm"), rule_);
    form->addRow(tr("&Tape ± mm"), tape_);
    form->addRow(tr("A &worn belt adds ± mm"), worn_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel |
                                         QDialogButtonBox::RestoreDefaults};
    connect(buttons, &QDialogButtonBox::accepted, this, &ErrorsDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    QPushButton* usual = buttons->button(QDialogButtonBox::RestoreDefaults);
    usual->setText(tr("As &usual"));
    connect(usual, &QPushButton::clicked, this, &ErrorsDialog::showUsual);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(3 * step);
    column->addWidget(about);
    column->addLayout(form);
    column->addWidget(wrong_);
    column->addWidget(buttons);
    setMinimumWidth(460);
}

QLineEdit* ErrorsDialog::field(const QString& name, const char* object, double value) {
    auto* made = new QLineEdit{shownFigure(value)};
    made->setAccessibleName(name);
    made->setObjectName(QString::fromLatin1(object));
    wrong_->watch(*made, &ErrorsDialog::wrongError);
    return made;
}

void ErrorsDialog::showUsual() {
    const belt::identify::Instruments usual;
    calliper_->setText(shownFigure(usual.calliper));
    rule_->setText(shownFigure(usual.rule));
    tape_->setText(shownFigure(usual.tape));
    worn_->setText(shownFigure(usual.worn));
}

std::optional<belt::identify::Instruments> ErrorsDialog::typed() const {
    const auto calliper = errorIn(calliper_->text()), rule = errorIn(rule_->text()),
               tape = errorIn(tape_->text()), worn = errorIn(worn_->text());
    if (!calliper || !rule || !tape || !worn) return std::nullopt;
    return belt::identify::Instruments{*calliper, *rule, *tape, *worn};
}

QString ErrorsDialog::wrongError(const QString& typed) {
    return errorIn(typed) ? QString{}
                          : tr("Type an error in mm, for example %1: more than nothing, at most %2.")
                                .arg(shownFigure(0.1), shownFigure(most));
}

void ErrorsDialog::accept() {
    if (!wrong_->demand()) return;
    const auto measuring = typed();
    const bool kept = session_.attempt([&] {
        store::Transaction transaction{session_.shop().connection};
        store::writeMeasuring(session_.shop().connection, *measuring);
        transaction.commit();
    });
    if (kept) QDialog::accept();
}

} // namespace riband::ui
