#include "ui/rack/scrap_dialog.h"

#include "core/measure/text.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace riband::ui {

ScrapDialog::ScrapDialog(const store::StockPiece& piece, QWidget* parent)
    : QDialog{parent}, piece_{piece}, extent_{new QLineEdit{shownNumber(piece.extent)}}, note_{new QLineEdit},
      reason_{new QComboBox} {
    using store::ScrapReason;
    setWindowTitle(tr("Scrap %1").arg(text(piece.code)));
    for (const auto reason :
         {ScrapReason::Damaged, ScrapReason::Aged, ScrapReason::Stub, ScrapReason::Miscut})
        reason_->addItem(say(reason), static_cast<int>(reason));
    auto* form = new QFormLayout;
    const auto row = [&](const QString& name, QWidget* field, const char* object) {
        field->setAccessibleName(QString{name}.remove('&'));
        field->setObjectName(QString::fromLatin1(object));
        form->addRow(name, field);
    };
    row(tr("&Width or ribs (of %1)").arg(shown(piece.extent)), extent_, "extent");
    row(tr("&Reason"), reason_, "reason");
    row(tr("&Note"), note_, "note");
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    scrap_ = buttons->button(QDialogButtonBox::Ok);
    scrap_->setText(tr("&Scrap"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(extent_, &QLineEdit::textChanged, this, [this] { scrap_->setEnabled(typed().has_value()); });
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(buttons);
}

std::optional<Extent> ScrapDialog::typed() const {
    const auto read = readExtent(extent_->text().toStdString(), piece_.extent.unit());
    if (!read || read->isNone() || *read > piece_.extent) return std::nullopt;
    return *read;
}

Extent ScrapDialog::extent() const { return typed().value_or(piece_.extent); }

store::ScrapReason ScrapDialog::reason() const {
    return static_cast<store::ScrapReason>(reason_->currentData().toInt());
}

std::string ScrapDialog::note() const { return note_->text().trimmed().toStdString(); }

} // namespace riband::ui
