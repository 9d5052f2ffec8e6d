#include "ui/rack/rack_page.h"

#include "core/store/people.h"
#include "core/store/upkeep.h"
#include "ui/rack/life_model.h"
#include "ui/rack/piece_view.h"
#include "ui/rack/rack_filter.h"
#include "ui/rack/rack_model.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QKeyEvent>
#include <QLineEdit>
#include <QTableView>

#include <algorithm>

namespace riband::ui {

namespace {
constexpr int PageOfRows = 12;
} // namespace

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
    const bool gone = row && row->piece.gone();
    for (QAction* action : {scrap_, label_, print_, split_, move_}) {
        // Without a marked piece F6 moves what is scanned.
        action->setEnabled(row ? !gone : action == move_);
        action->setToolTip(gone ? tr("%1 is gone from the rack.").arg(text(row->piece.code)) : QString{});
    }
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

void RackPage::showWorth() {
    if (const shop::RackRow* row = current())
        view_->showWorth(model_->worth(model_->rowOf(row->piece.id)), row->piece);
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
