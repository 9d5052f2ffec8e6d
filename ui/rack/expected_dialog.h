#pragma once

#include "core/shop/expected.h"
#include "ui/desk/session.h"

#include <QDialog>

class QLabel;
class QTableWidget;

namespace riband::ui {

class KeyButton;

/// The deliveries that are expected: what is due when and from whom; a new one, a change, the end of one.
class ExpectedDialog final : public QDialog {
    Q_OBJECT
public:
    explicit ExpectedDialog(Session& session, QWidget* parent = nullptr);

private:
    void buildView();
    void look();
    void add();
    void change();
    void drop();
    void save();
    const store::ExpectedDelivery* current() const;

    Session& session_;
    std::vector<store::ExpectedDelivery> expected_;
    QTableWidget* table_;
    QLabel *sum_, *said_;
    KeyButton *change_ = nullptr, *drop_ = nullptr;
};

} // namespace riband::ui
