#include "ui/rack/expected_form_dialog.h"

#include "ui/desk/field_words.h"
#include "ui/desk/labels.h"
#include "ui/desk/unsaved.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/goods_line_form.h"
#include "ui/rack/plain_table.h"
#include "ui/rack/sheet_dialog.h"
#include "ui/words/entry_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QTableWidget>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr int FormWidth = 480;
} // namespace

ExpectedFormDialog::ExpectedFormDialog(Session& session, std::optional<store::ExpectedDelivery> before,
                                       QWidget* parent)
    : QDialog{parent}, session_{session}, before_{std::move(before)}, supplier_{new QLineEdit},
      reference_{new QLineEdit}, due_{new QLineEdit}, form_{new GoodsLineForm{session,
                                                                              GoodsLineForm::For::Expected}},
      table_{plainTable(tr("Lines of the delivery"),
                        {tr("Belt"), tr("How many"), tr("Width"), tr("Cost of each"), tr("Has come")})},
      sum_{label({}, "strong")}, fault_{label({}, "warn")}, wrong_{new FieldWords} {
    setWindowTitle(before_ ? tr("Change an expected delivery") : tr("Expect a delivery"));
    setWhatsThis(tr("From whom it comes, when, and what. Goods in offers the delivery then and fills in its "
                    "lines."));
    buildView();
    connect(form_, &GoodsLineForm::edited, this, &ExpectedFormDialog::check);
    connect(table_, &QTableWidget::currentCellChanged, this, &ExpectedFormDialog::check);
    connect(&session_, &Session::warned, fault_, &QLabel::setText);
    if (before_) {
        shop::Expectation now;
        session_.attempt([&] { now = shop::expectationOf(session_.shop(), *before_); });
        supplier_->setText(text(now.supplier));
        reference_->setText(text(now.reference));
        if (now.due) due_->setText(text(printDate(*now.due)));
        lines_ = std::move(now.lines);
    }
    fill();
}

QWidget* ExpectedFormDialog::buildHead() {
    auto* box = new QWidget;
    box->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    auto* form = new QFormLayout{box};
    form->setContentsMargins(0, 0, 0, 0);
    const auto row = [&](const QString& name, QWidget* field, const char* object) {
        field->setAccessibleName(QString{name}.remove('&'));
        field->setObjectName(QString::fromLatin1(object));
        form->addRow(name, field);
    };
    row(tr("&Supplier"), supplier_, "supplier");
    row(tr("&Number of the purchase"), reference_, "reference");
    row(tr("&Due on"), due_, "due");
    due_->setPlaceholderText(tr("day, if it is known"));
    form->addRow(wrong_);
    wrong_->watch(*due_, orEmpty([this](const QString& typed) { return wrongDay(typed, session_.today()); }));
    return box;
}

QLayout* ExpectedFormDialog::buildLines() {
    const auto button = [this](const QString& words, const QKeySequence& key, KeyButton::Rank rank,
                               void (ExpectedFormDialog::*does)()) {
        auto* made = new KeyButton{words, key, rank};
        connect(made, &KeyButton::clicked, this, does);
        return made;
    };
    add_ = new KeyButton{tr("Add the line"), Qt::Key_Return, KeyButton::Rank::Plain};
    connect(add_, &KeyButton::clicked, this, [this] { addLine(); });
    change_ =
        button(tr("Change the line"), Qt::Key_F2, KeyButton::Rank::Plain, &ExpectedFormDialog::changeLine);
    remove_ = button(tr("Take the line out"), Qt::CTRL | Qt::Key_Delete, KeyButton::Rank::Plain,
                     &ExpectedFormDialog::removeLine);
    auto* file = button(tr("From a file"), Qt::Key_F5, KeyButton::Rank::Plain, &ExpectedFormDialog::fromFile);
    keep_ = button(tr("Expect it"), Qt::Key_F9, KeyButton::Rank::Likely, &ExpectedFormDialog::keep);
    auto* acts = new QHBoxLayout;
    for (KeyButton* each : {change_, remove_, file})
        acts->addWidget(each, 1);
    fault_->setWordWrap(true);
    auto* column = new QVBoxLayout;
    column->setSpacing(2 * step);
    column->addWidget(buildHead());
    column->addWidget(table_, 1);
    column->addLayout(acts);
    column->addWidget(sum_);
    column->addWidget(fault_);
    column->addWidget(keep_);
    return column;
}

