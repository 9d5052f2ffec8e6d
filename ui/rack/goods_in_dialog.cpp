#include "ui/rack/goods_in_dialog.h"

#include "core/measure/text.h"
#include "core/shop/limits.h"
#include "core/shop/place_advice.h"
#include "ui/desk/field_words.h"
#include "ui/desk/labels.h"
#include "ui/desk/paper_tray.h"
#include "ui/desk/print.h"
#include "ui/desk/unsaved.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/goods_line_form.h"
#include "ui/rack/goods_lines_model.h"
#include "ui/rack/sheet_dialog.h"
#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QTableView>
#include <QVBoxLayout>

#include <map>
#include <tuple>

namespace riband::ui {

namespace {
constexpr int FormWidth = 480;
} // namespace

GoodsInDialog::GoodsInDialog(Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, supplier_{new QLineEdit}, reference_{new QLineEdit},
      freight_{new QLineEdit}, expected_{new QComboBox}, form_{new GoodsLineForm{session}},
      lines_{new GoodsLinesModel{session.currency(), this}}, table_{new QTableView},
      sum_{label({}, "strong")}, costless_{label({}, "warn")}, done_{label({}, "gain")}, wrong_{
                                                                                             new FieldWords} {
    setWindowTitle(tr("Goods in"));
    setWhatsThis(tr("Everything that came off one lorry: type or scan a belt, then how many and how wide, "
                    "Enter adds the line and F2 takes it back. A maker's code that nobody knows yet asks for "
                    "its belt once. "
                    "Freight is divided by what the lines cost. Nothing is booked before the key for all of "
                    "it, and then all or nothing; the labels come out at once."));
    buildView();
    fillExpected();
    connect(form_, &GoodsLineForm::edited, this, &GoodsInDialog::check);
    connect(freight_, &QLineEdit::textChanged, this, &GoodsInDialog::freightTyped);
    connect(expected_, &QComboBox::currentIndexChanged, this, &GoodsInDialog::chooseExpected);
    check();
}

QWidget* GoodsInDialog::buildHead() {
    auto* box = new QWidget;
    box->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    auto* form = new QFormLayout{box};
    form->setContentsMargins(0, 0, 0, 0);
    const auto row = [&](const QString& name, QWidget* field, const char* object) {
        field->setAccessibleName(QString{name}.remove('&'));
        field->setObjectName(QString::fromLatin1(object));
        form->addRow(name, field);
    };
    row(tr("E&xpected"), expected_, "expected");
    row(tr("&Supplier"), supplier_, "supplier");
    row(tr("Delivery &note"), reference_, "reference");
    row(tr("&Freight, of all"), freight_, "freight");
    form->addRow(wrong_);
    wrong_->watch(*freight_, orEmpty([this](const QString& typed) {
        return wrongAmount(typed, session_.currency(), shop::dearestSleeve);
    }));
    return box;
}

void GoodsInDialog::buildView() {
    const auto button = [this](const QString& words, const QKeySequence& key, KeyButton::Rank rank,
                               void (GoodsInDialog::*does)()) {
        auto* made = new KeyButton{words, key, rank};
        connect(made, &KeyButton::clicked, this, does);
        return made;
    };
    add_ = new KeyButton{tr("Add the line"), Qt::Key_Return, KeyButton::Rank::Plain};
    connect(add_, &KeyButton::clicked, this, [this] { addLine(); });
    book_ = button(tr("Book all, and label"), Qt::Key_F9, KeyButton::Rank::Likely, &GoodsInDialog::book);
    auto* file = button(tr("From a file"), Qt::Key_F5, KeyButton::Rank::Plain, &GoodsInDialog::fromFile);
    table_->setModel(lines_);
    table_->setAccessibleName(tr("Lines of the delivery"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, &GoodsInDialog::check);
    change_ = button(tr("Change the line"), Qt::Key_F2, KeyButton::Rank::Plain, &GoodsInDialog::changeLine);
    takeOut_ = button(tr("Take the line out"), Qt::CTRL | Qt::Key_Delete, KeyButton::Rank::Plain,
                      &GoodsInDialog::removeLine);
    auto* lineActs = new QHBoxLayout;
    lineActs->addWidget(change_, 1);
    lineActs->addWidget(takeOut_, 1);
    done_->setWordWrap(true);
    costless_->setWordWrap(true);
    costless_->setObjectName(QStringLiteral("costlessLines"));
    costless_->hide();
    auto* left = new QVBoxLayout;
    form_->setFixedWidth(FormWidth);
    left->addWidget(form_);
    left->addWidget(add_);
    left->addStretch(1);
    auto* right = new QVBoxLayout;
    right->addWidget(buildHead());
    right->addWidget(table_, 1);
    right->addLayout(lineActs);
    right->addWidget(sum_);
    right->addWidget(costless_);
    right->addWidget(done_);
    right->addWidget(file);
    right->addWidget(book_);
    auto* columns = new QHBoxLayout{this};
    columns->setSpacing(6 * step);
    columns->addLayout(left);
    columns->addLayout(right, 1);
    resize(1200, 680);
    form_->setFocus();
}

void GoodsInDialog::fillExpected() {
    const QSignalBlocker quiet{expected_};
    expected_->clear();
    expected_->addItem(tr("not expected"));
    session_.attempt([&] { waiting_ = store::Goods{session_.shop().connection}.expected(); });
    for (const store::ExpectedDelivery& delivery : waiting_)
        expected_->addItem(
            delivery.due ? tr("%1 %2, due %3")
                               .arg(text(delivery.supplier), text(delivery.reference), shown(*delivery.due))
                         : tr("%1 %2").arg(text(delivery.supplier), text(delivery.reference)));
    expected_->setEnabled(!waiting_.empty());
}

/// The lines that have not come yet are entered: what did not come is taken out again.
void GoodsInDialog::chooseExpected() {
    const int chosen = expected_->currentIndex() - 1;
    if (chosen < 0) return;
    if (!form_->isEmpty() && !addLine()) return expected_->setCurrentIndex(0); // what is typed stays
    const store::ExpectedDelivery& delivery = waiting_[static_cast<std::size_t>(chosen)];
    supplier_->setText(text(delivery.supplier));
    session_.attempt([&] {
        const shop::Expectation expected = shop::expectationOf(session_.shop(), delivery);
        for (std::size_t i = 0; i < expected.lines.size(); ++i) {
            shop::ExpectedGoods missing = expected.lines[i];
            missing.sleeves -= static_cast<int>(delivery.lines[i].arrived);
            if (missing.sleeves <= 0) continue;
            form_->lieBeside(lines_->lines());
            form_->show(missing);
            if (const auto goods = form_->line()) lines_->add(*goods);
        }
    });
    if (lines_->rowCount() > 0) table_->selectRow(0);
    form_->next();
    check();
}

std::optional<Money> GoodsInDialog::freight() const {
    if (freight_->text().trimmed().isEmpty()) return Money::minor(0);
    const auto money = readMoney(freight_->text().toStdString(), session_.currency());
    return money && wrong_->right() ? std::optional{*money} : std::nullopt;
}

void GoodsInDialog::freightTyped() {
    lines_->setFreight(freight().value_or(Money::minor(0)));
    check();
}

bool GoodsInDialog::addLine() {
    const auto line = form_->demand();
    if (!line) return false;
    if (changed_)
        lines_->change(*changed_, *line);
    else
        lines_->add(*line);
    table_->selectRow(changed_.value_or(lines_->rowCount() - 1));
    changed_.reset();
    done_->clear();
    form_->next();
    check();
    return true;
}

/// The line goes back into the form.
void GoodsInDialog::changeLine() {
    const int row = table_->currentIndex().row();
    if (row < 0 || changed_ || (!form_->isEmpty() && !addLine())) return; // what is typed stays
    changed_ = row;
    table_->selectRow(row);
    form_->show(lines_->lines()[static_cast<std::size_t>(row)]);
    form_->setFocus();
    check();
}

void GoodsInDialog::removeLine() {
    if (changed_) return;
    lines_->remove(table_->currentIndex().row());
    check();
}

void GoodsInDialog::fromFile() {
    SheetDialog dialog{session_, SheetDialog::For::Delivery, this};
    if (dialog.exec() != QDialog::Accepted) return;
    std::map<std::tuple<std::string, cutting::PieceKind, Extent>, std::string> places;
    session_.attempt([&] {
        for (shop::Delivery line : dialog.deliveries()) {
            if (line.place.empty()) {
                const std::tuple alike{belt::designation(line.belt), line.kind, line.extent};
                const auto [place, isNew] = places.try_emplace(alike);
                if (isNew)
                    place->second =
                        shop::placeFor(session_.shop(), line.belt, line.kind, line.extent, lines_->lines());
                line.place = place->second;
            }
            lines_->add(std::move(line));
        }
    });
    if (lines_->rowCount() > 0 && !table_->currentIndex().isValid()) table_->selectRow(0);
    check();
}

void GoodsInDialog::check() {
    form_->lieBeside(lines_->lines());
    add_->setEnabled(!form_->isEmpty());
    if (const QString words = changed_ ? tr("Put the line back") : tr("Add the line");
        add_->text() != words) {
        add_->setText(words);
        add_->setShortcut(Qt::Key_Return); // a button forgets its key with its words
    }
    for (KeyButton* each : {change_, takeOut_})
        each->setEnabled(table_->currentIndex().isValid() && lines_->rowCount() > 0 && !changed_);
    book_->setEnabled(lines_->rowCount() > 0 || !form_->isEmpty());
    int sleeves = 0;
    for (const shop::Delivery& line : lines_->lines())
        sleeves += line.sleeves;
    sum_->setText(
        lines_->rowCount() == 0
            ? tr("Nothing entered yet")
            : tr("Pieces: %1, for %2")
                  .arg(sleeves)
                  .arg(shown(lines_->goods() + freight().value_or(Money::minor(0)), session_.currency())));
    const int costless = lines_->withoutCost();
    costless_->setVisible(costless > 0);
    costless_->setText(
        tr("Without a cost: %1. What is cut from them will be in no margin, and they have no worth "
           "in money. F2 puts the cost in.")
            .arg(costless));
}

/// A line that is typed but not added yet belongs to it.
void GoodsInDialog::book() {
    if (!form_->isEmpty() && !addLine()) return;
    if (lines_->rowCount() == 0 || !wrong_->demand()) return;
    shop::GoodsIn goods{supplier_->text().trimmed().toStdString(), reference_->text().trimmed().toStdString(),
                        freight().value_or(Money::minor(0)), std::nullopt, lines_->lines()};
    if (const int chosen = expected_->currentIndex() - 1; chosen >= 0)
        goods.expected = waiting_[static_cast<std::size_t>(chosen)].id;
    std::optional<shop::Received> received;
    if (!session_.attempt([&] { received = shop::receiveGoods(session_.shop(), goods); })) return;
    received_.insert(received_.end(), received->pieces.begin(), received->pieces.end());
    session_.attempt([&] { tellMislabelled(*received); });
    if (printerIsSetUp()) session_.attempt([&] { PaperTray{session_}.printLabels(received->pieces, this); });
    lines_->clear();
    changed_.reset();
    freight_->clear();
    reference_->clear();
    fillExpected();
    session_.touch();
    form_->setFocus();
    check();
}

void GoodsInDialog::reject() {
    const int lines = lines_->rowCount() + (form_->isEmpty() ? 0 : 1);
    if (lines > 0 && !mayThrowAway(*this, tr("Lines entered and not booked yet: %1.").arg(lines))) return;
    QDialog::reject();
}

void GoodsInDialog::tellMislabelled(const shop::Received& received) {
    QStringList codes, wrong;
    for (const auto piece : received.pieces)
        codes << text(store::Pieces{session_.shop().connection}.at(piece).code);
    for (const shop::Mislabelled& each : shop::mislabelled(session_.shop(), received.delivery))
        wrong << tr("Tell the supplier: %1 (%2) is %3 wide, its label says %4; worth %5.")
                     .arg(text(each.piece.code), text(each.belt), shown(each.came), shown(each.labelled),
                          shown(each.missing, session_.currency()));
    const QString file = PaperTray{session_}.labels(received.pieces);
    done_->setText(tr("Booked: %1. Labels are in %2.").arg(codes.join(QStringLiteral(", ")), file) +
                   (wrong.isEmpty() ? QString{} : QLatin1Char('\n') + wrong.join(QLatin1Char('\n'))));
}

} // namespace riband::ui
