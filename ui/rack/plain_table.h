#pragma once

#include <QStringList>

class QTableWidget;

namespace riband::ui {

/// A list of whole rows that is read, not edited, with these heads.
QTableWidget* plainTable(const QString& name, const QStringList& heads);
/// Figures stand at the right.
void addRow(QTableWidget& table, const QStringList& cells);

} // namespace riband::ui
