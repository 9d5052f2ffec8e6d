#include "ui/rack/split_dialog.h"

#include "core/measure/text.h"
#include "ui/desk/field_words.h"
#include "ui/desk/labels.h"
#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace riband::ui {

SplitDialog::SplitDialog(const store::StockPiece& piece, Extent stub, const shop::Spare& spare,
                         QWidget* parent)
    : QDialog{parent}, piece_{piece}, stub_{stub}, spare_{spare}, apart_{new QLineEdit},
      place_{new QLineEdit{text(piece.place)}}, stays_{label({}, "remark")}, wrong_{new FieldWords} {
    setWindowTitle(tr("Divide %1").arg(text(piece.code)));
    setWhatsThis(
        tr("One piece becomes two, each with a code and a label of its own, and both together are as "
           "wide as it was: not a micrometre is lost in the book."));
    setMinimumWidth(460);
    auto* form = new QFormLayout;
    const auto row = [&](const QString& name, QWidget* field, const char* object) {
        field->setAccessibleName(QString{name}.remove('&'));
        field->setObjectName(QString::fromLatin1(object));
        form->addRow(name, field);
    };
    row(tr("&Width or ribs of the new piece (of %1)").arg(shown(piece.extent)), apart_, "apart");
    row(tr("Its &place"), place_, "place");
    auto* held = label(needed(), "warn");
    held->setObjectName(QStringLiteral("held"));
    held->setWordWrap(true);
    held->setVisible(!held->text().isEmpty());
    auto* caution =
        label(tr("A knife cuts more than rubber: the cutter's own manual and trained people come first."),
              "remark");
    caution->setWordWrap(true);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    buttons->button(QDialogButtonBox::Ok)->setText(tr("&Divide, and label"));
    connect(buttons, &QDialogButtonBox::accepted, this, &SplitDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(apart_, &QLineEdit::textChanged, this, &SplitDialog::showRest);
    wrong_->watch(*apart_, [this](const QString& typed) { return wrongApart(typed); });
    auto* column = new QVBoxLayout{this};
    column->addWidget(held);
    column->addLayout(form);
    column->addWidget(wrong_);
    column->addWidget(stays_);
    column->addWidget(caution);
    column->addWidget(buttons);
    apart_->setFocus();
    if (whyNot().isEmpty()) return;
    for (QWidget* each :
         std::initializer_list<QWidget*>{apart_, place_, buttons->button(QDialogButtonBox::Ok)})
        each->setEnabled(false);
    buttons->button(QDialogButtonBox::Cancel)->setFocus();
}

/// Why no width at all can be divided off, said before anybody types one.
QString SplitDialog::whyNot() const {
    const QString code = text(piece_.code);
    if (piece_.kind == cutting::PieceKind::Ready)
        return tr("%1 is a ready belt: it is sold or scrapped as it is, not divided.").arg(code);
    if (piece_.extent < stub_ + stub_)
        return tr("%1 is only %2: of two parts one would be under %3 and can't be held.")
            .arg(code, shown(piece_.extent), shown(stub_));
    if (spare_.most < stub_)
        return tr("%1 is promised to %2, and too little of it is free to be divided off. Cut that first, or "
                  "plan it from another piece (Bench).")
            .arg(code, text(spare_.tickets));
    return {};
}

/// What open tickets need of it.
QString SplitDialog::needed() const {
    if (const QString why = whyNot(); !why.isEmpty()) return why;
    if (spare_.tickets.empty()) return {};
    return tr("%1 needs a part of it, which stays under %2: at most %3 can be divided off.")
        .arg(text(spare_.tickets), text(piece_.code), shown(spare_.most));
}

QString SplitDialog::wrongApart(const QString& typed) const {
    const QString wrong = wrongExtent(typed, piece_.extent.unit());
    if (!wrong.isEmpty()) return wrong;
    if (!apart())
        return tr("%1 is only %2: type less than that.").arg(text(piece_.code), shown(piece_.extent));
    if (*apart() < stub_)
        return tr("A piece under %1 can't be held. Cut it by a ticket, or scrap it.").arg(shown(stub_));
    const Extent left = piece_.extent - *apart();
    if (left < stub_)
        return tr("%1 would be left: under %2 it can't be held. Scrap that part instead (on the Rack).")
            .arg(shown(left), shown(stub_));
    if (*apart() > spare_.most) return needed();
    return {};
}

void SplitDialog::accept() {
    if (wrong_->demand()) QDialog::accept();
}

std::optional<Extent> SplitDialog::apart() const {
    const auto read = readExtent(apart_->text().toStdString(), piece_.extent.unit());
    if (!read || read->isNone() || *read >= piece_.extent) return std::nullopt;
    return *read;
}

std::string SplitDialog::place() const { return place_->text().trimmed().toStdString(); }

void SplitDialog::showRest() {
    const auto width = apart();
    stays_->setText(width ? tr("%1 stays under %2.").arg(shown(piece_.extent - *width), text(piece_.code))
                          : QString{});
}

} // namespace riband::ui
