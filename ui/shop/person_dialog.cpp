#include "ui/shop/person_dialog.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr auto roles = {store::Role::Clerk, store::Role::StockManager, store::Role::Owner};
} // namespace

PersonDialog::PersonDialog(const store::Person& person, bool isNew, QWidget* parent)
    : QDialog{parent}, person_{person}, initials_{new QLineEdit{text(person.initials)}},
      name_{new QLineEdit{text(person.name)}}, number_{new QLineEdit}, role_{new QComboBox},
      unlock_{new QCheckBox{tr("&Unlock: ask for no number")}}, gone_{
                                                                    new QCheckBox{tr("Has &left the shop")}} {
    setWindowTitle(isNew ? tr("New person") : text(person.initials));
    setWhatsThis(tr("Initials, name, and what the person does here. A clerk sees no cost; a stock manager "
                    "books, counts and scraps; the owner sees everything. A lock is a number that is asked "
                    "for."));
    setMinimumWidth(440);
    buildView(isNew);
}

void PersonDialog::buildView(bool isNew) {
    initials_->setMaxLength(4);
    initials_->selectAll();
    initials_->setAccessibleName(tr("Initials"));
    initials_->setObjectName(QStringLiteral("initials"));
    name_->setAccessibleName(tr("Name"));
    number_->setAccessibleName(tr("Number to lock with"));
    number_->setObjectName(QStringLiteral("number"));
    number_->setEchoMode(QLineEdit::Password);
    number_->setPlaceholderText(person_.locked ? tr("locked; type to change") : tr("not locked"));
    role_->setAccessibleName(tr("Role"));
    for (const store::Role role : roles)
        role_->addItem(say(role), static_cast<int>(role));
    role_->setCurrentIndex(static_cast<int>(person_.role));
    gone_->setChecked(person_.gone);
    unlock_->setVisible(person_.locked);
    gone_->setVisible(!isNew);
    auto* form = new QFormLayout;
    form->addRow(tr("&Initials"), initials_);
    form->addRow(tr("&Name"), name_);
    form->addRow(tr("&Role"), role_);
    form->addRow(tr("Number, 4 to 12 &digits"), number_);
    form->addRow({}, unlock_);
    form->addRow({}, gone_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Save | QDialogButtonBox::Cancel};
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(buttons);
}

store::Person PersonDialog::person() const {
    store::Person made = person_;
    made.initials = initials_->text().trimmed().toStdString();
    made.name = name_->text().trimmed().toStdString();
    made.role = static_cast<store::Role>(role_->currentData().toInt());
    made.gone = gone_->isChecked();
    return made;
}

std::optional<std::string> PersonDialog::number() const {
    if (unlock_->isChecked()) return std::string{};
    if (number_->text().isEmpty()) return std::nullopt;
    return number_->text().toStdString();
}

} // namespace riband::ui
