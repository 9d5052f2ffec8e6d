#include "ui/bench/change_line_dialog.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/look/sheet.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr int MostBelts = 9999;
} // namespace

ChangeLineDialog::ChangeLineDialog(const store::OrderLine& line, const QString& belt, Extent widest,
                                   Objection objection, QWidget* parent)
    : QDialog{parent}, before_{line.extent}, widest_{widest}, belts_{line.quantity - line.cancelled},
      objection_{std::move(objection)}, width_{new QLineEdit{shownNumber(line.extent)}},
      quantity_{new QSpinBox}, words_{label({}, "warn")} {
    setWindowTitle(tr("Change %1").arg(belt));
    setMinimumWidth(460);
    quantity_->setRange(0, MostBelts);
    quantity_->setValue(static_cast<int>(belts_));
    quantity_->setAccessibleName(tr("Belts"));
    quantity_->setObjectName(QStringLiteral("quantity"));
    width_->setAccessibleName(tr("Width or ribs"));
    width_->setObjectName(QStringLiteral("width"));
    words_->setObjectName(QStringLiteral("words"));
    buildView();
    connect(width_, &QLineEdit::textChanged, this, &ChangeLineDialog::check);
    connect(quantity_, &QSpinBox::valueChanged, this, &ChangeLineDialog::check);
    check();
    quantity_->setFocus();
    quantity_->selectAll();
}

void ChangeLineDialog::buildView() {
    auto* form = new QFormLayout;
    form->addRow(tr("&Belts"), quantity_);
    form->addRow(tr("&Width or ribs"), width_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    change_ = buttons->button(QDialogButtonBox::Ok);
    change_->setText(tr("&Change"));
    connect(buttons, &QDialogButtonBox::accepted, this, &ChangeLineDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* about = label(
        tr("The ticket is made anew, with no belts for the shelf. Belts already cut stay with the order "
           "where they fit it; the others become ready belts."),
        "remark");
    about->setWordWrap(true);
    words_->setWordWrap(true);
    auto* column = new QVBoxLayout{this};
    column->addWidget(about);
    column->addLayout(form);
    column->addWidget(words_);
    column->addWidget(buttons);
}

ChangeLineDialog::Words ChangeLineDialog::wordsOn(std::optional<Extent> typed) const {
    const bool ribbed = before_.unit() == Unit::Rib;
    if (!typed)
        return {ribbed ? tr("Type a whole number of ribs, for example %1.").arg(shownNumber(before_))
                       : tr("Type a width in mm, for example %1.").arg(shownNumber(before_)),
                true};
    if (!widest_.isNone() && *typed > widest_)
        return {tr("No sleeve of this belt is wider than %1. Check the width.").arg(shown(widest_)), true};
    if (*typed == before_ && quantity() == belts_)
        return {tr("Nothing is changed yet. Type another number or width; Escape leaves the line as it is."),
                false};
    if (quantity() == 0) return {tr("No belts: this line is cancelled."), false};
    return {{}, false};
}

void ChangeLineDialog::say(const Words& words) {
    words_->setText(words.words);
    setSheetProperty(*words_, "role", words.wrong ? QStringLiteral("danger") : QStringLiteral("remark"));
}

void ChangeLineDialog::check() {
    const auto read = typed();
    const Words words = wordsOn(read);
    say(words);
    const bool same = read && *read == before_ && quantity() == belts_;
    setSheetProperty(*width_, "wrong", words.wrong ? QStringLiteral("true") : QStringLiteral("false"));
    change_->setEnabled(!words.wrong && !same);
}

void ChangeLineDialog::accept() {
    if (!change_->isEnabled()) return;
    const QString objection = objection_(extent(), quantity());
    if (objection.isEmpty()) return QDialog::accept();
    say({objection, true});
}

std::optional<Extent> ChangeLineDialog::typed() const {
    const auto read = readExtent(width_->text().toStdString(), before_.unit());
    if (!read || read->isNone()) return std::nullopt;
    return *read;
}

Extent ChangeLineDialog::extent() const { return typed().value_or(before_); }

std::int64_t ChangeLineDialog::quantity() const { return quantity_->value(); }

} // namespace riband::ui
