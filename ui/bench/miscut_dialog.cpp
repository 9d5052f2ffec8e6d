#include "ui/bench/miscut_dialog.h"

#include "core/measure/text.h"
#include "ui/bench/difference_words.h"
#include "ui/desk/field_words.h"
#include "ui/desk/labels.h"
#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace riband::ui {

MiscutDialog::MiscutDialog(const shop::BenchMounting& mounting, QWidget* parent)
    : QDialog{parent}, mounting_{mounting}, spoiled_{new QLineEdit}, left_{new QLineEdit},
      note_{new QLineEdit}, wrong_{new FieldWords}, difference_{label({}, "warn")} {
    setWindowTitle(tr("Miscut: %1").arg(text(mounting.piece.code)));
    setWhatsThis(tr("What was spoiled, what is good all the same, and how wide the piece is now. The spoiled "
                    "width is booked as such, and what the order still needs is planned again."));
    setMinimumWidth(520);
    buildView();
    const Unit unit = mounting_.piece.extent.unit();
    const Extent piece = mounting_.piece.extent;
    wrong_->watch(*spoiled_, [=](const QString& typed) { return wrongExtent(typed, unit, piece); });
    wrong_->watch(*left_, [=](const QString& typed) { return wrongRest(typed, unit, piece); });
    good_.front()->setFocus();
    good_.front()->selectAll(); // a figure typed takes the place of the one that stands there
}

void MiscutDialog::buildView() {
    auto* form = new QFormLayout;
    const auto row = [&](const QString& name, QWidget* field, const QString& object) {
        field->setAccessibleName(QString{name}.remove('&'));
        field->setObjectName(object);
        form->addRow(name, field);
    };
    for (const auto& cut : mounting_.mounting.cuts) {
        auto* count = new QSpinBox;
        count->setRange(0, static_cast<int>(cut.count));
        good_.push_back(count);
        connect(count, &QSpinBox::valueChanged, this, &MiscutDialog::expectLeft);
        row(tr("Good belts of %1 (of %2)").arg(shown(cut.extent)).arg(cut.count), count,
            QStringLiteral("good%1").arg(good_.size()));
    }
    row(tr("&Spoiled belt, its width"), spoiled_, QStringLiteral("spoiled"));
    row(tr("&Left of the piece, measured"), left_, QStringLiteral("left"));
    row(tr("&What happened"), note_, QStringLiteral("note"));
    connect(spoiled_, &QLineEdit::textChanged, this, &MiscutDialog::expectLeft);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    buttons->button(QDialogButtonBox::Ok)->setText(tr("R&ecord and plan again"));
    connect(buttons, &QDialogButtonBox::accepted, this, &MiscutDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* words =
        label(tr("Good belts count for the order. The spoiled one is scrapped as a miscut, and what is "
                 "missing is planned again from what is left or from another piece."),
              "remark");
    words->setWordWrap(true);
    difference_->setWordWrap(true);
    difference_->setObjectName(QStringLiteral("difference"));
    connect(left_, &QLineEdit::textChanged, this, &MiscutDialog::compare);
    auto* column = new QVBoxLayout{this};
    column->addWidget(words);
    column->addLayout(form);
    column->addWidget(wrong_);
    column->addWidget(difference_);
    column->addWidget(buttons);
}

std::optional<Extent> MiscutDialog::typed(const QLineEdit& field) const {
    const auto read = readExtent(field.text().toStdString(), mounting_.piece.extent.unit());
    if (!read) return std::nullopt;
    return *read;
}

/// What must be left by the figures; nothing while the spoiled belt has no width.
std::optional<Extent> MiscutDialog::expected() const {
    const auto spoiled = typed(*spoiled_);
    if (!spoiled) return std::nullopt;
    const store::TicketMounting& mounting = mounting_.mounting;
    Extent gone = mounting.trim + *spoiled + mounting.kerf;
    for (std::size_t i = 0; i < good_.size(); ++i)
        gone = gone + (mounting.cuts[i].extent + mounting.kerf) * good_[i]->value();
    const Extent piece = mounting_.piece.extent;
    return gone < piece ? piece - gone : Extent::none(piece.unit());
}

/// By the figures, until somebody types what was measured.
void MiscutDialog::expectLeft() {
    if (const auto left = expected(); left && !left_->isModified()) left_->setText(shownNumber(*left));
    compare();
}

/// What was measured, with the figures.
void MiscutDialog::compare() {
    const auto left = typed(*left_);
    const auto by = expected();
    difference_->setText(left && by && wrong_->right() ? differenceWords(*left, *by) : QString{});
}

void MiscutDialog::accept() {
    if (wrong_->demand()) QDialog::accept();
}

shop::Miscut MiscutDialog::miscut() const {
    const Extent none = Extent::none(mounting_.piece.extent.unit());
    shop::Miscut made{mounting_.mounting.id,
                      {},
                      typed(*spoiled_).value_or(none),
                      typed(*left_).value_or(none),
                      note_->text().trimmed().toStdString()};
    for (const QSpinBox* good : good_)
        made.good.push_back(good->value());
    return made;
}

} // namespace riband::ui
