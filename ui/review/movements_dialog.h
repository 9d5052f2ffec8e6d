#pragma once

#include "core/shop/reports/basis.h"

#include <QDialog>

namespace riband::ui {

/// What stands behind a figure, line by line, and what it comes to: movements of width or, where others are
/// its making, pieces, order lines, decisions.
class MovementsDialog final : public QDialog {
    Q_OBJECT
public:
    /// `isFigure`: it has a value that the lines are to explain; else it is the name of a whole row.
    MovementsDialog(const QString& name, bool isFigure, shop::Basis basis, QWidget* parent);
};

} // namespace riband::ui
