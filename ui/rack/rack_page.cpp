#include "ui/rack/rack_page.h"

#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/piece_view.h"
#include "ui/rack/rack_filter.h"
#include "ui/rack/rack_model.h"
#include "ui/rack/rack_words.h"
#include "ui/rack/rack_worths.h"
#include "ui/rack/undo_key.h"
#include "ui/words/words.h"

#include <QAction>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QScrollBar>
#include <QTableView>
#include <QVBoxLayout>

#include <array>
#include <set>

namespace riband::ui {

namespace {
constexpr int DetailWidth = 504;
constexpr int RowHeight = 38;
} // namespace

RackPage::RackPage(Session& session, QWidget* parent)
    : Page{parent}, session_{session}, model_{new RackModel{this}}, filter_{new RackFilter{model_, this}},
      words_{new QLineEdit}, count_{label({}, "remark")}, table_{new QTableView}, view_{new PieceView},
      reading_{new Reading{session, this}}, worths_{new RackWorths{session, this}} {
    setObjectName(QStringLiteral("rack"));
    buildActions();
    buildView();
    connect(words_, &QLineEdit::textChanged, this, &RackPage::filter);
    connect(worths_, &RackWorths::found, this, [this](const RackWorths::Found& worths) {
        model_->setWorths(worths);
        showWorth();
    });
    connect(worths_, &RackWorths::finished, filter_, &RackFilter::sortWorths);
    connect(table_->horizontalHeader(), &QHeaderView::sortIndicatorChanged, this, &RackPage::showCount);
    connect(table_->verticalScrollBar(), &QScrollBar::valueChanged, this, &RackPage::seePieces);
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
    expected_ = act(tr("Expected"), Qt::SHIFT | Qt::Key_F8, &RackPage::showExpected);
    move_ = act(tr("Move"), Qt::Key_F6, &RackPage::movePieces);
    label_ = act(tr("Label"), Qt::Key_F7, &RackPage::labelPiece);
    print_ = act(tr("Print the label"), QKeySequence::Print, &RackPage::printLabel);
    scrap_ = act(tr("Scrap"), Qt::CTRL | Qt::Key_Delete, &RackPage::scrapPiece);
    split_ = act(tr("Divide"), Qt::CTRL | Qt::Key_T, &RackPage::splitPiece);
    undo_ = act(tr("Undo"), Qt::CTRL | Qt::Key_Z, &RackPage::undoAct);
    family_ = act(tr("Family"), Qt::Key_F9, &RackPage::showFamily);
    ageing_ = act(tr("Ageing"), Qt::Key_F10, &RackPage::showAgeing);
    takeOver_ = act(tr("Take over a stock"), Qt::CTRL | Qt::Key_O, &RackPage::takeOverStock);
    act(tr("Places"), Qt::CTRL | Qt::Key_L, &RackPage::showPlaces);
    act(tr("Sort by the next column"), Qt::Key_F5, &RackPage::sortNext);
    act(tr("Save the life of the piece"), Qt::CTRL | Qt::SHIFT | Qt::Key_E, &RackPage::saveLife);
    save_ = act(tr("Save the list"), Qt::CTRL | Qt::Key_E, &RackPage::saveShownList);
}

void RackPage::buildView() {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(5 * step, 5 * step, 5 * step, 5 * step);
    row->setSpacing(6 * step);
    row->addWidget(buildList(), 3);
    auto* right = new QVBoxLayout;
    right->setSpacing(2 * step);
    view_->setMinimumWidth(DetailWidth);
    right->addWidget(view_, 1);
    right->addLayout(buildActs());
    auto* goods = new QHBoxLayout;
    goods->setSpacing(2 * step);
    goods->addWidget(new KeyButton{expected_}, 1);
    goods->addWidget(new KeyButton{goodsIn_, KeyButton::Rank::Likely}, 2);
    right->addLayout(goods);
    row->addLayout(right, 2);
}

QLayout* RackPage::buildActs() {
    auto* acts = new QGridLayout;
    acts->setSpacing(2 * step);
    const std::array buttons{move_, label_, split_, family_, undo_, ageing_};
    for (std::size_t i = 0; i < buttons.size(); ++i)
        acts->addWidget(new KeyButton{buttons[i]}, static_cast<int>(i / 3), static_cast<int>(i % 3));
    acts->addWidget(new KeyButton{save_}, 2, 0);
    acts->addWidget(new KeyButton{takeOver_}, 2, 1);
    acts->addWidget(new KeyButton{scrap_, KeyButton::Rank::Danger}, 2, 2);
    return acts;
}

QWidget* RackPage::buildList() {
    words_->setProperty("use", "main");
    words_->setPlaceholderText(tr("find by code, belt, place, batch"));
    words_->setAccessibleName(tr("Find pieces"));
    words_->installEventFilter(this);
    new UndoKey{words_};
    table_->setModel(filter_);
    table_->setObjectName(QStringLiteral("pieces"));
    table_->setAccessibleName(tr("Pieces on the rack"));
    table_->setSortingEnabled(true);
    table_->sortByColumn(RackModel::BeltColumn, Qt::AscendingOrder);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->setWordWrap(false);
    table_->setProperty("rows", "dense");
    table_->horizontalHeader()->setProperty("rows", "dense");
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table_->horizontalHeader()->setSectionResizeMode(RackModel::BeltColumn, QHeaderView::Stretch);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table_->verticalHeader()->setDefaultSectionSize(RowHeight);
    sizeColumns();
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
        "found as offcuts too; a piece that is gone by its whole code. A piece's worth is how much of its "
        "width will serve orders to come; beside it "
        "stands "
        "the order that it is most kept for. The arrows choose a piece; its life stands on the right. F8 "
        "books goods in, "
        "Shift+F8 notes what is expected, "
        "F6 moves many by "
        "scanner, F5 sorts by the next column: what is worth least, is narrowest, is oldest comes first. "
        "F9 shows all that became of a sleeve, Ctrl+Z undoes what is chosen in its life.");
}

void RackPage::refresh() {
    read();
    if (!table_->hasFocus()) words_->setFocus();
}

void RackPage::read() {
    reading_->start(shop::rack, [this](std::vector<shop::RackRow> rows) { setRows(std::move(rows)); });
}

void RackPage::setRows(std::vector<shop::RackRow> rows) {
    const shop::RackRow* before = current();
    const auto kept = wanted_ ? wanted_ : before ? std::optional{before->piece.id} : std::nullopt;
    const bool asked = wanted_.has_value();
    std::set<store::BeltId> belts;
    for (const shop::RackRow& row : rows)
        belts.insert(row.piece.belt);
    model_->setPieces(std::move(rows), session_.today());
    sizeColumns();
    filter(words_->text());
    worths_->find({belts.begin(), belts.end()});
    if (kept && (asked || model_->rowOf(*kept) >= 0)) showPiece(*kept);
}

void RackPage::typed(const QString& words) {
    words_->setFocus();
    words_->insert(words);
}

void RackPage::takeBelt(const QString& belt) {
    words_->setText(belt);
    words_->setFocus();
}

} // namespace riband::ui
