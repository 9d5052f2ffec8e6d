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
      grams_{new QLineEdit}, reason_{new QComboBox} {
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
    row(tr("Wid&th or ribs (of %1)").arg(shown(piece.extent)), extent_, "extent");
    row(tr("&Reason"), reason_, "reason");
    row(tr("&Weight for recycling, grams"), grams_, "grams");
    row(tr("&Note"), note_, "note");
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    scrap_ = buttons->button(QDialogButtonBox::Ok);
    scrap_->setText(tr("&Scrap"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    for (QLineEdit* field : {extent_, grams_})
        connect(field, &QLineEdit::textChanged, this, &ScrapDialog::check);
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(buttons);
}

std::optional<Extent> ScrapDialog::typed() const {
    const auto read = readExtent(extent_->text().toStdString(), piece_.extent.unit());
    if (!read || read->isNone() || *read > piece_.extent) return std::nullopt;
    return *read;
}

void ScrapDialog::check() { scrap_->setEnabled(typed() && (grams_->text().trimmed().isEmpty() || grams())); }

std::optional<std::int64_t> ScrapDialog::grams() const {
    bool whole = false;
    const qlonglong number = grams_->text().trimmed().toLongLong(&whole);
    if (!whole || number < 1) return std::nullopt;
    return number;
}

void ScrapDialog::suggest(store::ScrapReason reason) {
    reason_->setCurrentIndex(reason_->findData(static_cast<int>(reason)));
}

Extent ScrapDialog::extent() const { return typed().value_or(piece_.extent); }

store::ScrapReason ScrapDialog::reason() const {
    return static_cast<store::ScrapReason>(reason_->currentData().toInt());
}

std::string ScrapDialog::note() const { return note_->text().trimmed().toStdString(); }

} // namespace riband::ui
