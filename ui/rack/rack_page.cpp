#include "ui/rack/rack_page.h"

#include "core/shop/stock.h"
#include "ui/desk/labels.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/move_dialog.h"
#include "ui/rack/piece_view.h"
#include "ui/rack/rack_filter.h"
#include "ui/rack/rack_model.h"
#include "ui/rack/receive_dialog.h"
#include "ui/rack/scrap_dialog.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QLocale>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr int DetailWidth = 520;
constexpr int RowHeight = 38;
constexpr int PageOfRows = 12;
} // namespace

RackPage::RackPage(Session& session, QWidget* parent)
    : Page{parent}, session_{session}, model_{new RackModel{this}}, filter_{new RackFilter{model_, this}},
      words_{new QLineEdit}, count_{label({}, "remark")}, table_{new QTableView}, view_{new PieceView} {
    setObjectName(QStringLiteral("rack"));
    buildActions();
    buildView();
    connect(words_, &QLineEdit::textChanged, this, &RackPage::filter);
    connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, &RackPage::showCurrent);
}

QAction* RackPage::act(const QString& name, const QKeySequence& key, void (RackPage::*does)()) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

void RackPage::buildActions() {
    goodsIn_ = act(tr("Goods in"), Qt::Key_F8, &RackPage::goodsIn);
    move_ = act(tr("Move"), Qt::Key_F6, &RackPage::movePiece);
    label_ = act(tr("Label"), Qt::Key_F7, &RackPage::labelPiece);
    scrap_ = act(tr("Scrap"), Qt::CTRL | Qt::Key_Delete, &RackPage::scrapPiece);
}

