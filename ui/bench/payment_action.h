#pragma once

#include "core/store/takings.h"

#include <QAction>

namespace riband::ui {

/// How the customer pays: says it, and each press takes the next kind. Cash at first.
class PaymentAction final : public QAction {
    Q_OBJECT
public:
    explicit PaymentAction(QObject* parent);
    store::Payment kind() const { return kind_; }

private:
    void take(store::Payment kind);
    store::Payment kind_ = store::Payment::Cash;
};

} // namespace riband::ui
