#include "ui/rack/piece_view.h"

#include "ui/desk/labels.h"
#include "ui/drawing/pictures.h"
#include "ui/look/look.h"
#include "ui/rack/life_model.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

PieceView::PieceView(QWidget* parent)
    : QFrame{parent}, title_{label({}, "head")}, belt_{label({}, "strong")}, facts_{label({}, "remark")},
      band_{new BandWidget{BandSize::Large}}, life_{new LifeModel{this}}, lifeView_{new QTableView} {
    setProperty("surface", "sunk");
    setAccessibleName(tr("The piece"));
    buildView();
    clear();
}

void PieceView::buildView() {
    facts_->setWordWrap(true);
    lifeView_->setModel(life_);
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
    band_->setMinimumHeight(110);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(4 * step, 3 * step, 4 * step, 3 * step);
    column->setSpacing(2 * step);
    column->addWidget(title_);
    column->addWidget(belt_);
    column->addWidget(facts_);
    column->addWidget(band_);
    column->addWidget(label(tr("Its life"), "part"));
    column->addWidget(lifeView_, 1);
}

void PieceView::show(const shop::RackRow& row, const std::string& parent,
                     const std::vector<store::RecordedMovement>& life, Date today) {
    const store::StockPiece& piece = row.piece;
    title_->setText(tr("%1 %2", "kind, code").arg(say(piece.kind), text(piece.code)));
    belt_->setText(tr("%1, %2", "belt, width").arg(text(row.belt), shown(piece.extent)));
    QStringList facts{piece.place.empty() ? tr("no place yet") : tr("place %1").arg(text(piece.place)),
                      tr("received %1").arg(shown(piece.received))};
    if (piece.made) facts << tr("made %1").arg(shown(*piece.made));
    if (!piece.batch.empty()) facts << tr("batch %1").arg(text(piece.batch));
    if (!parent.empty()) facts << tr("cut from %1").arg(text(parent));
    facts << tr("%n days old", nullptr, static_cast<int>((today - piece.born()).count()));
    facts_->setText(facts.join(QStringLiteral(" · ")));
    band_->show(pictureOf(piece));
    life_->setLife(piece.id, piece.extent.unit(), life);
}

void PieceView::clear() {
    title_->setText(tr("No piece"));
    belt_->clear();
    facts_->setText(tr("Nothing on the rack has all these words."));
    band_->clear();
    life_->clear();
}

} // namespace riband::ui
