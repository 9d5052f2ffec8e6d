#pragma once

#include "core/store/catalogue.h"
#include "ui/desk/session.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace riband::ui {

class Entry;
class TrialView;

/// What a belt costs, how its sleeves come, and which widths the shop usually sells of it.
class BeltDialog final : public QDialog {
    Q_OBJECT
public:
    BeltDialog(const store::StockedBelt& belt, Session& session, QWidget* parent = nullptr);
    store::StockedBelt belt() const;
    void accept() override;

private:
    void buildView();
    bool demandRight();
    Session& session_;
    store::StockedBelt belt_;
    Currency currency_;
    Entry *price_, *sleeve_, *cost_, *listed_;
    QLineEdit *body_, *cord_;
    QSpinBox* days_;
    QComboBox* preCut_;
    QLabel* wrong_;
    TrialView* trial_;
};

} // namespace riband::ui
