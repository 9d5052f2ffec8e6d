#include "ui/rack/rack_page.h"

#include "core/store/people.h"
#include "core/store/search.h"
#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/life_model.h"
#include "ui/rack/piece_view.h"
#include "ui/rack/rack_filter.h"
#include "ui/rack/rack_model.h"
#include "ui/rack/rack_words.h"
#include "ui/rack/rack_worths.h"
#include "ui/rack/undo_key.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QLocale>
#include <QScrollBar>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <iterator>
#include <set>

namespace riband::ui {

namespace {
constexpr int DetailWidth = 504;
constexpr int RowHeight = 38;
constexpr int PageOfRows = 12;
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

/// The widest text of a column, a little too wide rather than too narrow: letters are added up one by one, so
/// that 20 000 rows take no time.
int RackPage::widestOf(int column, const QFontMetrics& words) const {
    std::map<QChar, int> letters;
    int widest = 0;
    for (int row = 0; row < model_->rowCount(); ++row) {
        int width = 0;
        for (const QChar letter : model_->index(row, column).data().toString()) {
            const auto [known, isNew] = letters.try_emplace(letter, 0);
            if (isNew) known->second = words.horizontalAdvance(letter);
            width += known->second;
        }
        widest = std::max(widest, width);
    }
    return widest;
}

/// Each as wide as what stands in it, so that no code, figure or place is cut; the belt takes the rest.
void RackPage::sizeColumns() {
    table_->ensurePolished();
    auto& header = *table_->horizontalHeader();
    header.ensurePolished();
    const QFontMetrics words = table_->fontMetrics(), heads = header.fontMetrics();
    const auto advance = [&](const QString& text) { return words.horizontalAdvance(text); };
    const int figure =
        std::max(widestOf(RackModel::WidthColumn, words), advance(shown(Width::millimetres(444))));
    const std::pair<RackModel::Column, int> usual[] = {
        {RackModel::CodeColumn,
         std::max(widestOf(RackModel::CodeColumn, words), advance(QStringLiteral("00W-M")))},
        {RackModel::WidthColumn, figure},
        {RackModel::WorthColumn, advance(shown(Width::millimetres(4444)))},
        {RackModel::KeptColumn, advance(briefly({Width::millimetres(80), 2, 0}))},
        {RackModel::ReservedColumn, widestOf(RackModel::ReservedColumn, words)},
        {RackModel::KindColumn,
         std::max({advance(say(cutting::PieceKind::Remnant)), advance(say(cutting::PieceKind::Sleeve)),
                   advance(say(cutting::PieceKind::Ready))})},
        {RackModel::PlaceColumn,
         std::max(widestOf(RackModel::PlaceColumn, words), advance(QStringLiteral("B3-22")))},
        {RackModel::AgeColumn, advance(daysOld(8888))}};
    constexpr int margins = 16; // of the rows and heads of a dense table, with Qt's own
    for (const auto& [column, wide] : usual) {
        const QString head = model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        header.resizeSection(column, std::max(wide, heads.horizontalAdvance(head)) + margins);
    }
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

void RackPage::filter(const QString& words) {
    const std::vector<std::string> wanted = searchWordsOf(words);
    std::optional<std::vector<store::PieceId>> pieces;
    if (!wanted.empty())
        session_.attempt([&] { pieces = store::findPieces(session_.shop().connection, wanted); });
    const auto gone = goneByCode(words);
    if (gone && pieces) pieces->push_back(gone->piece.id);
    model_->setGone(gone, session_.today());
    filter_->setFound(pieces);
    showCount();
    choose(std::max(0, table_->currentIndex().row()));
    seePieces();
}

/// A piece that is used up is found by its whole code, typed or scanned: what was done can be seen and
/// undone.
std::optional<shop::RackRow> RackPage::goneByCode(const QString& words) {
    std::optional<shop::RackRow> gone;
    session_.attempt([&] {
        store::Connection& connection = session_.shop().connection;
        const auto piece = shop::scan(session_.shop(), words.trimmed().toStdString()).piece;
        if (piece && piece->gone())
            gone = shop::RackRow{*piece, store::Catalogue{connection}.at(piece->belt).designation};
    });
    return gone;
}

void RackPage::showCount() {
    const int found = filter_->rowCount(), all = model_->rowCount() - (model_->hasGone() ? 1 : 0);
    if (model_->hasGone())
        return count_->setText(
            tr("Gone from the rack. Its life can be seen, and what can be undone is by Ctrl+Z."));
    const QString pieces = found == all ? tr("%Ln pieces", nullptr, found)
                                        : tr("%1 of %Ln pieces", nullptr, all).arg(QLocale().toString(found));
    const QString head =
        model_->headerData(filter_->sortColumn(), Qt::Horizontal, Qt::DisplayRole).toString();
    count_->setText(filter_->sortOrder() == Qt::AscendingOrder
                        ? tr("%1 · by %2, upwards (F5)", "pieces, column").arg(pieces, head)
                        : tr("%1 · by %2, downwards (F5)", "pieces, column").arg(pieces, head));
}

/// By what one looks for: what is worth least, what is narrow, what is old come first.
void RackPage::sortNext() {
    constexpr std::pair<int, Qt::SortOrder> turns[] = {
        {RackModel::BeltColumn, Qt::AscendingOrder},  {RackModel::WorthColumn, Qt::AscendingOrder},
        {RackModel::WidthColumn, Qt::AscendingOrder}, {RackModel::AgeColumn, Qt::DescendingOrder},
        {RackModel::PlaceColumn, Qt::AscendingOrder}, {RackModel::CodeColumn, Qt::AscendingOrder}};
    const auto* now = std::find_if(std::begin(turns), std::end(turns),
                                   [this](const auto& turn) { return turn.first == filter_->sortColumn(); });
    const auto* next = now == std::end(turns) || now + 1 == std::end(turns) ? std::begin(turns) : now + 1;
    table_->sortByColumn(next->first, next->second);
    choose(0);
}

/// The worth of what can be seen is found first.
void RackPage::seePieces() {
    const int first = table_->rowAt(0);
    if (first < 0) return;
    const int last = std::min(first + table_->viewport()->height() / RowHeight, filter_->rowCount() - 1);
    std::vector<store::BeltId> belts;
    for (int row = first; row <= last; ++row)
        belts.push_back(model_->row(filter_->mapToSource(filter_->index(row, 0)).row()).piece.belt);
    worths_->see(std::move(belts));
}

bool RackPage::weighed() const { return !reading_->running() && !worths_->busy(); }

void RackPage::showWorth() {
    if (const shop::RackRow* row = current())
        view_->showWorth(model_->worth(model_->rowOf(row->piece.id)), row->piece);
}

void RackPage::choose(int proxyRow) {
    if (filter_->rowCount() > 0) table_->selectRow(std::clamp(proxyRow, 0, filter_->rowCount() - 1));
    showCurrent();
}

void RackPage::showPiece(store::PieceId piece) {
    const int row = model_->rowOf(piece);
    if (row < 0 && !wanted_) { // it may have come since the rack was read
        wanted_ = piece;
        read();
        return;
    }
    wanted_.reset();
    if (row < 0) { // gone: its code finds it
        session_.attempt(
            [&] { words_->setText(text(store::Pieces{session_.shop().connection}.at(piece).code)); });
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
    for (QAction* action : {scrap_, label_, print_, split_})
        action->setEnabled(row && !row->piece.gone());
    for (QAction* action : {undo_, family_})
        action->setEnabled(row != nullptr);
    if (!row) return view_->clear();
    session_.attempt([&] {
        store::Pieces pieces{session_.shop().connection};
        const std::string parent = row->piece.parent ? pieces.at(*row->piece.parent).code : std::string{};
        const auto life = shop::lifeOf(session_.shop(), row->piece.id);
        view_->show(*row, parent, model_->worth(model_->rowOf(row->piece.id)), life,
                    upkeepOf(row->piece.id, life), session_.today());
    });
}

PieceUpkeep RackPage::upkeepOf(store::PieceId piece, const std::vector<store::RecordedMovement>& life) const {
    store::Connection& connection = session_.shop().connection;
    const store::Upkeep upkeep{connection};
    const store::Orders orders{connection};
    PieceUpkeep known{upkeep.relocationsOf(piece), upkeep.inspectionsOf(piece), initials(), {}, {}};
    for (const store::RecordedMovement& recorded : life) {
        if (const auto grams = upkeep.gramsOf(recorded.id)) known.grams.emplace(recorded.id, *grams);
        for (const store::Posting& posting : recorded.movement.postings())
            if (posting.line && !known.orders.contains(*posting.line))
                known.orders.emplace(*posting.line, orders.at(orders.orderOf(*posting.line)).code);
    }
    return known;
}

std::map<store::PersonId, std::string> RackPage::initials() const {
    std::map<store::PersonId, std::string> people;
    for (const store::Person& person : store::People{session_.shop().connection}.all())
        people.emplace(person.id, person.initials);
    return people;
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