void ExpectedFormDialog::buildView() {
    QLayout* right = buildLines();
    form_->setFixedWidth(FormWidth);
    auto* left = new QVBoxLayout;
    left->addWidget(form_);
    left->addWidget(add_);
    left->addStretch(1);
    auto* columns = new QHBoxLayout{this};
    columns->setSpacing(6 * step);
    columns->addLayout(left);
    columns->addLayout(right, 1);
    resize(1200, 600);
    form_->setFocus();
}

std::int64_t ExpectedFormDialog::arrivedOf(const shop::ExpectedGoods& line) const {
    if (!before_ || line.position == 0) return 0;
    return before_->lines.at(static_cast<std::size_t>(line.position) - 1).arrived;
}

void ExpectedFormDialog::fill() {
    const int row = table_->currentRow();
    table_->setRowCount(0);
    Money sum = Money::minor(0);
    std::int64_t sleeves = 0;
    for (const shop::ExpectedGoods& line : lines_) {
        const std::int64_t arrived = arrivedOf(line);
        addRow(*table_, {text(belt::designation(line.belt)), QString::number(line.sleeves),
                         shown(line.extent), shown(line.costEach, session_.currency()),
                         arrived > 0 ? QString::number(arrived) : QString{}});
        sum = sum + line.costEach * line.sleeves;
        sleeves += line.sleeves;
    }
    sum_->setText(lines_.empty()
                      ? tr("Nothing entered yet")
                      : tr("Sleeves: %1, for %2").arg(sleeves).arg(shownSum(sum, session_.currency())));
    if (!lines_.empty()) table_->selectRow(std::clamp(row, 0, table_->rowCount() - 1));
    check();
}

void ExpectedFormDialog::check() {
    add_->setEnabled(!form_->isEmpty());
    if (const QString words = changed_ ? tr("Put the line back") : tr("Add the line");
        add_->text() != words) {
        add_->setText(words);
        add_->setShortcut(Qt::Key_Return); // a button forgets its key with its words
    }
    for (KeyButton* button : {change_, remove_})
        button->setEnabled(table_->currentRow() >= 0 && !changed_);
    keep_->setEnabled(!lines_.empty() || !form_->isEmpty());
}

bool ExpectedFormDialog::addLine() {
    const auto line = form_->demand();
    if (!line) return false;
    touched_ = true;
    shop::ExpectedGoods goods{line->belt, line->sleeves, line->extent, line->costEach};
    if (changed_) {
        goods.position = lines_[*changed_].position;
        lines_[*changed_] = goods;
    } else
        lines_.push_back(goods);
    changed_.reset();
    form_->next();
    fill();
    return true;
}

/// The line goes back into the form; what has come of it stays with it.
void ExpectedFormDialog::changeLine() {
    const int row = table_->currentRow();
    if (row < 0 || (!form_->isEmpty() && !addLine())) return; // what is typed stays
    changed_ = static_cast<std::size_t>(row);
    form_->show(lines_[*changed_]);
    form_->setFocus();
    check();
}

void ExpectedFormDialog::removeLine() {
    const int row = table_->currentRow();
    if (row < 0) return;
    lines_.erase(lines_.begin() + row);
    touched_ = true;
    fill();
}

void ExpectedFormDialog::fromFile() {
    SheetDialog dialog{session_, SheetDialog::For::Delivery, this};
    if (dialog.exec() != QDialog::Accepted) return;
    for (const shop::Delivery& line : dialog.deliveries())
        lines_.push_back({line.belt, line.sleeves, line.extent, line.costEach});
    touched_ = true;
    fill();
}

/// A line that is typed but not added yet belongs to it.
void ExpectedFormDialog::keep() {
    if (!form_->isEmpty() && !addLine()) return;
    if (lines_.empty() || !wrong_->demand()) return;
    const shop::Expectation expectation{supplier_->text().trimmed().toStdString(),
                                        reference_->text().trimmed().toStdString(),
                                        readDate(due_->text().trimmed().toStdString()), lines_};
    const bool done = session_.attempt([&] {
        if (before_)
            shop::changeExpected(session_.shop(), before_->id, expectation);
        else
            shop::expect(session_.shop(), expectation);
    });
    if (done) accept();
}

bool ExpectedFormDialog::isTouched() const {
    return touched_ || !form_->isEmpty() || supplier_->isModified() || reference_->isModified() ||
           due_->isModified();
}

void ExpectedFormDialog::reject() {
    if (isTouched() && !mayThrowAway(*this, tr("What you entered is not kept yet."))) return;
    QDialog::reject();
}

} // namespace riband::ui
