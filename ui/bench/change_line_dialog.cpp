#include "ui/bench/change_line_dialog.h"

#include "core/measure/text.h"
#include "ui/desk/field_words.h"
#include "ui/desk/labels.h"
#include "ui/look/sheet.h"
#include "ui/words/entry_words.h"
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
      quantity_{new QSpinBox}, wrong_{new FieldWords}, words_{label({}, "remark")} {
    setWindowTitle(tr("Change %1").arg(belt));
    setWhatsThis(tr("Another width or number of belts; none means the line is dropped. What is cut already "
                    "stays cut and becomes a ready belt if nobody wants it."));
    setMinimumWidth(460);
    quantity_->setRange(0, MostBelts);
    quantity_->setValue(static_cast<int>(belts_));
    quantity_->setAccessibleName(tr("Belts"));
    quantity_->setObjectName(QStringLiteral("quantity"));
    width_->setAccessibleName(tr("Width or ribs"));
    width_->setObjectName(QStringLiteral("width"));
    words_->setObjectName(QStringLiteral("words"));
    buildView();
    wrong_->watch(*width_, [this](const QString& typed) { return wrongWidth(typed); });
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
    buttons->button(QDialogButtonBox::Ok)->setText(tr("&Change"));
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
    column->addWidget(wrong_);
    column->addWidget(words_);
    column->addWidget(buttons);
}

QString ChangeLineDialog::wrongWidth(const QString& typed) const {
    const QString wrong = wrongExtent(typed, before_.unit());
    if (!wrong.isEmpty() || widest_.isNone()) return wrong;
    const auto extent = readExtent(typed.toStdString(), before_.unit());
    return *extent > widest_
               ? tr("No sleeve of this belt is wider than %1. Check the width.").arg(shown(widest_))
               : QString{};
}

bool ChangeLineDialog::same() const { return extent() == before_ && quantity() == belts_; }

void ChangeLineDialog::say(const QString& words, const char* role) {
    words_->setText(words);
    setSheetProperty(*words_, "role", QString::fromLatin1(role));
}

void ChangeLineDialog::check() {
    wrong_->look();
    if (!wrong_->right()) return say({}, "remark");
    if (same())
        return say(
            tr("Nothing is changed yet. Type another number or width; Escape leaves the line as it is."),
            "remark");
    say(quantity() == 0 ? tr("No belts: this line is cancelled.") : QString{}, "remark");
}

void ChangeLineDialog::accept() {
    if (!wrong_->demand() || same()) return;
    const QString objection = objection_(extent(), quantity());
    if (objection.isEmpty()) return QDialog::accept();
    say(objection, "danger");
}

Extent ChangeLineDialog::extent() const {
    const auto read = readExtent(width_->text().toStdString(), before_.unit());
    return read && !read->isNone() ? *read : before_;
}

std::int64_t ChangeLineDialog::quantity() const { return quantity_->value(); }

} // namespace riband::ui
