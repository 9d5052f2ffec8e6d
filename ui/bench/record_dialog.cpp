#include "ui/bench/record_dialog.h"

#include "core/measure/text.h"
#include "ui/bench/difference_words.h"
#include "ui/desk/completion.h"
#include "ui/desk/field_words.h"
#include "ui/desk/labels.h"
#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QCompleter>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr int MostForShelf = 50;

QStringList shownPlaces(const std::vector<std::string>& places) {
    QStringList list;
    for (const auto& place : places)
        list << text(place);
    return list;
}

} // namespace

RecordDialog::RecordDialog(const shop::BenchMounting& mounting, const std::vector<std::string>& places,
                           QWidget* parent)
    : QDialog{parent}, mounting_{mounting}, rest_{new QLineEdit}, place_{new QLineEdit},
      shelfWidth_{new QLineEdit}, shelfCount_{new QSpinBox}, keep_{new QCheckBox{tr("&Keep the rest")}},
      wrong_{new FieldWords}, difference_{label({}, "warn")} {
    setWindowTitle(tr("The cut is done: %1").arg(text(mounting.piece.code)));
    setWhatsThis(tr("Measure what is left of the piece and type it: the difference to the plan is booked, "
                    "never lost. A rest that is too narrow to use may be thrown away here; else it gets a "
                    "label and a place."));
    setMinimumWidth(520);
    buildView(places);
    connectAll();
    expect();
    rest_->setFocus();
    rest_->selectAll();
}

void RecordDialog::buildView(const std::vector<std::string>& places) {
    auto* form = new QFormLayout;
    const auto row = [&](const QString& name, QWidget* field, const QByteArray& object) {
        field->setAccessibleName(QString{name}.remove('&'));
        field->setObjectName(QString::fromLatin1(object));
        form->addRow(name, field);
    };
    row(tr("&Rest as measured"), rest_, "rest");
    keep_->setChecked(mounting_.mounting.restKept);
    row(QString{}, keep_, "keep");
    keep_->setAccessibleName(tr("Keep the rest"));
    place_->setText(text(mounting_.piece.place));
    offerBelow(*place_, new QCompleter{shownPlaces(places), place_});
    row(tr("&Place of the rest"), place_, "place");
    for (const auto& cut : mounting_.mounting.cuts) {
        if (cut.line) continue;
        auto* count = new QSpinBox;
        count->setRange(0, static_cast<int>(cut.count));
        count->setValue(count->maximum());
        ofShelf_.push_back(count);
        row(tr("%1 for the shelf (of %2)").arg(shown(cut.extent)).arg(cut.count), count,
            QByteArray{"ofShelf"} + QByteArray::number(static_cast<int>(ofShelf_.size())));
    }
    shelfCount_->setRange(0, MostForShelf);
    row(tr("&Cut more for the shelf"), shelfCount_, "shelfCount");
    row(tr("each as &wide as"), shelfWidth_, "shelfWidth");
    difference_->setWordWrap(true);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    buttons->button(QDialogButtonBox::Ok)->setText(tr("R&ecord"));
    connect(buttons, &QDialogButtonBox::accepted, this, &RecordDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* words =
        label(tr("Measure what is left on the shaft. If it differs from the plan, the difference is booked."),
              "remark");
    words->setWordWrap(true);
    auto* column = new QVBoxLayout{this};
    column->addWidget(words);
    column->addLayout(form);
    column->addWidget(wrong_);
    column->addWidget(difference_);
    column->addWidget(buttons);
}

void RecordDialog::connectAll() {
    const Unit unit = mounting_.piece.extent.unit();
    wrong_->watch(*rest_, [this, unit](const QString& typed) {
        return wrongRest(typed, unit, mounting_.piece.extent);
    });
    wrong_->watch(*shelfWidth_, [this, unit](const QString& typed) {
        return shelfCount_->value() > 0 ? wrongExtent(typed, unit, mounting_.piece.extent) : QString{};
    });
    connect(rest_, &QLineEdit::textChanged, this, &RecordDialog::compare);
    connect(shelfCount_, &QSpinBox::valueChanged, this, &RecordDialog::expect);
    connect(shelfWidth_, &QLineEdit::textChanged, this, &RecordDialog::expect);
    for (QSpinBox* count : ofShelf_)
        connect(count, &QSpinBox::valueChanged, this, [this, count](int cut) {
            if (cut < count->maximum()) keep_->setChecked(true); // more of it is left then
            expect();
        });
    connect(keep_, &QCheckBox::toggled, place_, &QWidget::setEnabled);
}

std::optional<Extent> RecordDialog::typedRest() const {
    const auto read = readExtent(rest_->text().toStdString(), mounting_.piece.extent.unit());
    if (!read) return std::nullopt;
    return *read;
}

std::vector<shop::CutRecord::ForShelf> RecordDialog::forShelf() const {
    const auto read = readExtent(shelfWidth_->text().toStdString(), mounting_.piece.extent.unit());
    if (shelfCount_->value() == 0 || !read || read->isNone()) return {};
    return {{*read, shelfCount_->value()}};
}

/// What must be left by the figures.
Extent RecordDialog::expected() const {
    Extent left = mounting_.mounting.left;
    std::size_t shelf = 0;
    for (const auto& cut : mounting_.mounting.cuts) {
        if (cut.line) continue;
        const std::int64_t notCut = cut.count - ofShelf_[shelf++]->value();
        left = left + (cut.extent + mounting_.mounting.kerf) * notCut;
    }
    for (const auto& belts : forShelf()) {
        const Extent taken = (belts.extent + mounting_.mounting.kerf) * belts.count;
        left = left < taken ? Extent::none(left.unit()) : left - taken;
    }
    return left;
}

void RecordDialog::expect() {
    if (!rest_->isModified()) rest_->setText(shownNumber(expected()));
    wrong_->look();
    compare();
}

/// What was measured, with the figures.
void RecordDialog::compare() {
    const auto rest = typedRest();
    difference_->setText(rest && wrong_->right() ? differenceWords(*rest, expected()) : QString{});
}

void RecordDialog::accept() {
    if (wrong_->demand()) QDialog::accept();
}

shop::CutRecord RecordDialog::record() const {
    std::vector<std::int64_t> ofShelf;
    for (const QSpinBox* count : ofShelf_)
        ofShelf.push_back(count->value());
    return {mounting_.mounting.id,
            typedRest(),
            keep_->isChecked(),
            place_->text().trimmed().toStdString(),
            forShelf(),
            ofShelf};
}

} // namespace riband::ui
