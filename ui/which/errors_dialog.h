#pragma once

#include "core/belt/identify/instruments.h"
#include "ui/desk/session.h"

#include <QDialog>

class QLineEdit;

namespace riband::ui {

class FieldWords;

/// How well the shop measures: the error of calliper, rule and tape, and what a worn belt adds. Kept in the
/// shop's settings, for all who measure here.
class ErrorsDialog final : public QDialog {
    Q_OBJECT
public:
    explicit ErrorsDialog(Session& session, QWidget* parent = nullptr);
    void accept() override;

private:
    QLineEdit* field(const QString& name, const char* object, double value);
    void showUsual();
    static QString wrongError(const QString& typed);
    std::optional<belt::identify::Instruments> typed() const;

    Session& session_;
    QLineEdit *calliper_, *rule_, *tape_, *worn_;
    FieldWords* wrong_;
};

} // namespace riband::ui
