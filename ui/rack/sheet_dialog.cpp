#include "ui/rack/sheet_dialog.h"

#include "ui/desk/labels.h"
#include "ui/desk/unsaved.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/take_over.h"
#include "ui/words/sheet_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QProgressBar>
#include <QTableWidget>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

using shop::SheetField;
constexpr std::size_t MostShown = 500;
constexpr qint64 LargestFile = 64 << 20;
constexpr SheetField Fields[] = {SheetField::Ignored,      SheetField::Belt,         SheetField::Profile,
                                 SheetField::Length,       SheetField::Construction, SheetField::Kind,
                                 SheetField::Width,        SheetField::Ribs,         SheetField::Sleeves,
                                 SheetField::Received,     SheetField::Made,         SheetField::Place,
                                 SheetField::Batch,        SheetField::Cost,         SheetField::Piece,
                                 SheetField::SupplierCode, SheetField::Labelled};

QTableWidget* list(const QString& name, const QStringList& head) {
    auto* table = new QTableWidget{0, static_cast<int>(head.size())};
    table->setAccessibleName(name);
    table->setHorizontalHeaderLabels(head);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    return table;
}

void put(QTableWidget& table, int row, const QStringList& words) {
    for (int column = 0; column < words.size(); ++column)
        table.setItem(row, column, new QTableWidgetItem{words[column]});
}

} // namespace

SheetDialog::SheetDialog(Session& session, For what, QWidget* parent)
    : QDialog{parent}, session_{session}, for_{what}, path_{new QLineEdit}, unit_{new QComboBox},
      columns_{list(tr("Columns"), {tr("Column"), tr("First row"), tr("Holds")})},
      rows_{list(tr("Rows"), {tr("Line"), tr("What would be taken in, or why not"), tr("Place"), tr("Made"),
                              tr("Cost of each")})},
      verdict_{label({}, "strong")}, progress_{new QProgressBar} {
    setWindowTitle(what == For::Stock ? tr("Take over a stock") : tr("A delivery from a file"));
    setWhatsThis(
        tr("Say for each column of the file what it holds; the rows below show at once what would be "
           "taken in, and which rows are wrong and why. All or nothing is taken: while a row is "
           "wrong nothing is, so mend it in the file and choose that again."));
    buildView();
    connect(path_, &QLineEdit::returnPressed, this, [this] { load(path_->text().trimmed()); });
    connect(unit_, &QComboBox::currentIndexChanged, this, &SheetDialog::read);
    read();
}

SheetDialog::~SheetDialog() {
    if (stop_) stop_->store(true);
}

void SheetDialog::buildView() {
    path_->setAccessibleName(tr("Table"));
    path_->setObjectName(QStringLiteral("path"));
    path_->setPlaceholderText(tr("a file saved as CSV; Enter reads it"));
    unit_->setAccessibleName(tr("Widths without a unit are in"));
    unit_->addItems({tr("mm"), tr("cm"), tr("inch")});
    auto* open = new KeyButton{tr("Choose a file"), Qt::CTRL | Qt::Key_O};
    connect(open, &KeyButton::clicked, this, &SheetDialog::choose);
    take_ = new KeyButton{for_ == For::Stock ? tr("Take all of it in") : tr("Take the lines over"),
                          Qt::Key_F9, KeyButton::Rank::Likely};
    connect(take_, &KeyButton::clicked, this, &SheetDialog::accept);
    auto* file = new QHBoxLayout;
    file->addWidget(path_, 1);
    file->addWidget(open);
    auto* form = new QFormLayout;
    form->addRow(tr("Widths without a &unit are in"), unit_);
    verdict_->setWordWrap(true);
    progress_->setAccessibleName(tr("Progress"));
    progress_->hide();
    columns_->verticalHeader()->setDefaultSectionSize(pressHeight);
    for (const int narrow : {0, 2, 3, 4})
        rows_->horizontalHeader()->setSectionResizeMode(narrow, QHeaderView::ResizeToContents);
    auto* column = new QVBoxLayout{this};
    column->addLayout(file);
    column->addWidget(columns_, 1);
    column->addLayout(form);
    column->addWidget(rows_, 1);
    column->addWidget(verdict_);
    column->addWidget(progress_);
    column->addWidget(take_);
    setMinimumSize(860, 640);
    path_->setFocus();
}

