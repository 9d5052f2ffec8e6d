#include "ui/review/movements_dialog.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/words/report_words.h"
#include "ui/words/words.h"

#include <QHeaderView>
#include <QTableWidget>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr std::size_t most = 500;

QString goes(const store::Movement& movement, Unit unit) {
    QStringList parts;
    for (const store::Posting& posting : movement.postings()) {
        if (posting.amount == 0) continue;
        const std::int64_t size = posting.amount < 0 ? -posting.amount : posting.amount;
        QString part = say(posting.account) +
                       (posting.amount < 0 ? QStringLiteral(" −") : QStringLiteral(" +")) +
                       shown(Extent::of(unit, size));
        if (posting.reason) part += QStringLiteral(" (%1)").arg(say(*posting.reason));
        parts << part;
    }
    return parts.join(QStringLiteral(", "));
}

} // namespace

MovementsDialog::MovementsDialog(Session& session, const QString& name, const store::Behind& what,
                                 QWidget* parent)
    : QDialog{parent} {
    const auto movements = shop::behind(session.shop(), what, most);
    const store::Catalogue catalogue{session.shop().connection};
    const store::People people{session.shop().connection};
    setWindowTitle(tr("Behind %1").arg(name));
    setWhatsThis(tr("Every movement of width behind the figure, newest first, with the piece, the order and "
                    "who acted. Their sum is the figure."));
    auto* table = new QTableWidget{static_cast<int>(movements.size()), 5};
    table->setHorizontalHeaderLabels({tr("Day"), tr("What"), tr("Person"), tr("Belt"), tr("From and to")});
    table->setAccessibleName(tr("Movements"));
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setShowGrid(false);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setStretchLastSection(true);
    for (int row = 0; row < table->rowCount(); ++row) {
        const store::Movement& movement = movements[static_cast<std::size_t>(row)].movement;
        const auto belt = catalogue.at(movement.about().belt);
        const QString cells[] = {shown(dayOf(movement.about().at)), say(movement),
                                 QString::fromStdString(people.at(movement.about().person).initials),
                                 QString::fromStdString(belt.designation), goes(movement, belt.unit)};
        for (int column = 0; column < 5; ++column)
            table->setItem(row, column, new QTableWidgetItem{cells[column]});
    }
    table->resizeColumnsToContents();
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(5 * step, 5 * step, 5 * step, 5 * step);
    column->addWidget(label(tr("The movements behind %1, newest first").arg(name), "head"));
    column->addWidget(table, 1);
    if (movements.size() == most)
        column->addWidget(label(tr("Only the newest %1 are shown.").arg(most), "remark"));
    else if (const auto sum = shop::sumOf(movements, what); sum && what.unit)
        column->addWidget(label(tr("Together: %1").arg(shownSum(*what.unit, *sum)), "strong"));
    auto* close = new KeyButton{tr("Close"), Qt::Key_Escape};
    connect(close, &KeyButton::clicked, this, &QDialog::accept);
    column->addWidget(close);
    resize(980, 560);
}

} // namespace riband::ui
