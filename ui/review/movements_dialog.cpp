#include "ui/review/movements_dialog.h"

#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/review/report_table_model.h"

#include <QHeaderView>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

QTableView* tableOf(shop::ReportTable lines, QObject* owner) {
    auto* model = new ReportTableModel{owner};
    model->setTable(std::move(lines));
    auto* table = new QTableView;
    table->setModel(model);
    table->setAccessibleName(MovementsDialog::tr("What stands behind the figure"));
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setShowGrid(false);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setStretchLastSection(true);
    table->horizontalHeader()->setHighlightSections(false);
    table->resizeColumnsToContents();
    if (model->rowCount() > 0) table->setCurrentIndex(model->index(0, 0));
    return table;
}

} // namespace

MovementsDialog::MovementsDialog(const QString& name, bool isFigure, shop::Basis basis, QWidget* parent)
    : QDialog{parent} {
    setWindowTitle(tr("Behind %1").arg(name));
    setWhatsThis(tr("What the figure is made of, newest first: movements of width with who acted, or pieces, "
                    "order lines, decisions. What they come to together is the figure."));
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(5 * step, 5 * step, 5 * step, 5 * step);
    column->addWidget(label(tr("What stands behind %1").arg(name), "head"));
    const auto shown = static_cast<std::int64_t>(basis.lines.rows.size());
    column->addWidget(tableOf(std::move(basis.lines), this), 1);
    if (shown < basis.all)
        column->addWidget(label(
            tr("The newest %1 of %2 are shown; the sum is of all.").arg(shown).arg(basis.all), "remark"));
    if (!basis.sum.empty())
        column->addWidget(label(tr("Together: %1", "sum with its unit")
                                    .arg(ReportTableModel::localFigure(basis.sum) + QLatin1Char(' ') +
                                         QString::fromStdString(basis.unit))
                                    .trimmed(),
                                "strong"));
    else if (isFigure)
        column->addWidget(label(tr("The figure is reckoned from these; it is not their sum."), "remark"));
    auto* close = new KeyButton{tr("Close"), Qt::Key_Escape};
    connect(close, &KeyButton::clicked, this, &QDialog::accept);
    column->addWidget(close);
    resize(1060, 560);
}

} // namespace riband::ui