void SheetDialog::choose() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Choose a table"), {},
                                                      tr("Tables (*.csv *.txt *.tsv);;All files (*)"));
    if (path.isEmpty()) return;
    path_->setText(path);
    load(path);
}

bool SheetDialog::load(const QString& path) {
    path_->setText(path);
    table_.reset();
    QString fault;
    QFile file{path};
    if (!file.open(QIODevice::ReadOnly))
        fault = tr("%1 can't be read: %2").arg(path, file.errorString());
    else if (file.size() > LargestFile)
        fault = tr("%1 is over 64 MiB. Split it.").arg(path);
    else if (auto table = CsvTable::read(asUtf8(file.readAll().toStdString())); table)
        table_ = std::move(table.value());
    else
        fault = say(table.reason());
    showColumns();
    read();
    if (!fault.isEmpty()) verdict_->setText(fault);
    return table_.has_value();
}

void SheetDialog::showColumns() {
    columns_->setRowCount(0);
    if (!table_) return;
    matched_ = false;
    const auto& head = table_->head();
    const shop::SheetMatch guess = shop::guessMatch(head);
    columns_->setRowCount(static_cast<int>(head.size()));
    for (std::size_t i = 0; i < head.size(); ++i) {
        const int row = static_cast<int>(i);
        const std::string first = table_->rows().empty() ? std::string{} : table_->rows().front().fields[i];
        put(*columns_, row, {text(head[i]), text(first)});
        auto* holds = new QComboBox;
        holds->setAccessibleName(tr("Column %1 holds").arg(text(head[i])));
        for (const SheetField field : Fields)
            holds->addItem(say(field), static_cast<int>(field));
        holds->setCurrentIndex(holds->findData(static_cast<int>(guess.columns[i])));
        connect(holds, &QComboBox::currentIndexChanged, this, [this] {
            matched_ = true;
            read();
        });
        columns_->setCellWidget(row, 2, holds);
    }
}

shop::SheetMatch SheetDialog::match() const {
    shop::SheetMatch match{{}, static_cast<shop::SheetUnit>(unit_->currentIndex())};
    for (int row = 0; row < columns_->rowCount(); ++row) {
        const auto* holds = qobject_cast<QComboBox*>(columns_->cellWidget(row, 2));
        match.columns.push_back(static_cast<SheetField>(holds->currentData().toInt()));
    }
    return match;
}

void SheetDialog::read() {
    sheet_ = {};
    rows_->setRowCount(0);
    rows_->clearSpans();
    take_->setEnabled(false);
    if (!table_) return verdict_->setText(tr("No table yet."));
    const shop::SheetMatch matched = match();
    if (const auto gap = shop::gapOf(matched)) return verdict_->setText(say(*gap));
    if (!session_.attempt([&] { sheet_ = shop::readSheet(session_.shop(), *table_, matched); })) return;
    showSheet();
}

