#include "ui/rack/move_dialog.h"

#include "ui/words/tr.h"

#include <QCompleter>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace riband::ui {

MoveDialog::MoveDialog(const QString& piece, const std::string& place, const std::vector<std::string>& places,
                       QWidget* parent)
    : QDialog{parent}, place_{new QLineEdit{text(place)}} {
    setWindowTitle(tr("Move %1").arg(piece));
    QStringList known;
    for (const auto& name : places)
        known << text(name);
    place_->setCompleter(new QCompleter{known, place_});
    place_->setAccessibleName(tr("New place"));
    place_->setObjectName(QStringLiteral("place"));
    place_->selectAll();
    auto* form = new QFormLayout;
    form->addRow(tr("&New place"), place_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(buttons);
}

std::string MoveDialog::place() const { return place_->text().trimmed().toStdString(); }

} // namespace riband::ui
