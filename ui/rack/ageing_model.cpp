#include "ui/rack/ageing_model.h"

#include "ui/rack/rack_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

AgeingRows ageingRows(const shop::Shop& shop, std::chrono::days within) {
    AgeingRows rows{shop::ageing(shop, within), shop::burdens(shop), {}};
    shop::PieceWorths worths{shop};
    const auto add = [&](const store::StockPiece& piece) {
        if (const auto worth = worths.of(piece)) rows.worths.emplace(piece.id, *worth);
    };
    for (const shop::AgeingPiece& aged : rows.ageing)
        add(aged.piece);
    for (const shop::Burden& burden : rows.burdens)
        add(burden.piece);
    return rows;
}

void AgeingModel::show(const AgeingRows& rows, Date today) {
    const auto worthOf = [&](const store::StockPiece& piece) {
        const auto found = rows.worths.find(piece.id);
        return found == rows.worths.end() ? QString{} : shown(found->second.worth);
    };
    beginResetModel();
    rows_.clear();
    for (const shop::AgeingPiece& aged : rows.ageing)
        rows_.push_back(rowOf(aged, worthOf(aged.piece), today));
    for (const shop::Burden& burden : rows.burdens)
        rows_.push_back(rowOf(burden, worthOf(burden.piece)));
    endResetModel();
}

QString AgeingModel::costOf(const store::StockPiece& piece) const {
    if (!currency_) return {};
    return piece.cost == Money::minor(0) ? tr("unknown", "a cost") : shown(piece.cost, *currency_);
}

AgeingModel::Row AgeingModel::rowOf(const shop::AgeingPiece& aged, const QString& worth, Date today) const {
    const QString advice = aged.refused          ? tr("scrap it: an inspection found it bad")
                           : aged.useBy >= today ? tr("sell it first")
                           : aged.extended       ? tr("scrap it: it was extended once")
                                                 : tr("inspect it: sound ones may be used on, once");
    const store::StockPiece& piece = aged.piece;
    return {piece,
            !aged.refused && !aged.extended,
            {text(piece.code), text(aged.belt), shown(piece.extent), text(piece.place), shown(aged.useBy),
             costOf(piece), worth, shown(aged.sells), advice}};
}

AgeingModel::Row AgeingModel::rowOf(const shop::Burden& burden, const QString& worth) const {
    const store::StockPiece& piece = burden.piece;
    return {piece,
            false,
            {text(piece.code), text(burden.belt), shown(piece.extent), text(piece.place), QString{},
             costOf(piece), worth, QString{},
             tr("%1 (keeping it costs %2)", "advice").arg(saidOf(burden), shown(burden.keeping))},
            burden};
}

int AgeingModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int AgeingModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant AgeingModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const QStringList& words = rows_[static_cast<std::size_t>(index.row())].words;
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return words[index.column()];
    const bool figures =
        index.column() == WidthColumn || (index.column() >= CostColumn && index.column() <= SellsColumn);
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment{figures ? Qt::AlignRight : Qt::AlignLeft} |
                                   Qt::AlignVCenter);
    return {};
}

QVariant AgeingModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case CodeColumn:
        return tr("Code");
    case BeltColumn:
        return tr("Belt");
    case WidthColumn:
        return tr("Width");
    case PlaceColumn:
        return tr("Place");
    case DayColumn:
        return tr("Use by");
    case CostColumn:
        return tr("Cost");
    case WorthColumn:
        return tr("Good for");
    case SellsColumn:
        return tr("Sells till then");
    default:
        return tr("What to do");
    }
}

} // namespace riband::ui