/// Bad rows first: these a person must see.
void SheetDialog::showSheet() {
    const std::size_t faults = std::min(sheet_.faults.size(), MostShown);
    const std::size_t good = std::min(sheet_.rows.size(), MostShown - faults);
    rows_->setRowCount(static_cast<int>(faults + good));
    int row = 0;
    for (std::size_t i = 0; i < faults; ++i) {
        put(*rows_, row,
            {QString::number(sheet_.faults[i].line),
             say(sheet_.faults[i], table_->head(), session_.tables())});
        rows_->setSpan(row, 1, 1, rows_->columnCount() - 1);
        rows_->item(row++, 1)->setForeground(Look::current().danger);
    }
    int fresh = 0, guessed = 0, remnants = 0, costless = 0;
    for (const shop::SheetRow& each : sheet_.rows) {
        fresh += each.newBelt ? 1 : 0;
        guessed += each.kindGuessed ? 1 : 0;
        costless += each.delivery.costEach == Money::minor(0) ? 1 : 0;
        remnants += each.kindGuessed && each.delivery.kind == cutting::PieceKind::Remnant ? 1 : 0;
    }
    for (std::size_t i = 0; i < good; ++i) {
        const shop::SheetRow& each = sheet_.rows[i];
        const QString words =
            tr("%1 x %2, %3, %4")
                .arg(each.delivery.sleeves)
                .arg(text(belt::designation(each.delivery.belt)), shown(each.delivery.extent),
                     each.kindGuessed ? tr("%1 by its width").arg(say(each.delivery.kind))
                                      : say(each.delivery.kind));
        put(*rows_, row++,
            {QString::number(each.line), each.newBelt ? tr("%1 · new to the shop").arg(words) : words,
             text(each.delivery.place), each.delivery.made ? shown(*each.delivery.made) : QString{},
             each.delivery.costEach == Money::minor(0) ? QString{}
                                                       : shown(each.delivery.costEach, session_.currency())});
    }
    rows_->resizeRowsToContents(); // a reason is read to its end
    const bool whole = sheet_.faults.empty() && !sheet_.rows.empty();
    verdict_->setText(whole ? tr("Rows that can be taken in: %1; of belts new to the shop: %2.")
                                  .arg(sheet_.rows.size())
                                  .arg(fresh)
                            : tr("Faults: %1. Nothing is taken in until they are put right in the file.")
                                  .arg(sheet_.faults.size()));
    if (whole && costless > 0)
        verdict_->setText(
            verdict_->text() + QLatin1Char('\n') +
            tr("Rows without a cost: %1. What is cut from those pieces will be in no margin, and they "
               "have no worth in money. A column Cost gives it.")
                .arg(costless));
    if (whole && guessed > 0) verdict_->setText(verdict_->text() + QLatin1Char('\n') + guessWords(remnants));
    take_->setEnabled(whole);
}

/// No column says what the rows are: that is said, and what to do where it is wrong.
QString SheetDialog::guessWords(int remnants) const {
    const QString guess =
        remnants == 0 ? tr("No column says the kind. By their widths all are sleeves.")
                      : tr("No column says the kind. As wide as a known sleeve of its belt is a sleeve; "
                           "narrower, and so taken for remnants, are %1.")
                            .arg(remnants);
    const QString mend = for_ == For::Delivery ? tr("Where that is wrong, change the line in Goods in (F2).")
                                               : tr("Where that is wrong, give the file a column Kind.");
    return guess + QLatin1Char(' ') + mend;
}

std::vector<shop::Delivery> SheetDialog::deliveries() const { return sheet_.deliveries(); }

void SheetDialog::accept() {
    if (!take_->isEnabled() || working()) return;
    if (for_ == For::Delivery) return QDialog::accept();
    take_->setEnabled(false);
    progress_->show();
    verdict_->setText(tr("Taking in. Escape stops it, and nothing is kept then."));
    stop_ = takeOver(
        session_, sheet_.deliveries(), this, [this](int percent) { progress_->setValue(percent); },
        [this](const QString& failure, std::size_t pieces) { booked(failure, pieces); });
}

/// Escape stops what is being booked; nothing of it is kept then.
void SheetDialog::reject() {
    if (stop_) return stop_->store(true);
    if (matched_ && !mayThrowAway(*this, tr("What the columns hold is said, and nothing is taken in yet.")))
        return;
    QDialog::reject();
}

void SheetDialog::booked(const QString& failure, std::size_t pieces) {
    stop_.reset();
    progress_->hide();
    if (!failure.isEmpty()) {
        verdict_->setText(failure);
        take_->setEnabled(true);
        return;
    }
    session_.touch();
    session_.tell(tr("Pieces taken in: %1.").arg(pieces));
    QDialog::accept();
}

} // namespace riband::ui
