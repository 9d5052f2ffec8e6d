#include "ui/rack/expected_dialog.h"

#include "ui/desk/labels.h"
#include "ui/desk/list_file.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/expected_form_dialog.h"
#include "ui/rack/plain_table.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QMessageBox>
#include <QTableWidget>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr int BeltsColumn = 3;

struct Missing {
    std::int64_t sleeves = 0;
    Money cost = Money::minor(0);
};

Missing missingOf(const store::ExpectedDelivery& delivery) {
    Missing missing;
    for (const store::ExpectedLine& line : delivery.lines) {
        const std::int64_t sleeves = std::max<std::int64_t>(0, line.sleeves - line.arrived);
        missing.sleeves += sleeves;
        missing.cost = missing.cost + line.costEach * sleeves;
    }
    return missing;
}

} // namespace

ExpectedDialog::ExpectedDialog(Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, table_{plainTable(tr("Expected deliveries"),
                                                            {tr("Due"), tr("Supplier"), tr("Purchase"),
                                                             tr("Belts"), tr("Still to come"), tr("Costs")})},
      sum_{label({}, "strong")}, said_{label({}, "gain")} {
    setWindowTitle(tr("Expected deliveries"));
    setWhatsThis(tr("What was ordered and hasn't come yet, by the day it is due. Goods in takes these up; "
                    "what won't come any more is ended here."));
    buildView();
    look();
}

void ExpectedDialog::buildView() {
    const auto button = [this](const QString& words, const QKeySequence& key, KeyButton::Rank rank,
                               void (ExpectedDialog::*does)()) {
        auto* made = new KeyButton{words, key, rank};
        connect(made, &KeyButton::clicked, this, does);
        return made;
    };
    auto* add = button(tr("A new one"), Qt::Key_F8, KeyButton::Rank::Likely, &ExpectedDialog::add);
    change_ = button(tr("Change"), Qt::Key_F2, KeyButton::Rank::Plain, &ExpectedDialog::change);
    auto* list =
        button(tr("Save the list"), Qt::CTRL | Qt::Key_E, KeyButton::Rank::Plain, &ExpectedDialog::save);
    drop_ = button(tr("Nothing more comes"), Qt::CTRL | Qt::Key_Delete, KeyButton::Rank::Danger,
                   &ExpectedDialog::drop);
    auto* acts = new QHBoxLayout;
    for (KeyButton* each : {add, change_, list, drop_})
        acts->addWidget(each, 1);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(2 * step);
    column->addWidget(sum_);
    column->addWidget(table_, 1);
    column->addWidget(said_);
    column->addLayout(acts);
    table_->horizontalHeader()->setStretchLastSection(false);
    table_->horizontalHeader()->setSectionResizeMode(BeltsColumn, QHeaderView::Stretch);
    resize(1040, 520);
    table_->setFocus();
}

void ExpectedDialog::look() {
    session_.attempt([&] { expected_ = store::Goods{session_.shop().connection}.expected(); });
    const int row = table_->currentRow();
    table_->setRowCount(0);
    Missing all;
    for (const store::ExpectedDelivery& delivery : expected_) {
        const Missing missing = missingOf(delivery);
        const QString day = delivery.due ? shown(*delivery.due) : tr("not known");
        QStringList belts;
        session_.attempt([&] {
            const store::Catalogue catalogue{session_.shop().connection};
            for (const store::ExpectedLine& line : delivery.lines)
                belts << text(catalogue.at(line.belt).designation);
        });
        belts.removeDuplicates();
        addRow(*table_, {delivery.due && *delivery.due < session_.today() ? tr("%1, late").arg(day) : day,
                         text(delivery.supplier), text(delivery.reference), belts.join(QStringLiteral(", ")),
                         QString::number(missing.sleeves), shownSum(missing.cost, session_.currency())});
        all = {all.sleeves + missing.sleeves, all.cost + missing.cost};
    }
    sum_->setText(expected_.empty() ? tr("Nothing is expected.")
                                    : tr("Sleeves still to come: %1, for %2")
                                          .arg(all.sleeves)
                                          .arg(shownSum(all.cost, session_.currency())));
    if (!expected_.empty()) table_->selectRow(std::clamp(row, 0, table_->rowCount() - 1));
    for (KeyButton* button : {change_, drop_})
        button->setEnabled(current() != nullptr);
}

const store::ExpectedDelivery* ExpectedDialog::current() const {
    const int row = table_->currentRow();
    if (row < 0 || row >= static_cast<int>(expected_.size())) return nullptr;
    return &expected_[static_cast<std::size_t>(row)];
}

void ExpectedDialog::add() {
    if (ExpectedFormDialog{session_, std::nullopt, this}.exec() != QDialog::Accepted) return;
    said_->setText(tr("It is expected: Goods in offers it when it comes."));
    look();
}

void ExpectedDialog::change() {
    if (!current()) return;
    if (ExpectedFormDialog{session_, *current(), this}.exec() != QDialog::Accepted) return;
    said_->setText(tr("It is changed."));
    look();
}

void ExpectedDialog::drop() {
    if (!current()) return;
    const store::ExpectedDelivery& delivery = *current();
    QMessageBox ask{QMessageBox::Question, windowTitle(),
                    tr("Nothing more comes of %1 %2? What came stays.")
                        .arg(text(delivery.supplier), text(delivery.reference)),
                    QMessageBox::Ok | QMessageBox::Cancel, this};
    ask.setDefaultButton(QMessageBox::Ok);
    if (ask.exec() != QMessageBox::Ok) return;
    if (session_.attempt([&] { shop::dropExpected(session_.shop(), delivery.id); }))
        said_->setText(tr("It is not expected any more."));
    look();
}

void ExpectedDialog::save() {
    session_.attempt([&] {
        said_->setText(
            tr("The list is in %1.").arg(saveList(session_, *table_->model(), QStringLiteral("expected"))));
    });
}

} // namespace riband::ui