void RackPage::buildView() {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(5 * step, 5 * step, 5 * step, 5 * step);
    row->setSpacing(6 * step);
    row->addWidget(buildList(), 1);
    auto* right = new QVBoxLayout;
    right->setSpacing(2 * step);
    view_->setFixedWidth(DetailWidth);
    right->addWidget(view_, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(2 * step);
    buttons->addWidget(new KeyButton{move_}, 1);
    buttons->addWidget(new KeyButton{label_}, 1);
    buttons->addWidget(new KeyButton{scrap_, KeyButton::Rank::Danger}, 1);
    right->addLayout(buttons);
    right->addWidget(new KeyButton{goodsIn_, KeyButton::Rank::Likely});
    row->addLayout(right);
}

QWidget* RackPage::buildList() {
    words_->setProperty("use", "main");
    words_->setPlaceholderText(tr("find by code, belt, place, batch"));
    words_->setAccessibleName(tr("Find pieces"));
    words_->installEventFilter(this);
    table_->setModel(filter_);
    table_->setAccessibleName(tr("Pieces on the rack"));
    table_->setSortingEnabled(true);
    table_->sortByColumn(RackModel::BeltColumn, Qt::AscendingOrder);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->setWordWrap(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table_->verticalHeader()->setDefaultSectionSize(RowHeight);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addWidget(words_);
    column->addWidget(count_);
    column->addWidget(table_, 1);
    return box;
}

QString RackPage::help() const {
    return tr(
        "Every piece on the rack. Type any words of it: code, belt, kind, place, batch, width; remnants are "
        "found as offcuts too. The arrows choose a piece; its life stands on the right. F8 books goods in.");
}

void RackPage::refresh() {
    const shop::RackRow* before = current();
    const auto kept = before ? std::optional{before->piece.id} : std::nullopt;
    session_.attempt([&] { model_->setPieces(shop::rack(session_.shop()), session_.today()); });
    filter(words_->text());
    if (kept) showPiece(*kept);
    if (!table_->hasFocus()) words_->setFocus();
}

void RackPage::typed(const QString& words) {
    words_->setFocus();
    words_->insert(words);
}

void RackPage::filter(const QString& words) {
    filter_->setWords(words);
    const int found = filter_->rowCount();
    count_->setText(
        found == model_->rowCount()
            ? tr("%1 pieces").arg(QLocale().toString(found))
            : tr("%1 of %2 pieces").arg(QLocale().toString(found), QLocale().toString(model_->rowCount())));
    choose(std::max(0, table_->currentIndex().row()));
}

void RackPage::choose(int proxyRow) {
    if (filter_->rowCount() > 0) table_->selectRow(std::clamp(proxyRow, 0, filter_->rowCount() - 1));
    showCurrent();
}

void RackPage::showPiece(store::PieceId piece) {
    const int row = model_->rowOf(piece);
    if (row < 0) {
        session_.tell(tr("This piece is gone: all of it was cut or scrapped."));
        return;
    }
    if (!filter_->mapFromSource(model_->index(row, 0)).isValid()) words_->clear();
    const QModelIndex at = filter_->mapFromSource(model_->index(row, 0));
    table_->selectRow(at.row());
    table_->scrollTo(at);
}

const shop::RackRow* RackPage::current() const {
    const QModelIndex at = table_->currentIndex();
    if (!at.isValid() || filter_->rowCount() == 0) return nullptr;
    return &model_->row(filter_->mapToSource(at).row());
}

void RackPage::showCurrent() {
    const shop::RackRow* row = current();
    for (QAction* action : {move_, scrap_, label_})
        action->setEnabled(row != nullptr);
    if (!row) return view_->clear();
    session_.attempt([&] {
        store::Pieces pieces{session_.shop().connection};
        const std::string parent = row->piece.parent ? pieces.at(*row->piece.parent).code : std::string{};
        shop::PieceWorths worths{session_.shop()};
        view_->show(*row, parent, worths.of(row->piece), shop::lifeOf(session_.shop(), row->piece.id),
                    session_.today());
    });
}

void RackPage::goodsIn() {
    ReceiveDialog dialog{session_, this};
    dialog.exec();
    if (!dialog.received().empty()) showPiece(dialog.received().back());
}

void RackPage::movePiece() {
    if (!current()) return;
    const store::StockPiece piece = current()->piece;
    std::vector<std::string> places;
    session_.attempt([&] { places = store::Pieces{session_.shop().connection}.places(); });
    MoveDialog dialog{text(piece.code), piece.place, places, this};
    if (dialog.exec() != QDialog::Accepted) return;
    if (!session_.attempt([&] { shop::move(session_.shop(), piece.id, dialog.place()); })) return;
    session_.touch();
    session_.tell(tr("%1 is at %2 now.").arg(text(piece.code), text(dialog.place())));
}

void RackPage::scrapPiece() {
    if (!current()) return;
    const store::StockPiece piece = current()->piece;
    ScrapDialog dialog{piece, this};
    do {
        if (dialog.exec() != QDialog::Accepted) return;
    } while (!session_.attempt(
        [&] { shop::scrap(session_.shop(), piece.id, dialog.extent(), dialog.reason(), dialog.note()); }));
    session_.touch();
    session_.tell(tr("%1 of %2 is scrapped.").arg(shown(dialog.extent()), text(piece.code)));
}

void RackPage::labelPiece() {
    if (!current()) return;
    session_.attempt([&] {
        const QString file = PaperTray{session_}.labels({current()->piece.id});
        session_.tell(tr("The label is in %1.").arg(file));
    });
}

/// The arrows choose while the field keeps the focus, so that one can type on.
bool RackPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched != words_ || event->type() != QEvent::KeyPress) return Page::eventFilter(watched, event);
    const int row = table_->currentIndex().row();
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Down:
        choose(row + 1);
        return true;
    case Qt::Key_Up:
        choose(row - 1);
        return true;
    case Qt::Key_PageDown:
        choose(row + PageOfRows);
        return true;
    case Qt::Key_PageUp:
        choose(row - PageOfRows);
        return true;
    case Qt::Key_Escape:
        words_->clear();
        return true;
    default:
        return false;
    }
}

} // namespace riband::ui
