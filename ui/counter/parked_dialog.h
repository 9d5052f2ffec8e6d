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
    explicit ParkedDialog(Session& session, QWidget* parent = nullptr);
    std::optional<store::Order> chosen() const;

private:
    void buildView();
    void fill();
    void saveShownList();
    Session& session_;
    QListWidget* list_;
    std::vector<store::Order> orders_;
};

} // namespace riband::ui
