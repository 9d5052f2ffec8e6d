#include "ui/rack/split_dialog.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace riband::ui {

SplitDialog::SplitDialog(const store::StockPiece& piece, QWidget* parent)
    : QDialog{parent}, piece_{piece}, apart_{new QLineEdit}, place_{new QLineEdit{text(piece.place)}},
      stays_{label({}, "remark")} {
    setWindowTitle(tr("Divide %1").arg(text(piece.code)));
    setMinimumWidth(460);
    auto* form = new QFormLayout;
    const auto row = [&](const QString& name, QWidget* field, const char* object) {
        field->setAccessibleName(QString{name}.remove('&'));
        field->setObjectName(QString::fromLatin1(object));
        form->addRow(name, field);
    };
    row(tr("&Width or ribs of the new piece (of %1)").arg(shown(piece.extent)), apart_, "apart");
    row(tr("Its &place"), place_, "place");
    auto* caution =
        label(tr("A knife cuts more than rubber: the cutter's own manual and trained people come first."),
              "remark");
    caution->setWordWrap(true);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    split_ = buttons->button(QDialogButtonBox::Ok);
    split_->setText(tr("&Divide, and label"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(apart_, &QLineEdit::textChanged, this, &SplitDialog::check);
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(stays_);
    column->addWidget(caution);
    column->addWidget(buttons);
    check();
}

std::optional<Extent> SplitDialog::apart() const {
    const auto read = readExtent(apart_->text().toStdString(), piece_.extent.unit());
    if (!read || read->isNone() || *read >= piece_.extent) return std::nullopt;
    return *read;
}

std::string SplitDialog::place() const { return place_->text().trimmed().toStdString(); }

void SplitDialog::check() {
    const auto width = apart();
    split_->setEnabled(width.has_value());
    stays_->setText(width ? tr("%1 stays under %2.").arg(shown(piece_.extent - *width), text(piece_.code))
                          : QString{});
}

} // namespace riband::ui
