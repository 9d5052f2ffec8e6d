#include "ui/rack/ageing_dialog.h"

#include "core/shop/shelf_ticket.h"
#include "core/shop/stock.h"
#include "ui/desk/labels.h"
#include "ui/desk/list_file.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/ageing_model.h"
#include "ui/rack/scrap_dialog.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr int UsualMonths = 6, MostMonths = 120;
constexpr int DaysOfAMonth = 30;
constexpr int PlaceWidth = 160;
} // namespace

AgeingDialog::AgeingDialog(Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, model_{new AgeingModel{this}}, table_{new QTableView},
      months_{new QSpinBox}, place_{new QLineEdit}, reading_{new Reading{session, this}},
      sum_{label({}, "strong")}, said_{label({}, "gain")} {
    setWindowTitle(tr("What ages, and what is not worth its place"));
    setWhatsThis(
        tr("What passes its shelf life, and what is worth less than its place costs. Each line says "
           "what could still be sold of it. An inspection that finds a piece sound lengthens its "
           "life; the rest is cut into ready belts or scrapped. A place (Ctrl+F) leaves what lies there: who "
           "stands before a bay goes through it from bin to bin."));
    buildView();
    if (session_.reaches(store::Role::Owner)) model_->setCurrency(session_.currency());
    table_->setColumnHidden(AgeingModel::CostColumn, !session_.reaches(store::Role::Owner));
    connect(months_, &QSpinBox::valueChanged, this, &AgeingDialog::look);
    connect(place_, &QLineEdit::textChanged, this, &AgeingDialog::showRows);
    connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, &AgeingDialog::follow);
    sum_->setText(tr("Looking through the rack …"));
    follow();
    look();
}

