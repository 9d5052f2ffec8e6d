#pragma once

#include "core/store/people.h"

#include <QDialog>

#include <optional>
#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;

namespace riband::ui {

/// Who acts from now on, or who approves: initials typed or chosen, and the number of who is locked. Closes
/// only when it is right or given up.
class WhoDialog final : public QDialog {
    Q_OBJECT
public:
    WhoDialog(store::Connection& connection, store::PersonId now, QWidget* parent = nullptr);
    /// Who approves what somebody else does: of this role or one above it.
    WhoDialog(store::Connection& connection, store::Role least, const QString& what,
              QWidget* parent = nullptr);
    store::PersonId person() const;

protected:
    void accept() override;

private:
    WhoDialog(store::Connection& connection, std::vector<store::Person> people, const QString& what,
              QWidget* parent);
    void buildView(const QString& what);
    void choose();
    const store::Person& chosen() const;
    store::Connection& connection_;
    std::vector<store::Person> people_;
    QListWidget* list_;
    QLineEdit* number_;
    QLabel* wrong_;
};

/// Who acts when the program starts: the one who did last on this computer, or who is chosen if that one is
/// locked; nothing if nobody was.
std::optional<store::PersonId> whoStarts(store::Connection& connection);
void rememberWhoActs(store::PersonId person);

} // namespace riband::ui
