#pragma once

#include "ui/desk/session.h"

#include <QDialog>

#include <optional>

class QListWidget;

namespace riband::ui {

/// The orders that were set aside or quoted, to take one up again.
class ParkedDialog final : public QDialog {
    Q_OBJECT
public:
    /// `last`: the one that was set aside last; it is marked.
    ParkedDialog(Session& session, std::optional<store::OrderId> last, QWidget* parent = nullptr);
    std::optional<store::OrderId> chosen() const;

private:
    void buildView();
    void fill(std::optional<store::OrderId> last);
    void saveShownList();
    Session& session_;
    QListWidget* list_;
    std::vector<store::Order> orders_;
};

} // namespace riband::ui