void AgeingDialog::buildView() {
    months_->setRange(0, MostMonths);
    months_->setValue(UsualMonths);
    months_->setAccessibleName(tr("Months from today"));
    table_->setModel(model_);
    table_->setAccessibleName(tr("Pieces that age out or cost more than they are good for"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setStretchLastSection(true);
    const auto button = [this](const QString& words, const QKeySequence& key, KeyButton::Rank rank,
                               auto does) {
        auto* made = new KeyButton{words, key, rank};
        connect(made, &KeyButton::clicked, this, does);
        return made;
    };
    sound_ = button(tr("Inspected: sound"), Qt::Key_F6, KeyButton::Rank::Likely, [this] { inspect(true); });
    bad_ = button(tr("Inspected: bad"), Qt::Key_F7, KeyButton::Rank::Plain, [this] { inspect(false); });
    offer_ = button(tr("Into ready belts"), Qt::Key_F8, KeyButton::Rank::Plain, [this] { offer(); });
    scrap_ = button(tr("Scrap"), Qt::CTRL | Qt::Key_Delete, KeyButton::Rank::Danger, [this] { scrap(); });
    back_ = button(tr("Take it back"), Qt::CTRL | Qt::Key_Z, KeyButton::Rank::Plain, [this] { takeBack(); });
    back_->setAccessibleDescription(tr("The last inspection"));
    auto* keep =
        button(tr("Save the list"), Qt::CTRL | Qt::Key_E, KeyButton::Rank::Plain, [this] { save(); });
    auto* remark = label(tr("Periods by the body of the belt, as Shop → Shelf life has them (ISO 2230:2002 "
                            "unless it was changed there). Sound is supple, without cracks, "
                            "without set from lying folded; bent hard over a small shaft nothing shows."),
                         "remark");
    for (QLabel* words : {remark, said_, sum_})
        words->setWordWrap(true);
    place_->setAccessibleName(tr("Only at this place"));
    place_->setObjectName(QStringLiteral("place"));
    place_->setPlaceholderText(tr("every place"));
    place_->setMaximumWidth(PlaceWidth);
    auto* asked = label(tr("At &place"));
    asked->setBuddy(place_);
    auto* find = new QAction{tr("Only at this place"), this};
    find->setShortcut(Qt::CTRL | Qt::Key_F);
    connect(find, &QAction::triggered, this, [this] {
        place_->setFocus();
        place_->selectAll();
    });
    addAction(find);
    auto* head = new QHBoxLayout;
    head->addWidget(label(tr("Months from today")));
    head->addWidget(months_);
    head->addWidget(asked);
    head->addWidget(place_);
    head->addWidget(sum_, 1);
    auto* buttons = new QHBoxLayout;
    for (KeyButton* each : {sound_, bad_, back_, offer_, scrap_, keep})
        buttons->addWidget(each, 1);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(2 * step);
    column->addLayout(head);
    column->addWidget(table_, 1);
    column->addWidget(remark);
    column->addWidget(said_);
    column->addLayout(buttons);
    resize(1320, 640);
    table_->setFocus();
}

void AgeingDialog::look() {
    reading_->start([within = std::chrono::days{months_->value() * DaysOfAMonth}](
                        const shop::Shop& shop) { return ageingRows(shop, within); },
                    [this](AgeingRows rows) {
                        rows_ = std::move(rows);
                        showRows();
                    });
}

AgeingRows AgeingDialog::atPlace() const {
    const std::string typed = place_->text().trimmed().toStdString();
    AgeingRows rows = rows_;
    if (!typed.empty())
        session_.attempt(
            [&] { rows = rowsAt(rows_, typed, store::Places{session_.shop().connection}.all()); });
    return rows;
}

void AgeingDialog::showRows() {
    const AgeingRows rows = atPlace();
    Money bound = Money::minor(0);
    for (const shop::AgeingPiece& aged : rows.ageing)
        bound = bound + aged.piece.cost;
    QString aged = tr("Age out: %1").arg(rows.ageing.size());
    if (session_.reaches(store::Role::Owner))
        aged += tr(", %1 at cost").arg(shown(bound, session_.currency()));
    sum_->setText(aged + tr(" · not worth their place: %1").arg(rows.burdens.size()));
    const int row = table_->currentIndex().row();
    model_->show(rows, session_.today());
    if (model_->rowCount() > 0) table_->selectRow(std::clamp(row, 0, model_->rowCount() - 1));
    follow();
}

std::optional<store::StockPiece> AgeingDialog::current() const {
    const int row = table_->currentIndex().row();
    if (row < 0 || row >= model_->rowCount()) return std::nullopt;
    return model_->piece(row);
}

void AgeingDialog::follow() {
    const bool any = current().has_value();
    scrap_->setEnabled(any);
    const auto burden = any ? model_->burden(table_->currentIndex().row()) : std::nullopt;
    offer_->setEnabled(burden && burden->advice == shop::Burden::Advice::Offer);
    for (KeyButton* button : {sound_, bad_})
        button->setEnabled(any && model_->ages(table_->currentIndex().row()));
    back_->setEnabled(!inspected_.empty());
}

void AgeingDialog::inspect(bool sound) {
    const auto piece = current();
    std::optional<Date> until;
    if (!piece || !session_.attempt([&] { until = shop::inspect(session_.shop(), piece->id, sound, {}); }))
        return;
    said_->setText(until ? tr("%1 may be used until %2.").arg(text(piece->code), shown(*until))
                         : tr("%1 is not to be sold any more: scrap it.").arg(text(piece->code)));
    inspected_.push_back(*piece);
    session_.touch();
    look();
}

/// A key was pressed for the wrong piece: its day is again what it was.
void AgeingDialog::takeBack() {
    if (inspected_.empty()) return;
    const store::StockPiece piece = inspected_.back();
    if (!session_.attempt([&] { shop::undoInspection(session_.shop(), piece.id); })) return;
    inspected_.pop_back();
    said_->setText(tr("The inspection of %1 is taken back.").arg(text(piece.code)));
    session_.touch();
    look();
}

/// The proposal is taken: its ticket waits on the Bench, and its paper is made.
void AgeingDialog::offer() {
    const auto burden = current() ? model_->burden(table_->currentIndex().row()) : std::nullopt;
    if (!burden || !burden->width) return;
    QString code, file;
    const bool made = session_.attempt([&] {
        const store::TicketId ticket =
            shop::cutForShelf(session_.shop(), burden->piece.id, *burden->width, burden->belts);
        code = text(store::Tickets{session_.shop().connection}.at(ticket).code);
        file = PaperTray{session_}.ticket(ticket);
    });
    if (code.isEmpty()) return;
    said_->setText(tr("Ticket %1 on the Bench cuts %2 into %3 × %4 for the shelf.")
                       .arg(code, text(burden->piece.code))
                       .arg(burden->belts)
                       .arg(shown(*burden->width)) +
                   (made ? QLatin1Char(' ') + tr("It is in %1.").arg(file) : QString{}));
    session_.touch();
    look();
}

void AgeingDialog::scrap() {
    const auto piece = current();
    if (!piece) return;
    std::optional<shop::Spare> spare;
    if (!session_.attempt([&] { spare = shop::spareOf(session_.shop(), *piece); })) return;
    ScrapDialog dialog{*piece, *spare, this};
    dialog.suggest(store::ScrapReason::Aged);
    do {
        if (dialog.exec() != QDialog::Accepted) return;
    } while (!session_.attempt([&] {
        shop::scrap(session_.shop(), piece->id, dialog.extent(), dialog.reason(), dialog.note(),
                    dialog.grams());
    }));
    said_->setText(tr("%1 of %2 is scrapped.").arg(shown(dialog.extent()), text(piece->code)));
    session_.touch();
    look();
}

void AgeingDialog::save() {
    session_.attempt([&] {
        said_->setText(tr("The list is in %1.").arg(saveList(session_, *model_, QStringLiteral("ageing"))));
    });
}

} // namespace riband::ui
