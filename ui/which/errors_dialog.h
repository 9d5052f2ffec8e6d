#pragma once

#include "core/belt/identify/instruments.h"
#include "ui/desk/session.h"

#include <QDialog>

class QDialogButtonBox;
class QLineEdit;

namespace riband::ui {

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
    void check();
    std::optional<belt::identify::Instruments> typed() const;

    Session& session_;
    QLineEdit *calliper_, *rule_, *tape_, *worn_;
    QDialogButtonBox* buttons_;
};

} // namespace riband::ui
