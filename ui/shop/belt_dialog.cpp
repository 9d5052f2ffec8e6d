#include "ui/shop/belt_dialog.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/shop/belts_model.h"
#include "ui/shop/entry.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr int LongestDelivery = 365;
} // namespace

BeltDialog::BeltDialog(const store::StockedBelt& belt, const Currency& currency, QWidget* parent)
    : QDialog{parent}, belt_{belt}, currency_{currency}, price_{new Entry{
                                                             tr("&Price of width"),
                                                             [this](const auto& typed) {
                                                                 return readWidthPrice(typed, currency_).ok();
                                                             }}},
      sleeve_{new Entry{tr("&New sleeve"),
                        [this](const auto& typed) {
                            const auto read = readExtent(typed, belt_.unit);
                            return read && !read->isNone();
                        }}},
      cost_{new Entry{tr("&Cost of a sleeve"),
                      [this](const auto& typed) { return readMoney(typed, currency_).ok(); }}},
      listed_{new Entry{tr("&Usual widths"),
                        [this](const auto& typed) { return readListed(typed, belt_.unit).has_value(); }}},
      body_{new QLineEdit{text(belt.body)}}, cord_{new QLineEdit{text(belt.cord)}}, days_{new QSpinBox},
      preCut_{new QComboBox} {
    setWindowTitle(text(belt.designation));
    setMinimumWidth(520);
    buildView();
}

void BeltDialog::buildView() {
    const bool ribs = belt_.unit == Unit::Rib;
    price_->setText(text(printWidthPrice(belt_.price, currency_)));
    sleeve_->setText(shownNumber(belt_.newSleeve));
    cost_->setText(shown(belt_.sleeveCost, currency_));
    listed_->setText(shownListed(belt_.listed));
    days_->setRange(0, LongestDelivery);
    days_->setValue(belt_.deliveryDays);
    days_->setAccessibleName(tr("Delivery, days"));
    body_->setAccessibleName(tr("Body"));
    cord_->setAccessibleName(tr("Cord"));
    auto* form = new QFormLayout;
    price_->addTo(*form, ribs ? tr("a rib") : tr("a mm"));
    listed_->addTo(*form, ribs ? tr("ribs") : tr("mm"));
    sleeve_->addTo(*form, ribs ? tr("ribs") : tr("mm"));
    cost_->addTo(*form);
    form->addRow(tr("&Delivery, days"), days_);
    form->addRow(tr("&Body"), body_);
    form->addRow(tr("C&ord"), cord_);
    preCut_->addItems({tr("where trim is a large share"), tr("never"), tr("always")}); // as store::PreCut
    preCut_->setCurrentIndex(static_cast<int>(belt_.preCut));
    preCut_->setAccessibleName(tr("Cut before it is asked for"));
    form->addRow(tr("Cut &before it is asked for"), preCut_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Save | QDialogButtonBox::Cancel};
    save_ = buttons->button(QDialogButtonBox::Save);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    for (Entry* entry : {price_, sleeve_, cost_, listed_})
        connect(entry, &QLineEdit::textChanged, this, [this] {
            save_->setEnabled(price_->isRight() && sleeve_->isRight() && cost_->isRight() &&
                              listed_->isRight());
        });
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(buttons);
}

store::StockedBelt BeltDialog::belt() const {
    store::StockedBelt made = belt_;
    made.price = *readWidthPrice(price_->typed(), currency_);
    made.newSleeve = *readExtent(sleeve_->typed(), belt_.unit);
    made.sleeveCost = *readMoney(cost_->typed(), currency_);
    made.listed = *readListed(listed_->typed(), belt_.unit);
    made.deliveryDays = days_->value();
    made.preCut = static_cast<store::PreCut>(preCut_->currentIndex());
    made.body = body_->text().trimmed().toStdString();
    made.cord = cord_->text().trimmed().toStdString();
    return made;
}

} // namespace riband::ui
