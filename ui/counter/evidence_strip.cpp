#include "ui/counter/evidence_strip.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"
#include "ui/words/tr.h"

#include <QCompleter>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QStringList>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr int fieldWidth = 150;

QStringList namesOf(const belt::Tables& tables) {
    QStringList names;
    for (const belt::Profile& profile : tables.profiles())
        names << text(profile.name);
    return names;
}

void mark(QLineEdit& field, bool right) {
    setSheetProperty(field, "wrong", right ? QStringLiteral("false") : QStringLiteral("true"));
}

} // namespace

EvidenceStrip::EvidenceStrip(const belt::Tables& tables, QWidget* parent)
    : QWidget{parent}, pulley_{new QLineEdit}, tape_{new QLineEdit}, fields_{new QWidget},
      bad_{label({}, "warn")}, good_{label({}, "ok")} {
    auto* completer = new QCompleter{namesOf(tables), pulley_};
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setCompletionMode(QCompleter::InlineCompletion);
    pulley_->setCompleter(completer);
    pulley_->setPlaceholderText(tr("profile, S8M"));
    pulley_->setAccessibleName(tr("Profile of the customer's pulley"));
    pulley_->setObjectName(QStringLiteral("pulley"));
    tape_->setPlaceholderText(tr("mm"));
    tape_->setAccessibleName(tr("Length of the old belt by tape, mm"));
    tape_->setObjectName(QStringLiteral("tape"));
    auto* row = new QHBoxLayout{fields_};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2 * step);
    for (const auto& [name, field] :
         {std::pair{tr("The p&ulley is"), pulley_}, {tr("Old belt by t&ape"), tape_}}) {
        auto* before = label(name);
        before->setBuddy(field);
        row->addWidget(before);
        field->setFixedWidth(fieldWidth);
        field->installEventFilter(this);
        connect(field, &QLineEdit::textChanged, this, [this] {
            if (!clearing_) emit changed();
        });
        row->addWidget(field);
        row->addSpacing(3 * step);
    }
    row->addStretch();
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step);
    column->addWidget(fields_);
    for (QLabel* words : {bad_, good_}) {
        words->setWordWrap(true);
        column->addWidget(words);
    }
    clear();
}

QString EvidenceStrip::pulley() const { return pulley_->text(); }
QString EvidenceStrip::tape() const { return tape_->text(); }

void EvidenceStrip::enter() {
    fields_->setVisible(true);
    setVisible(true);
    QLineEdit* field = pulley_->hasFocus() ? tape_ : pulley_;
    field->setFocus(Qt::ShortcutFocusReason);
    field->selectAll();
}

void EvidenceStrip::show(const Evidence& evidence, const std::vector<Evidence::Finding>& findings) {
    QStringList bad, good;
    for (const auto& each : findings)
        (each.kind == Evidence::Finding::Kind::Fits ? good : bad) << each.words;
    if (!evidence.pulleyIsKnown()) bad << evidence.pulleyFault();
    if (!evidence.tapeIsFigure()) bad << tr("%1 is no length in mm.").arg(tape().trimmed());
    mark(*pulley_, evidence.pulleyIsKnown());
    mark(*tape_, evidence.tapeIsFigure());
    bad_->setText(bad.join(QLatin1Char('\n')));
    bad_->setVisible(!bad.isEmpty());
    good_->setText(good.join(QLatin1Char('\n')));
    good_->setVisible(!good.isEmpty());
    const bool typed = !pulley().isEmpty() || !tape().isEmpty() || pulley_->hasFocus() || tape_->hasFocus();
    fields_->setVisible(typed);
    setVisible(typed || !findings.empty());
    setAccessibleDescription((bad + good).join(QLatin1Char(' ')));
}

void EvidenceStrip::clear() {
    const QScopedValueRollback quiet{clearing_, true};
    pulley_->clear();
    tape_->clear();
    for (QLabel* words : {bad_, good_})
        words->clear();
    setVisible(false);
}

bool EvidenceStrip::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape) {
            if (key == Qt::Key_Escape) static_cast<QLineEdit*>(watched)->clear();
            emit left();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace riband::ui
