#include "ui/counter/ways_model.h"

#include "ui/counter/way_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

QString othersOf(const shop::Outlook& outlook, const shop::Way& way) {
    QStringList codes;
    for (std::size_t i = 1; i < way.plan.mountings.size(); ++i)
        codes << text(outlook.pieces[way.plan.mountings[i].piece].code);
    return codes.join(QStringLiteral(", "));
}

} // namespace

WaysModel::Row WaysModel::rowOf(const shop::Outlook& outlook, const shop::Way& way,
                                const std::optional<Currency>& costs) {
    const ShownWay shownAs = shownWay(outlook, way, costs);
    Row row{tr("from the shelf"), {},
            shownAs.brief,        shownAs.extra,
            way.extra > 0,        {Extent::none(outlook.belt.unit), {}, 0}};
    if (way.plan.mountings.empty()) return row;
    const std::size_t first = way.plan.mountings.front().piece;
    const store::StockPiece& piece = outlook.pieces[first];
    row.name = text(piece.code);
    row.piece = say(piece.kind) + QLatin1Char(' ') + shown(outlook.problem.pieces[first].extent);
    if (!piece.place.empty()) row.piece += QStringLiteral(" · ") + text(piece.place);
    if (way.plan.mountings.size() > 1) row.piece = tr("with %1", "other pieces").arg(othersOf(outlook, way));
    row.band = shownAs.bands.front();
    if (!shownAs.shelf.isEmpty())
        row.leaves += QStringLiteral(" · ") + tr("%1 to the shelf").arg(shownAs.shelf);
    return row;
}

void WaysModel::setWays(const shop::Outlook& outlook, const std::vector<shop::Way>& ways,
                        const std::optional<Currency>& costs) {
    beginResetModel();
    rows_.clear();
    for (const shop::Way& way : ways)
        rows_.push_back(rowOf(outlook, way, costs));
    std::int64_t widest = 0;
    for (const Row& row : rows_)
        widest = std::max(widest, row.band.piece.count());
    for (Row& row : rows_)
        row.band.fullScale = widest;
    endResetModel();
}

void WaysModel::clear() {
    beginResetModel();
    rows_.clear();
    endResetModel();
}

int WaysModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant WaysModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case NameRole:
        return row.name;
    case PieceRole:
        return row.piece;
    case LeavesRole:
        return row.leaves;
    case ExtraRole:
        return row.extra;
    case CostsRole:
        return row.costs;
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return tr("%1, %2, %3, %4", "piece, its width and place, what it leaves, its extra cost")
            .arg(row.name, row.piece, row.leaves, row.extra);
    default:
        return {};
    }
}

} // namespace riband::ui
