#include "ui/rack/rack_model.h"

#include "ui/rack/rack_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

constexpr int DigitsOfANumber = 8;

/// Figures stand right, under their heading.
QVariant alignmentOf(int column) {
    const bool figures = column == RackModel::WidthColumn || column == RackModel::WorthColumn ||
                         column == RackModel::ReservedColumn || column == RackModel::AgeColumn;
    return QVariant::fromValue(Qt::Alignment{figures ? Qt::AlignRight : Qt::AlignLeft} | Qt::AlignVCenter);
}

/// So that T5 sorts before T10, and 960 before 1200, in every locale.
QString countingKey(const std::string& name) {
    QString key, digits;
    for (const QChar letter : text(name) + QLatin1Char(' ')) {
        if (letter.isDigit())
            digits += letter;
        else {
            if (!digits.isEmpty()) key += digits.rightJustified(DigitsOfANumber, QLatin1Char('0'));
            digits.clear();
            key += letter;
        }
    }
    return key;
}

/// Belts in the order that people count in.
std::map<std::string, int> beltRanks(const std::vector<shop::RackRow>& pieces) {
    std::map<QString, std::string> sorted;
    for (const auto& row : pieces)
        sorted.emplace(countingKey(row.belt), row.belt);
    std::map<std::string, int> ranks;
    for (const auto& [key, name] : sorted)
        ranks.emplace(name, static_cast<int>(ranks.size()));
    return ranks;
}

/// What is not known, and what has none, comes before what is worth nothing.
std::int64_t worthKey(const RackModel::Worth& worth) { return worth.worth ? worth.worth->worth.count() : -1; }

/// By the width that a piece is kept for, then by how many of it.
std::pair<std::int64_t, std::int64_t> keptKey(const RackModel::Worth& worth) {
    if (!worth.worth || !worth.worth->keptFor) return {-1, 0};
    return {worth.worth->keptFor->extent.count(), worth.worth->keptFor->belts};
}

} // namespace

void RackModel::setPieces(std::vector<shop::RackRow> pieces, Date today) {
    const auto ranks = beltRanks(pieces);
    const auto worthBefore = [&, old = std::move(rows_), at = std::move(byPiece_)](const auto& piece) {
        const auto found = at.find(piece.id);
        if (found == at.end()) return Worth{};
        const Row& row = old[static_cast<std::size_t>(found->second)];
        return row.shown.piece.extent == piece.extent ? row.worth : Worth{};
    };
    beginResetModel();
    gone_ = false;
    rows_.clear();
    byPiece_.clear();
    rows_.reserve(pieces.size());
    for (auto& piece : pieces) {
        byPiece_.emplace(piece.piece.id, static_cast<int>(rows_.size()));
        const int days = static_cast<int>((today - piece.piece.born()).count());
        const int rank = ranks.at(piece.belt);
        const Worth worth = worthBefore(piece.piece);
        rows_.push_back({std::move(piece), rank, days, worth});
    }
    endResetModel();
}

void RackModel::setGone(std::optional<shop::RackRow> piece, Date today) {
    if (gone_) {
        const int last = rowCount() - 1;
        beginRemoveRows({}, last, last);
        byPiece_.erase(rows_.back().shown.piece.id);
        rows_.pop_back();
        gone_ = false;
        endRemoveRows();
    }
    if (!piece) return;
    const int row = rowCount();
    beginInsertRows({}, row, row);
    byPiece_.emplace(piece->piece.id, row);
    const int days = static_cast<int>((today - piece->piece.born()).count());
    rows_.push_back({std::move(*piece), row, days, {true, std::nullopt}});
    gone_ = true;
    endInsertRows();
}

void RackModel::setWorths(
    const std::vector<std::pair<store::PieceId, std::optional<shop::PieceWorth>>>& worths) {
    int first = rowCount(), last = -1;
    for (const auto& [piece, worth] : worths) {
        const int row = rowOf(piece);
        if (row < 0) continue;
        rows_[static_cast<std::size_t>(row)].worth = {true, worth};
        first = std::min(first, row);
        last = std::max(last, row);
    }
    if (last >= 0) emit dataChanged(index(first, WorthColumn), index(last, KeptColumn));
}

int RackModel::rowOf(store::PieceId piece) const {
    const auto found = byPiece_.find(piece);
    return found == byPiece_.end() ? -1 : found->second;
}

int RackModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int RackModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString RackModel::words(const Row& row, int column) const {
    const store::StockPiece& piece = row.shown.piece;
    switch (column) {
    case CodeColumn:
        return text(piece.code);
    case BeltColumn:
        return text(row.shown.belt);
    case WidthColumn:
        return shown(piece.extent);
    case WorthColumn:
        return row.worth.worth ? shown(row.worth.worth->worth) : QString{};
    case KeptColumn:
        return row.worth.worth && row.worth.worth->keptFor ? briefly(*row.worth.worth->keptFor) : QString{};
    case ReservedColumn:
        return piece.reserved.isNone() ? QString{} : shown(piece.reserved);
    case KindColumn:
        return piece.gone() ? tr("gone") : say(piece.kind);
    case PlaceColumn:
        return text(piece.place);
    default:
        return daysOld(row.days);
    }
}

QVariant RackModel::sortKey(const Row& row, int column) const {
    switch (column) {
    case BeltColumn:
        return row.beltRank;
    case WidthColumn:
        return static_cast<qlonglong>(row.shown.piece.extent.count());
    case WorthColumn:
        return static_cast<qlonglong>(worthKey(row.worth));
    case KeptColumn:
        return static_cast<qlonglong>(keptKey(row.worth).first);
    case ReservedColumn:
        return static_cast<qlonglong>(row.shown.piece.reserved.count());
    case AgeColumn:
        return row.days;
    default:
        return words(row, column);
    }
}

bool RackModel::less(int a, int b, int column) const {
    const Row& x = rows_[static_cast<std::size_t>(a)];
    const Row& y = rows_[static_cast<std::size_t>(b)];
    const store::StockPiece& p = x.shown.piece;
    const store::StockPiece& q = y.shown.piece;
    switch (column) {
    case CodeColumn:
        return p.code < q.code;
    case BeltColumn:
        // Of one belt the widest first: what can be cut from stands on top.
        return x.beltRank != y.beltRank ? x.beltRank < y.beltRank : p.extent.count() > q.extent.count();
    case WidthColumn:
        return p.extent.count() < q.extent.count();
    case WorthColumn:
        return worthKey(x.worth) < worthKey(y.worth);
    case KeptColumn:
        return keptKey(x.worth) < keptKey(y.worth);
    case ReservedColumn:
        return p.reserved.count() < q.reserved.count();
    case KindColumn:
        return p.kind < q.kind;
    case PlaceColumn:
        return p.place < q.place;
    default:
        return x.days < y.days;
    }
}

QVariant RackModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) return words(row, index.column());
    if (role == Qt::ToolTipRole && index.column() == BeltColumn) return words(row, BeltColumn);
    if (role == SortRole) return sortKey(row, index.column());
    if (role == Qt::TextAlignmentRole) return alignmentOf(index.column());
    return {};
}

QVariant RackModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return alignmentOf(section);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case CodeColumn:
        return tr("Code");
    case BeltColumn:
        return tr("Belt");
    case WidthColumn:
        return tr("Width");
    case WorthColumn:
        return tr("Worth");
    case KeptColumn:
        return tr("Kept for");
    case ReservedColumn:
        return tr("Promised");
    case KindColumn:
        return tr("Kind");
    case PlaceColumn:
        return tr("Place");
    default:
        return tr("Age");
    }
}

} // namespace riband::ui
