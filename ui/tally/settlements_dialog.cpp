#include "ui/tally/settlements_dialog.h"

#include "ui/desk/labels.h"
#include "ui/desk/list_file.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/tally/settlements_model.h"
#include "ui/words/count_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

SettlementsDialog::SettlementsDialog(Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, model_{new SettlementsModel{session, this}}, table_{new QTableView},
      why_{label({}, "remark")}, done_{label({}, "warn")}, takeBack_{act(tr("Take back"), Qt::Key_F6,
                                                                         &SettlementsDialog::takeBack)},
      save_{act(tr("Save the list"), Qt::CTRL | Qt::Key_E, &SettlementsDialog::saveShownList)} {
    setWindowTitle(tr("Settled differences"));
    setWhatsThis(
        tr("Every difference that was settled, newest first. A settlement is never changed: F6 takes "
           "the marked one back by a counter-entry that names it, and its difference is open again. "
           "Below the list it says why one can't be taken back."));
    buildView();
    resize(1060, 560);
    refresh();
}

QAction* SettlementsDialog::act(const QString& name, const QKeySequence& key,
                                void (SettlementsDialog::*does)()) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

void SettlementsDialog::buildView() {
    table_->setModel(model_);
    table_->setAccessibleName(windowTitle());
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->horizontalHeader()->setResizeContentsPrecision(100); // rows that are looked at for their width
    table_->setTabKeyNavigation(false);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &SettlementsDialog::showMarked);
    why_->setWordWrap(true);
    done_->setWordWrap(true);
    done_->hide();
    auto* close = new KeyButton{tr("Close"), Qt::Key_Escape};
    connect(close, &KeyButton::clicked, this, &QDialog::accept);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(2 * step);
    buttons->addWidget(close, 1);
    buttons->addWidget(new KeyButton{save_}, 1);
    buttons->addWidget(new KeyButton{takeBack_}, 1);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(3 * step);
    column->addWidget(table_, 1);
    column->addWidget(done_);
    column->addWidget(why_);
    column->addLayout(buttons);
}

void SettlementsDialog::refresh() {
    const int row = std::max(0, table_->currentIndex().row());
    session_.attempt([this] { model_->read(); });
    for (int column = 0; column < model_->columnCount(); ++column)
        table_->resizeColumnToContents(column);
    if (model_->rowCount() > 0) table_->selectRow(std::min(row, model_->rowCount() - 1));
    table_->setFocus();
    showMarked();
}

void SettlementsDialog::showMarked() {
    const QModelIndex marked = table_->currentIndex();
    std::optional<shop::Refusal> why;
    const bool known = marked.isValid() && session_.attempt([&] {
        why = shop::whyNotCountered(session_.shop(), model_->settlement(marked.row()));
    });
    takeBack_->setEnabled(known && !why);
    why_->setText(!marked.isValid() ? tr("Nothing was settled yet.")
                  : why             ? whyItStands(*why)
                                    : tr("F6 takes the marked one back by a counter-entry."));
}

void SettlementsDialog::takeBack() {
    const QModelIndex marked = table_->currentIndex();
    if (!marked.isValid()) return;
    const store::SettlementId settlement = model_->settlement(marked.row());
    std::optional<shop::Countered> countered;
    if (session_.attempt([&] { countered = shop::counterSettlement(session_.shop(), settlement); })) {
        follow(*countered);
        session_.touch();
    }
    refresh();
}

/// What has to be done now, said in the dialog too: its own words would else hide behind it.
void SettlementsDialog::follow(const shop::Countered& countered) {
    QStringList said{tr("Taken back by a counter-entry; the difference is open again.")};
    if (!countered.stayVoid.empty()) {
        QStringList codes;
        for (const std::string& code : countered.stayVoid)
            codes << text(code);
        said << tr("%1 stays void, and belts of it are on no ticket: plan them again (Bench, Orders at work, "
                   "F5).",
                   "tickets")
                    .arg(codes.join(QStringLiteral(", ")));
    }
    if (!countered.voided.empty())
        said << tr(
            "Tickets of the piece can't be cut any more: plan them again (Bench, Orders at work, F5).");
    const QString words = said.join(QLatin1Char(' '));
    done_->setText(words);
    done_->show();
    said.size() > 1 ? session_.warn(words) : session_.tell(words);
}

void SettlementsDialog::saveShownList() {
    session_.attempt([&] {
        session_.tell(tr("The list is in %1.").arg(saveList(session_, *model_, QStringLiteral("settled"))));
    });
}

} // namespace riband::ui
