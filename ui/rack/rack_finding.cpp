#include "ui/rack/rack_page.h"

#include "core/store/search.h"
#include "ui/rack/rack_filter.h"
#include "ui/rack/rack_model.h"
#include "ui/rack/rack_words.h"
#include "ui/rack/rack_worths.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QTableView>

#include <algorithm>
#include <iterator>

namespace riband::ui {

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
            tr("Gone from the rack: nothing is left of it to move, label, divide or scrap. Its life can be "
               "seen, and what can be undone is by Ctrl+Z."));
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
    const int last =
        std::min(first + table_->viewport()->height() / table_->verticalHeader()->defaultSectionSize(),
                 filter_->rowCount() - 1);
    std::vector<store::BeltId> belts;
    for (int row = first; row <= last; ++row)
        belts.push_back(model_->row(filter_->mapToSource(filter_->index(row, 0)).row()).piece.belt);
    worths_->see(std::move(belts));
}

bool RackPage::weighed() const { return !reading_->running() && !worths_->busy(); }

} // namespace riband::ui
