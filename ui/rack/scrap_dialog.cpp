#include "ui/rack/scrap_dialog.h"

#include "core/measure/text.h"
#include "ui/desk/field_words.h"
#include "ui/desk/labels.h"
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

ScrapDialog::ScrapDialog(const store::StockPiece& piece, const shop::Spare& spare, QWidget* parent)
    : QDialog{parent}, piece_{piece}, spare_{spare}, extent_{new QLineEdit{shownNumber(spare.most)}},
      note_{new QLineEdit}, grams_{new QLineEdit}, reason_{new QComboBox}, wrong_{new FieldWords} {
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
    wrong_->watch(*extent_, [this](const QString& typed) { return wrongWidth(typed); });
    wrong_->watch(*grams_, orEmpty([](const QString& typed) { return wrongWhole(typed, 1, MostGrams); }));
    auto* held = label(needed(), "warn");
    held->setObjectName(QStringLiteral("held"));
    held->setWordWrap(true);
    held->setVisible(!held->text().isEmpty());
    auto* column = new QVBoxLayout{this};
    column->addWidget(held);
    column->addLayout(form);
    column->addWidget(wrong_);
    column->addWidget(buttons);
    extent_->setFocus();
    extent_->selectAll();
    if (!spare_.most.isNone()) return;
    for (QWidget* each : std::initializer_list<QWidget*>{extent_, reason_, grams_, note_,
                                                         buttons->button(QDialogButtonBox::Ok)})
        each->setEnabled(false);
    buttons->button(QDialogButtonBox::Cancel)->setFocus();
}

/// What open tickets need of the piece, said before anything is typed.
QString ScrapDialog::needed() const {
    if (spare_.tickets.empty()) return {};
    const QString code = text(piece_.code), tickets = text(spare_.tickets);
    if (spare_.most.isNone())
        return tr("%1 is promised to %2, and nothing of it is free to be scrapped. Cut that first, or plan "
                  "it "
                  "from another piece (Bench).")
            .arg(code, tickets);
    return tr("%1 needs a part of %2: at most %3 can be scrapped.").arg(tickets, code, shown(spare_.most));
}

QString ScrapDialog::wrongWidth(const QString& typed) const {
    const QString wrong = wrongExtent(typed, piece_.extent.unit(), piece_.extent);
    if (!wrong.isEmpty()) return wrong;
    return extent() > spare_.most ? needed() : QString{};
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
