#pragma once

#include "ui/desk/session.h"

#include <QDialog>

class QAction;
class QTableView;

namespace riband::ui {

class OrdersModel;
class PaymentAction;

/// The orders at work: ready ones to hand over, waiting ones to look after; several to cut together.
class OrdersDialog final : public QDialog {
    Q_OBJECT
public:
    explicit OrdersDialog(Session& session, QWidget* parent = nullptr);

private:
    void buildActions();
    QAction* act(const QString& name, const QKeySequence& key, void (OrdersDialog::*does)());
    void buildView();
    void refresh();
    void enableActions();
    std::vector<store::OrderId> chosen(store::OrderState state) const;

    void openOrder();
    void handOver();
    void cutTogether();
    void saveShownList();

    Session& session_;
    OrdersModel* model_;
    QTableView* table_;
    PaymentAction* paid_ = nullptr;
    QAction *open_ = nullptr, *handOver_ = nullptr, *together_ = nullptr, *save_ = nullptr;
};

} // namespace riband::ui
