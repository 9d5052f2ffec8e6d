#include "ui/rack/scrap_dialog.h"

#include "core/measure/text.h"
#include "ui/desk/field_words.h"
#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr std::int64_t MostGrams = 1'000'000; // nothing on a rack weighs a ton
} // namespace

ScrapDialog::ScrapDialog(const store::StockPiece& piece, QWidget* parent)
    : QDialog{parent}, piece_{piece}, extent_{new QLineEdit{shownNumber(piece.extent)}}, note_{new QLineEdit},
      grams_{new QLineEdit}, reason_{new QComboBox}, wrong_{new FieldWords} {
    using store::ScrapReason;
    setWindowTitle(tr("Scrap %1").arg(text(piece.code)));
    setWhatsThis(tr("How much of the piece is thrown away, and why. What it weighs is kept for the recycler; "
                    "the rest of the piece stays on the rack."));
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
    buttons->button(QDialogButtonBox::Ok)->setText(tr("&Scrap"));
    connect(buttons, &QDialogButtonBox::accepted, this, &ScrapDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    wrong_->watch(*extent_, [this](const QString& typed) {
        return wrongExtent(typed, piece_.extent.unit(), piece_.extent);
    });
    wrong_->watch(*grams_, orEmpty([](const QString& typed) { return wrongWhole(typed, 1, MostGrams); }));
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(wrong_);
    column->addWidget(buttons);
    extent_->setFocus();
    extent_->selectAll();
}

void ScrapDialog::accept() {
    if (wrong_->demand()) QDialog::accept();
}

std::optional<std::int64_t> ScrapDialog::grams() const {
    bool whole = false;
    const qlonglong number = grams_->text().trimmed().toLongLong(&whole);
    if (!whole || number < 1) return std::nullopt;
    return number;
}

void ScrapDialog::suggest(store::ScrapReason reason) {
    reason_->setCurrentIndex(reason_->findData(static_cast<int>(reason)));
}

Extent ScrapDialog::extent() const {
    const auto read = readExtent(extent_->text().toStdString(), piece_.extent.unit());
    return read ? *read : piece_.extent;
}

store::ScrapReason ScrapDialog::reason() const {
    return static_cast<store::ScrapReason>(reason_->currentData().toInt());
}

std::string ScrapDialog::note() const { return note_->text().trimmed().toStdString(); }

} // namespace riband::ui
