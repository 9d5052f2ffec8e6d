#include "ui/shop/people_part.h"

#include "core/shop/people.h"
#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/shop/people_model.h"
#include "ui/shop/person_dialog.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

PeoplePart::PeoplePart(Session& session, QWidget* parent)
    : QWidget{parent}, session_{session}, model_{new PeopleModel{this}}, table_{new QTableView} {
    buildView();
    connect(table_, &QTableView::activated, this, &PeoplePart::change);
}

void PeoplePart::buildView() {
    table_->setModel(model_);
    table_->setAccessibleName(tr("People of the shop"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(pressHeight);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setStretchLastSection(true);
    const auto act = [this](const QString& name, const QKeySequence& key, void (PeoplePart::*does)()) {
        auto* action = new QAction{name, this};
        action->setShortcut(key);
        connect(action, &QAction::triggered, this, does);
        addAction(action);
        return action;
    };
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(new KeyButton{act(tr("New person"), Qt::CTRL | Qt::Key_N, &PeoplePart::add)});
    buttons->addWidget(new KeyButton{act(tr("Change the person"), Qt::Key_F2, &PeoplePart::change)});
    buttons->addStretch();
    auto* words = label(
        tr("A clerk sees Counter, Bench and Rack, a stock manager also Tally, an owner all with costs and "
           "margins. Ctrl+U changes who acts. What somebody did keeps the name for good."),
        "remark");
    words->setWordWrap(true);
    auto* column = new QVBoxLayout{this};
    column->addWidget(words);
    column->addWidget(table_, 1);
    column->addLayout(buttons);
}

void PeoplePart::refresh() {
    const int row = table_->currentIndex().row();
    session_.attempt([&] { model_->setPeople(store::People{session_.shop().connection}.all()); });
    if (model_->rowCount() > 0) table_->selectRow(std::clamp(row, 0, model_->rowCount() - 1));
}

void PeoplePart::add() { ask({store::PersonId{0}, {}, {}, store::Role::Clerk}, true); }

void PeoplePart::change() {
    if (table_->currentIndex().isValid()) ask(model_->person(table_->currentIndex().row()), false);
}

void PeoplePart::ask(store::Person person, bool isNew) {
    for (;;) {
        PersonDialog dialog{person, isNew, this};
        if (dialog.exec() != QDialog::Accepted) return;
        person = dialog.person();
        if (keep(person, isNew, dialog.number())) break;
    }
    refresh();
    if (person.id == session_.person().id) session_.actAs(person.id);
    session_.tell(tr("%1 is saved.").arg(text(person.initials)));
}

bool PeoplePart::keep(const store::Person& person, bool isNew, const std::optional<std::string>& number) {
    return session_.attempt([&] {
        if (isNew)
            shop::addPerson(session_.shop(), person, number);
        else
            shop::changePerson(session_.shop(), person, number);
    });
}

} // namespace riband::ui
