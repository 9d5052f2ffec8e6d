#include "ui/rack/piece_view.h"

#include "ui/desk/labels.h"
#include "ui/drawing/pictures.h"
#include "ui/look/look.h"
#include "ui/rack/life_model.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHeaderView>
#include <QLabel>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

/// What was done stands under its day: where the width went needs the room.
class DayAndAct final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

protected:
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
        QStyledItemDelegate::initStyleOption(option, index);
        option->text +=
            QChar{QChar::LineSeparator} + index.siblingAtColumn(LifeModel::ActColumn).data().toString();
    }
};

} // namespace

PieceView::PieceView(QWidget* parent)
    : QFrame{parent}, title_{label({}, "head")}, belt_{label({}, "strong")}, facts_{label({}, "remark")},
      worth_{label({}, "remark")}, band_{new BandWidget{BandSize::Large}}, life_{new LifeModel{this}},
      lifeView_{new QTableView} {
    setProperty("surface", "sunk");
    setAccessibleName(tr("The piece"));
    buildView();
    clear();
}

void PieceView::buildView() {
    facts_->setWordWrap(true);
    lifeView_->setModel(life_);
    lifeView_->setProperty("rows", "close");
    lifeView_->horizontalHeader()->setProperty("rows", "dense");
    lifeView_->setItemDelegateForColumn(LifeModel::DayColumn, new DayAndAct{lifeView_});
    lifeView_->setColumnHidden(LifeModel::ActColumn, true);
    lifeView_->setAccessibleName(tr("Life of the piece"));
    lifeView_->verticalHeader()->hide();
    lifeView_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    lifeView_->horizontalHeader()->setStretchLastSection(true);
    lifeView_->setShowGrid(false);
    lifeView_->setSelectionMode(QAbstractItemView::SingleSelection);
    lifeView_->setSelectionBehavior(QAbstractItemView::SelectRows);
    lifeView_->setTabKeyNavigation(false);
    lifeView_->setWordWrap(true);
    lifeView_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    lifeView_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    band_->setMinimumHeight(92);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(4 * step, 3 * step, 4 * step, 3 * step);
    column->setSpacing(2 * step);
    column->addWidget(title_);
    column->addWidget(belt_);
    column->addWidget(facts_);
    worth_->setWordWrap(true);
    column->addWidget(worth_);
    column->addWidget(band_);
    column->addWidget(lifeView_, 1);
}

namespace {

QString worthWords(const RackModel::Worth& known, const store::StockPiece& piece) {
    if (piece.kind == cutting::PieceKind::Ready || piece.gone()) return {};
    if (!known.known) return PieceView::tr("its worth is being found …");
    const auto& worth = known.worth;
    if (!worth) return PieceView::tr("no worth table of this belt yet");
    if (worth->worth.isNone()) return PieceView::tr("worth nothing: no listed width can be cut from it");
    const QString of = PieceView::tr("worth %1 of its %2").arg(shown(worth->worth), shown(piece.extent));
    if (!worth->keptFor) return of;
    return of + QStringLiteral(" · ") + PieceView::tr("kept for %1").arg(say(*worth->keptFor));
}

} // namespace

void PieceView::show(const shop::RackRow& row, const std::string& parent, const RackModel::Worth& worth,
                     const std::vector<store::RecordedMovement>& life, const PieceUpkeep& upkeep,
                     Date today) {
    const store::StockPiece& piece = row.piece;
    title_->setText(tr("%1 %2", "kind, code").arg(say(piece.kind), text(piece.code)));
    belt_->setText(
        tr("%1, %2", "belt, width").arg(text(row.belt), piece.gone() ? tr("gone") : shown(piece.extent)));
    QStringList facts{piece.place.empty() ? tr("no place yet") : tr("place %1").arg(text(piece.place)),
                      tr("received %1").arg(shown(piece.received))};
    if (piece.made) facts << tr("made %1").arg(shown(*piece.made));
    if (!piece.batch.empty()) facts << tr("batch %1").arg(text(piece.batch));
    if (!parent.empty()) facts << tr("cut from %1").arg(text(parent));
    facts << tr("%n days old", nullptr, static_cast<int>((today - piece.born()).count()));
    facts_->setText(facts.join(QStringLiteral(" · ")));
    showWorth(worth, piece);
    if (piece.gone())
        band_->clear();
    else
        band_->show(pictureOf(piece));
    life_->setLife(piece.id, piece.extent.unit(), life, upkeep);
    lifeView_->scrollToBottom(); // what was done last is looked for first
}

void PieceView::showWorth(const RackModel::Worth& worth, const store::StockPiece& piece) {
    worth_->setText(worthWords(worth, piece));
    worth_->setVisible(!worth_->text().isEmpty());
}

int PieceView::chosenRow() const {
    const QModelIndex at = lifeView_->currentIndex();
    return at.isValid() ? at.row() : life_->rowCount() - 1;
}

void PieceView::clear() {
    title_->setText(tr("No piece"));
    belt_->clear();
    facts_->setText(tr("Nothing on the rack has all these words."));
    worth_->setVisible(false);
    band_->clear();
    life_->clear();
}

} // namespace riband::ui
