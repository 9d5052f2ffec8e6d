#include "ui/bench/payment_action.h"

#include "ui/words/report_words.h"

namespace riband::ui {

PaymentAction::PaymentAction(QObject* parent) : QAction{parent} {
    setShortcut(Qt::Key_F7);
    take(store::Payment::Cash);
    connect(this, &QAction::triggered, this, [this] {
        take(kind_ == store::Payment::Invoice
                 ? store::Payment::Cash
                 : static_cast<store::Payment>(static_cast<std::uint8_t>(kind_) + 1));
    });
}

void PaymentAction::take(store::Payment kind) {
    kind_ = kind;
    setText(tr("Paid: %1").arg(say(kind)));
}

} // namespace riband::ui
