#pragma once

#include "core/shop/order.h"
#include "ui/desk/session.h"

#include <QDialog>

class QAction;
class QLabel;
class QTableView;

namespace riband::ui {

class OrderLinesModel;
class PaymentAction;

/// A booked order: change a line, cancel, plan what is missing, hand over.
class OrderDialog final : public QDialog {
    Q_OBJECT
public:
    OrderDialog(Session& session, store::OrderId order, QWidget* parent = nullptr);

private:
    void buildActions();
    QAction* act(const QString& name, const QKeySequence& key, void (OrderDialog::*does)());
    void buildView();
    void refresh();
    void enableActions();
    bool missesBelts() const;
    void did(const QString& words);

    void handOver();
    void takeUp();
    void changeLine();
    void tellChanged(const shop::Ordered& done);
    QString objection(const store::OrderLine& line, Extent extent, std::int64_t quantity);
    void planMissing();
    void printTicket();
    void printOrder();
    void cancelOrder();
    std::optional<store::TicketId> lastTicket() const;

    Session& session_;
    store::OrderId id_;
    std::optional<store::Order> order_;
    OrderLinesModel* lines_;
    QTableView* table_;
    QLabel *title_, *state_, *note_;
    PaymentAction* paid_ = nullptr;
    QAction *takeUp_ = nullptr, *handOver_ = nullptr, *change_ = nullptr, *missing_ = nullptr,
            *ticket_ = nullptr, *paper_ = nullptr, *cancel_ = nullptr;
};

} // namespace riband::ui
