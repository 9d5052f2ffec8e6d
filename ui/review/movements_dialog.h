#pragma once

#include "core/shop/reports/waste.h"
#include "ui/desk/session.h"

#include <QDialog>

namespace riband::ui {

/// The movements behind a figure, newest first. Throws StoreError if they can't be read.
class MovementsDialog final : public QDialog {
    Q_OBJECT
public:
    MovementsDialog(Session& session, const QString& name, const store::Behind& what, QWidget* parent);
};

} // namespace riband::ui
