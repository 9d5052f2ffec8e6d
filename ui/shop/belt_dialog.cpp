#include "ui/shop/belt_dialog.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/shop/belts_model.h"
#include "ui/shop/entry.h"
#include "ui/shop/trial_view.h"
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

/// What no sleeve is wider than.
Extent widest(Unit unit) { return unit == Unit::Rib ? Extent{Ribs{2000}} : Extent{Width::millimetres(5000)}; }
} // namespace

BeltDialog::BeltDialog(const store::StockedBelt& belt, Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, belt_{belt}, currency_{session.currency()},
      price_{new Entry{tr("&Price of width"),
                       [this](const auto& typed) { return readWidthPrice(typed, currency_).ok(); },
                       tr("Type a price, for example 0.34.")}},
      sleeve_{new Entry{tr("&New sleeve"),
                        [this](const auto& typed) {
                            const auto read = readExtent(typed, belt_.unit);
                            return read && !read->isNone() && *read <= widest(belt_.unit);
                        },
                        tr("Type the width of a whole sleeve, at most %1.").arg(shown(widest(belt.unit)))}},
      cost_{new Entry{tr("&Cost of a sleeve"),
                      [this](const auto& typed) {
                          const auto read = readMoney(typed, currency_);
                          return read && read->inMinor() >= 0;
                      },
                      tr("Type an amount, for example 38.50; 0 if it is not known.")}},
      listed_{new Entry{tr("&Usual widths"),
                        [this](const auto& typed) { return readListed(typed, belt_.unit).has_value(); },
                        tr("Type the widths with spaces between them, for example 20 30 50.")}},
      body_{new QLineEdit{text(belt.body)}}, cord_{new QLineEdit{text(belt.cord)}}, days_{new QSpinBox},
      preCut_{new QComboBox}, wrong_{label({}, "danger")},
      trial_{new TrialView{session, *this, [this]() -> std::optional<TrialView::Ask> {
                               if (!demandRight()) return std::nullopt;
                               return [proposed = this->belt()](const shop::Shop& shop) {
                                   return shop::trialOf(shop, proposed);
                               };
                           }}} {
    setWindowTitle(text(belt.designation));
    setWhatsThis(
        tr("How the sleeves of this belt come, what a belt costs, and which widths are usual. Trying "
           "it out plays the belt's expected orders by the entry as it is and as it stands here."));
    setMinimumWidth(640);
    buildView();
}

void BeltDialog::buildView() {
    const bool ribs = belt_.unit == Unit::Rib;
    price_->setText(text(printWidthPrice(belt_.price, currency_)));
    price_->selectAll();
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
    for (const store::PreCut each : {store::PreCut::WherePays, store::PreCut::Never, store::PreCut::Always})
        preCut_->addItem(say(each));
    preCut_->setCurrentIndex(static_cast<int>(belt_.preCut));
    preCut_->setAccessibleName(tr("Cut before it is asked for"));
    form->addRow(tr("Cut &before it is asked for"), preCut_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Save | QDialogButtonBox::Cancel};
    connect(buttons, &QDialogButtonBox::accepted, this, &BeltDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    wrong_->setWordWrap(true);
    for (Entry* entry : {price_, sleeve_, cost_, listed_})
        connect(entry, &QLineEdit::textChanged, wrong_, &QLabel::clear);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(3 * step);
    column->addLayout(form);
    column->addWidget(wrong_);
    auto* words =
        label(tr("Try it out plays %1 orders, as they are to be expected of this belt, with it as it is and "
                 "as it stands here.")
                  .arg(shop::trialOrders),
              "remark");
    words->setWordWrap(true);
    column->addWidget(words);
    column->addWidget(trial_);
    column->addStretch();
    column->addWidget(buttons);
}

/// Says what is wrong, if anything is.
bool BeltDialog::demandRight() {
    wrong_->setText(Entry::firstWrong(*this));
    return wrong_->text().isEmpty();
}

void BeltDialog::accept() {
    if (demandRight()) QDialog::accept();
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
