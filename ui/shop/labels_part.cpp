#include "ui/shop/labels_part.h"

#include "core/measure/text.h"
#include "core/shop/label_sheet.h"
#include "ui/shop/entry.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QSpinBox>

namespace riband::ui {

namespace {

constexpr int MostAcross = 10, MostDown = 30;
constexpr Width Smallest = Width::millimetres(20), Largest = Width::millimetres(200);

Entry* side(const QString& name) {
    return new Entry{
        name,
        [](const std::string& typed) {
            const auto width = readWidth(typed);
            return width && *width >= Smallest && *width <= Largest;
        },
        LabelsPart::tr("Type a size in mm from %1 to %2.").arg(shownNumber(Smallest), shownNumber(Largest))};
}

Entry* gap(const QString& name) {
    return new Entry{name,
                     [](const std::string& typed) {
                         const auto width = readWidth(typed);
                         return width && *width <= Largest;
                     },
                     LabelsPart::tr("Type a gap in mm from 0 to %1.").arg(shownNumber(Largest))};
}

} // namespace

LabelsPart::LabelsPart(QWidget* parent)
    : SettingsPart{parent}, stock_{new QComboBox}, width_{side(tr("&Width of a label"))},
      height_{side(tr("&Height of a label"))}, left_{gap(tr("First label, from the &left edge"))},
      top_{gap(tr("First label, from the &top edge"))}, across_{gap(tr("Gap &between columns"))},
      down_{gap(tr("&Gap between rows"))}, columns_{new QSpinBox}, rows_{new QSpinBox} {
    stock_->addItems({tr("a roll, one label after the other"), tr("sheets of the shop's paper")});
    stock_->setAccessibleName(tr("Labels are on"));
    columns_->setRange(1, MostAcross);
    columns_->setAccessibleName(tr("Labels side by side"));
    rows_->setRange(1, MostDown);
    rows_->setAccessibleName(tr("Labels one below the other"));
    auto* form = new QFormLayout{this};
    form->addRow(tr("Labels are &on"), stock_);
    for (Entry* entry : {width_, height_})
        entry->addTo(*form, tr("mm"));
    form->addRow(tr("Labels &side by side"), columns_);
    form->addRow(tr("Labels one &below the other"), rows_);
    for (Entry* entry : {left_, top_, across_, down_})
        entry->addTo(*form, tr("mm"));
    for (Entry* entry : {width_, height_, left_, top_, across_, down_})
        connect(entry, &QLineEdit::textEdited, this, &SettingsPart::edited);
    for (QSpinBox* count : {columns_, rows_})
        connect(count, &QSpinBox::valueChanged, this, &SettingsPart::edited);
    connect(stock_, &QComboBox::activated, this, &SettingsPart::edited);
    connect(stock_, &QComboBox::currentIndexChanged, this, &LabelsPart::follow);
    follow();
}

/// What only sheets have.
void LabelsPart::follow() {
    for (QWidget* field : std::initializer_list<QWidget*>{left_, top_, across_, down_, columns_, rows_})
        field->setEnabled(stock_->currentIndex() == 1);
}

void LabelsPart::show(const store::ShopSettings& settings) {
    const store::LabelStock& labels = settings.labels;
    stock_->setCurrentIndex(labels.sheet ? 1 : 0);
    width_->setText(shownNumber(labels.width));
    height_->setText(shownNumber(labels.height));
    columns_->setValue(labels.columns);
    rows_->setValue(labels.rows);
    left_->setText(shownNumber(labels.left));
    top_->setText(shownNumber(labels.top));
    across_->setText(shownNumber(labels.across));
    down_->setText(shownNumber(labels.down));
    follow();
}

bool LabelsPart::write(store::ShopSettings& settings) const {
    for (const Entry* entry : {width_, height_, left_, top_, across_, down_})
        if (!entry->isRight()) return false;
    const auto width = [](const Entry* entry) { return *readWidth(entry->typed()); };
    store::ShopSettings meant = settings; // its paper may have been changed with it
    meant.labels = {width(width_),  width(height_), columns_->value(),
                    rows_->value(), width(left_),   width(top_),
                    width(across_), width(down_),   stock_->currentIndex() == 1};
    if (!shop::labelsFit(meant)) {
        const shop::LabelsThatFit most = shop::labelsThatFit(meant);
        misfit_ =
            tr("On the paper of the shop (%1), from these edges and with these gaps, fit at most %2 labels "
               "side by side and %3 one below the other.")
                .arg(text(meant.paper))
                .arg(most.columns)
                .arg(most.rows);
        return false;
    }
    misfit_.clear();
    settings.labels = meant.labels;
    return true;
}

QString LabelsPart::wrong() const { return misfit_; }

} // namespace riband::ui
