#pragma once

#include "ui/counter/order_in_hand.h"
#include "ui/desk/session.h"

#include <QDialog>

class QLineEdit;
class QStringListModel;

namespace riband::ui {

class FieldWords;

/// Who the order is for, and what to note on it.
class CustomerDialog final : public QDialog {
    Q_OBJECT
public:
    CustomerDialog(Session& session, const OrderInHand& hand, QWidget* parent = nullptr);
    /// Puts the answer on the order.
    void writeTo(OrderInHand& hand) const;

private:
    void buildView(const OrderInHand& hand);
    void lookUp(const QString& typed);
    void finish();
    Session& session_;
    QLineEdit *name_, *phone_, *due_, *note_;
    FieldWords* words_;
    QStringListModel* names_;
    std::vector<store::Customer> found_;
};

} // namespace riband::ui
