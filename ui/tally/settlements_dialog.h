#pragma once

#include "core/shop/counting/settle.h"
#include "ui/desk/session.h"

#include <QDialog>

class QAction;
class QLabel;
class QTableView;

namespace riband::ui {

class SettlementsModel;

/// What was settled, newest first. Nothing of it can be changed; what can be is countered, and of what can't
/// be it says why.
class SettlementsDialog final : public QDialog {
    Q_OBJECT
public:
    explicit SettlementsDialog(Session& session, QWidget* parent = nullptr);

private:
    QAction* act(const QString& name, const QKeySequence& key, void (SettlementsDialog::*does)());
    void buildView();
    void refresh();
    void showMarked();
    void takeBack();
    void follow(const shop::Countered& countered);
    void saveShownList();

    Session& session_;
    SettlementsModel* model_;
    QTableView* table_;
    QLabel *why_, *done_;
    QAction *takeBack_, *save_;
};

} // namespace riband::ui
