#include "ui/counter/customer_dialog.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCompleter>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QStringListModel>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr std::size_t MostNames = 8;

/// Until the end of a day; a time of day is a remark.
std::optional<Moment> dueOn(const QString& typed) {
    const auto day = readDate(typed.trimmed().toStdString());
    if (!day) return std::nullopt;
    return Moment{*day} + std::chrono::hours{17};
}

} // namespace

CustomerDialog::CustomerDialog(Session& session, const OrderInHand& hand, QWidget* parent)
    : QDialog{parent}, session_{session}, name_{new QLineEdit}, phone_{new QLineEdit}, due_{new QLineEdit},
      note_{new QLineEdit}, names_{new QStringListModel{this}} {
    setWindowTitle(tr("Customer"));
    setMinimumWidth(480);
    buildView(hand);
    connect(name_, &QLineEdit::textEdited, this, &CustomerDialog::lookUp);
}

void CustomerDialog::buildView(const OrderInHand& hand) {
    name_->setText(text(hand.customer));
    phone_->setText(text(hand.phone));
    note_->setText(text(hand.note));
    if (hand.due) due_->setText(text(printDate(dayOf(*hand.due))));
    name_->setPlaceholderText(tr("empty: walk-in"));
    due_->setPlaceholderText(tr("day, for example %1").arg(text(printDate(session_.today()))));
    auto* completer = new QCompleter{names_, this};
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    name_->setCompleter(completer);
    connect(completer, qOverload<const QString&>(&QCompleter::activated), this, [this](const QString& name) {
        for (const auto& customer : found_)
            if (text(customer.name) == name) phone_->setText(text(customer.phone));
    });
    auto* form = new QFormLayout;
    const auto row = [&](const QString& name, QLineEdit* edit) {
        edit->setAccessibleName(QString{name}.remove('&'));
        form->addRow(name, edit);
    };
    row(tr("&Name"), name_);
    row(tr("&Phone"), phone_);
    row(tr("&Wanted by"), due_);
    row(tr("N&ote"), note_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(due_, &QLineEdit::textChanged, this, [this, buttons](const QString& typed) {
        buttons->button(QDialogButtonBox::Ok)->setEnabled(typed.trimmed().isEmpty() || dueOn(typed));
    });
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(buttons);
}

void CustomerDialog::lookUp(const QString& typed) {
    if (typed.trimmed().isEmpty()) return;
    session_.attempt([&] {
        found_ =
            store::Orders{session_.shop().connection}.customersLike(typed.trimmed().toStdString(), MostNames);
    });
    QStringList names;
    for (const auto& customer : found_)
        names << text(customer.name);
    names_->setStringList(names);
}

void CustomerDialog::writeTo(OrderInHand& hand) const {
    hand.customer = name_->text().trimmed().toStdString();
    hand.phone = phone_->text().trimmed().toStdString();
    hand.note = note_->text().trimmed().toStdString();
    hand.due = dueOn(due_->text());
}

} // namespace riband::ui
