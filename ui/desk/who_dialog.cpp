#include "ui/desk/who_dialog.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QSettings>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

namespace {

const QString lastPerson = QStringLiteral("lastPerson");

QString lineOf(const store::Person& person) {
    return WhoDialog::tr("%1   %2, %3").arg(text(person.initials), text(person.name), say(person.role));
}

std::vector<store::Person> presentFrom(store::Connection& connection, store::Role least) {
    std::vector<store::Person> people = store::People{connection}.present();
    std::erase_if(people, [least](const store::Person& person) { return person.role < least; });
    return people;
}

} // namespace

WhoDialog::WhoDialog(store::Connection& connection, std::vector<store::Person> people, const QString& what,
                     QWidget* parent)
    : QDialog{parent}, connection_{connection}, people_{std::move(people)}, list_{new QListWidget},
      number_{new QLineEdit}, wrong_{label({}, "danger")} {
    setMinimumWidth(420);
    buildView(what);
}

WhoDialog::WhoDialog(store::Connection& connection, store::PersonId now, QWidget* parent)
    : WhoDialog{connection, store::People{connection}.present(), QString{}, parent} {
    setWindowTitle(tr("Who acts?"));
    setWhatsThis(tr("Type the initials or choose them; who has a number is asked for it. All that is booked "
                    "from then on carries this name, and stock, cost and figures are shown to those whose "
                    "work they are."));
    for (std::size_t row = 0; row < people_.size(); ++row)
        if (people_[row].id == now) list_->setCurrentRow(static_cast<int>(row));
    choose();
}

WhoDialog::WhoDialog(store::Connection& connection, store::Role least, const QString& what, QWidget* parent)
    : WhoDialog{connection, presentFrom(connection, least), what, parent} {
    setWindowTitle(tr("Who approves?"));
    setWhatsThis(tr("Type the initials of who approves, or choose them; who has a number is asked for it. It "
                    "is kept with what is booked. Whoever acted goes on acting."));
    choose();
}

void WhoDialog::buildView(const QString& what) {
    list_->setAccessibleName(tr("People of the shop; type the initials"));
    list_->setObjectName(QStringLiteral("people"));
    for (const store::Person& person : people_) {
        list_->addItem(lineOf(person));
        list_->item(list_->count() - 1)->setSizeHint({0, pressHeight});
    }
    list_->setCurrentRow(0);
    number_->setAccessibleName(tr("Number"));
    number_->setObjectName(QStringLiteral("number"));
    number_->setEchoMode(QLineEdit::Password);
    wrong_->hide();
    auto* form = new QFormLayout;
    form->addRow(tr("&Number"), number_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    connect(buttons, &QDialogButtonBox::accepted, this, &WhoDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(list_, &QListWidget::currentRowChanged, this, &WhoDialog::choose);
    connect(list_, &QListWidget::itemDoubleClicked, this, &WhoDialog::accept);
    auto* column = new QVBoxLayout{this};
    if (!what.isEmpty()) {
        auto* said = label(what);
        said->setWordWrap(true);
        column->addWidget(said);
    }
    column->addWidget(list_);
    column->addLayout(form);
    column->addWidget(wrong_);
    column->addWidget(buttons);
}

const store::Person& WhoDialog::chosen() const {
    return people_.at(static_cast<std::size_t>(list_->currentRow()));
}

store::PersonId WhoDialog::person() const { return chosen().id; }

void WhoDialog::choose() {
    const bool locked = list_->currentRow() >= 0 && chosen().locked;
    number_->setEnabled(locked);
    number_->clear();
    number_->setPlaceholderText(locked ? QString{} : tr("not locked"));
    wrong_->hide();
}

void WhoDialog::accept() {
    if (list_->currentRow() < 0) return;
    if (store::People{connection_}.unlocks(chosen().id, number_->text().toStdString())) {
        QDialog::accept();
        return;
    }
    wrong_->setText(number_->text().isEmpty()
                        ? tr("Type the number of %1.").arg(text(chosen().initials))
                        : tr("That is not the number of %1.").arg(text(chosen().initials)));
    wrong_->show();
    number_->clear();
    number_->setFocus();
}

std::optional<store::PersonId> whoStarts(store::Connection& connection) {
    const auto people = store::People{connection}.present();
    const qlonglong last = QSettings{}.value(lastPerson, -1).toLongLong();
    auto who = std::find_if(people.begin(), people.end(),
                            [&](const store::Person& person) { return person.id.value() == last; });
    if (who == people.end()) who = people.begin();
    if (!who->locked) return who->id;
    WhoDialog dialog{connection, who->id};
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return dialog.person();
}

void rememberWhoActs(store::PersonId person) {
    QSettings{}.setValue(lastPerson, static_cast<qlonglong>(person.value()));
}

} // namespace riband::ui
