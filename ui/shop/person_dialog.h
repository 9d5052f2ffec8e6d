#pragma once

#include "core/store/people.h"

#include <QDialog>

#include <optional>
#include <string>

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace riband::ui {

/// One person: initials, name, role, lock.
class PersonDialog final : public QDialog {
    Q_OBJECT
public:
    PersonDialog(const store::Person& person, bool isNew, QWidget* parent = nullptr);
    store::Person person() const;
    /// The number to lock with, "" for none; nothing if the lock stays as it is.
    std::optional<std::string> number() const;

private:
    void buildView(bool isNew);
    store::Person person_;
    QLineEdit *initials_, *name_, *number_;
    QComboBox* role_;
    QCheckBox *unlock_, *gone_;
};

} // namespace riband::ui
