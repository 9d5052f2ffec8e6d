#include "ui/desk/unsaved.h"

#include <QCoreApplication>
#include <QMessageBox>
#include <QPushButton>

namespace riband::ui {

namespace {
struct Unsaved {
    Q_DECLARE_TR_FUNCTIONS(Unsaved)
};
} // namespace

bool mayThrowAway(QWidget& form, const QString& what) {
    QMessageBox ask{QMessageBox::Question, form.windowTitle(), what, QMessageBox::NoButton, &form};
    QPushButton* stay = ask.addButton(Unsaved::tr("&Go on here"), QMessageBox::RejectRole);
    QPushButton* away = ask.addButton(Unsaved::tr("&Throw away"), QMessageBox::DestructiveRole);
    ask.setDefaultButton(stay);
    ask.setEscapeButton(stay);
    ask.exec();
    return ask.clickedButton() == away;
}

} // namespace riband::ui
