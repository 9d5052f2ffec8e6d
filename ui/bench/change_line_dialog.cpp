#include "ui/bench/change_line_dialog.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
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

ChangeLineDialog::ChangeLineDialog(const store::OrderLine& line, const QString& belt, QWidget* parent)
    : QDialog{parent}, before_{line.extent}, width_{new QLineEdit{shownNumber(line.extent)}},
      quantity_{new QSpinBox} {
    setWindowTitle(tr("Change %1").arg(belt));
    quantity_->setRange(0, MostBelts);
    quantity_->setValue(static_cast<int>(line.quantity - line.cancelled));
    quantity_->setAccessibleName(tr("Belts"));
    quantity_->setObjectName(QStringLiteral("quantity"));
    width_->setAccessibleName(tr("Width or ribs"));
    width_->setObjectName(QStringLiteral("width"));
    auto* form = new QFormLayout;
    form->addRow(tr("&Belts"), quantity_);
    form->addRow(tr("&Width or ribs"), width_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    change_ = buttons->button(QDialogButtonBox::Ok);
    change_->setText(tr("&Change"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(width_, &QLineEdit::textChanged, this, [this] { change_->setEnabled(typed().has_value()); });
    auto* words =
        label(tr("The ticket is made anew. Belts already cut stay with the order where they fit it; "
                 "the others become ready belts."),
              "remark");
    words->setWordWrap(true);
    auto* column = new QVBoxLayout{this};
    column->addWidget(words);
    column->addLayout(form);
    column->addWidget(buttons);
}

std::optional<Extent> ChangeLineDialog::typed() const {
    const auto read = readExtent(width_->text().toStdString(), before_.unit());
    if (!read || read->isNone()) return std::nullopt;
    return *read;
}

Extent ChangeLineDialog::extent() const { return typed().value_or(before_); }

std::int64_t ChangeLineDialog::quantity() const { return quantity_->value(); }

} // namespace riband::ui
