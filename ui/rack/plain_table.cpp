#include "ui/rack/plain_table.h"

#include <QHeaderView>
#include <QTableWidget>

namespace riband::ui {

QTableWidget* plainTable(const QString& name, const QStringList& heads) {
    auto* table = new QTableWidget{0, static_cast<int>(heads.size())};
    table->setHorizontalHeaderLabels(heads);
    table->setAccessibleName(name);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setStretchLastSection(true);
    return table;
}

void addRow(QTableWidget& table, const QStringList& cells) {
    const int row = table.rowCount();
    table.insertRow(row);
    for (int column = 0; column < cells.size(); ++column) {
        auto* item = new QTableWidgetItem{cells[column]};
        const bool figure = column > 0 && !cells[column].isEmpty() && cells[column].front().isDigit();
        const Qt::Alignment side = Qt::Alignment{figure ? Qt::AlignRight : Qt::AlignLeft} | Qt::AlignVCenter;
        item->setTextAlignment(side);
        table.horizontalHeaderItem(column)->setTextAlignment(side);
        table.setItem(row, column, item);
    }
}

} // namespace riband::ui
