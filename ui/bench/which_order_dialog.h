#pragma once

#include "core/store/orders.h"

#include <QDialog>
#include <QStringList>

#include <optional>
#include <vector>

class QListWidget;

namespace riband::ui {

/// Which of the orders that are cut in one mounting is meant: a digit or Enter says it.
class WhichOrderDialog final : public QDialog {
    Q_OBJECT
public:
    struct Choice {
        store::OrderId order;
        QString code, customer;
        QStringList belts; ///< "2 × 15 mm"
    };
    explicit WhichOrderDialog(const std::vector<Choice>& orders, QWidget* parent = nullptr);
    /// The order that was chosen; nothing if none was.
    static std::optional<store::OrderId> ask(const std::vector<Choice>& orders, QWidget* parent);
    std::size_t chosen() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QListWidget* list_;
};

} // namespace riband::ui
