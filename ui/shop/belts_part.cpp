#include "ui/shop/belts_part.h"

#include "ui/desk/labels.h"
#include "ui/desk/list_file.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/shop/belt_dialog.h"
#include "ui/shop/belts_model.h"
#include "ui/words/tr.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

BeltsPart::BeltsPart(Session& session, QWidget* parent)
    : QWidget{parent}, session_{session}, model_{new BeltsModel{this}},
      filter_{new QSortFilterProxyModel{this}}, words_{new QLineEdit}, table_{new QTableView} {
    filter_->setSourceModel(model_);
    filter_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    buildView();
    connect(words_, &QLineEdit::textChanged, filter_, &QSortFilterProxyModel::setFilterFixedString);
    connect(table_, &QTableView::activated, this, &BeltsPart::changeBelt);
}

void BeltsPart::buildView() {
    words_->setPlaceholderText(tr("find a belt"));
    words_->setAccessibleName(tr("Find a belt"));
    table_->setModel(filter_);
    table_->setAccessibleName(tr("Belts of the shop"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(pressHeight);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setStretchLastSection(true);
    auto* change = new QAction{tr("Change the belt"), this};
    change->setShortcut(Qt::Key_F2);
    connect(change, &QAction::triggered, this, &BeltsPart::changeBelt);
    addAction(change);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(new KeyButton{change});
    auto* save = new QAction{tr("Save the list"), this};
    save->setShortcut(Qt::CTRL | Qt::Key_E);
    connect(save, &QAction::triggered, this, &BeltsPart::save);
    addAction(save);
    buttons->addWidget(new KeyButton{save});
    buttons->addWidget(label(tr("A belt that is new comes in with its first goods, on the Rack."), "remark"),
                       1);
    auto* column = new QVBoxLayout{this};
    column->addWidget(words_);
    column->addWidget(table_, 1);
    column->addLayout(buttons);
}

void BeltsPart::refresh() {
    const int row = table_->currentIndex().row();
    session_.attempt(
        [&] { model_->setBelts(store::Catalogue{session_.shop().connection}.all(), session_.currency()); });
    if (filter_->rowCount() > 0) table_->selectRow(std::clamp(row, 0, filter_->rowCount() - 1));
}

void BeltsPart::save() {
    session_.attempt([&] {
        session_.tell(tr("The list is in %1.").arg(saveList(session_, *filter_, QStringLiteral("belts"))));
    });
}

void BeltsPart::changeBelt() {
    const QModelIndex at = filter_->mapToSource(table_->currentIndex());
    if (!at.isValid()) return;
    BeltDialog dialog{model_->belt(at.row()), session_, this};
    if (dialog.exec() != QDialog::Accepted) return;
    const store::StockedBelt belt = dialog.belt();
    const bool done = session_.attempt([&] {
        store::Connection& connection = session_.shop().connection;
        store::Transaction transaction{connection};
        store::Catalogue{connection}.change(belt);
        transaction.commit();
    });
    if (!done) return;
    model_->change(at.row(), belt);
    session_.tell(tr("%1 is changed.").arg(text(belt.designation)));
}

} // namespace riband::ui
