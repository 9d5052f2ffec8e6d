#include "ui/rack/goods_lines_model.h"

#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

void GoodsLinesModel::add(shop::Delivery line) {
    const int row = static_cast<int>(lines_.size());
    beginInsertRows({}, row, row);
    lines_.push_back(std::move(line));
    shares_ = shop::freightShares(freight_, lines_);
    endInsertRows();
    costsChanged();
}

void GoodsLinesModel::change(int row, shop::Delivery line) {
    lines_.at(static_cast<std::size_t>(row)) = std::move(line);
    shares_ = shop::freightShares(freight_, lines_);
    emit dataChanged(index(row, 0), index(row, ColumnCount - 1));
    costsChanged();
}

void GoodsLinesModel::remove(int row) {
    if (row < 0 || row >= rowCount()) return;
    beginRemoveRows({}, row, row);
    lines_.erase(lines_.begin() + row);
    shares_ = shop::freightShares(freight_, lines_);
    endRemoveRows();
    costsChanged();
}

void GoodsLinesModel::clear() {
    beginResetModel();
    lines_.clear();
    shares_.clear();
    endResetModel();
}

void GoodsLinesModel::setFreight(Money freight) {
    freight_ = freight;
    shares_ = shop::freightShares(freight_, lines_);
    costsChanged();
}

Money GoodsLinesModel::goods() const {
    Money sum = Money::minor(0);
    for (const shop::Delivery& line : lines_)
        sum = sum + line.costEach * line.sleeves;
    return sum;
}

int GoodsLinesModel::withoutCost() const {
    int sleeves = 0;
    for (const shop::Delivery& line : lines_)
        if (line.costEach == Money::minor(0)) sleeves += line.sleeves;
    return sleeves;
}

/// The freight of one line changes with every other.
void GoodsLinesModel::costsChanged() {
    if (!lines_.empty()) emit dataChanged(index(0, CostColumn), index(rowCount() - 1, CostColumn));
}

int GoodsLinesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int GoodsLinesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString GoodsLinesModel::words(std::size_t row, int column) const {
    const shop::Delivery& line = lines_[row];
    switch (column) {
    case BeltColumn:
        return text(belt::designation(line.belt));
    case CountColumn:
        return QString::number(line.sleeves);
    case WidthColumn:
        return shown(line.extent);
    case LabelColumn: {
        QStringList remarks;
        if (line.kind != cutting::PieceKind::Sleeve) remarks << say(line.kind);
        if (line.labelled) remarks << tr("label says %1").arg(shown(*line.labelled));
        return remarks.join(QStringLiteral(", "));
    }
    case CostColumn: {
        const auto& shares = shares_.at(row);
        const Money freight = shares.empty() ? Money::minor(0) : shares.front();
        if (line.costEach == Money::minor(0))
            return freight == Money::minor(0) ? tr("unknown", "a cost")
                                              : tr("unknown, freight %1").arg(shown(freight, currency_));
        return shown(line.costEach + freight, currency_);
    }
    default:
        return text(line.place);
    }
}

QVariant GoodsLinesModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    if (role == Qt::DisplayRole) return words(static_cast<std::size_t>(index.row()), index.column());
    if (role == Qt::ForegroundRole && index.column() == CostColumn &&
        lines_[static_cast<std::size_t>(index.row())].costEach == Money::minor(0))
        return Look::current().warm;
    const bool figures =
        index.column() == CountColumn || index.column() == WidthColumn || index.column() == CostColumn;
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment{figures ? Qt::AlignRight : Qt::AlignLeft} |
                                   Qt::AlignVCenter);
    return {};
}

QVariant GoodsLinesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case BeltColumn:
        return tr("Belt");
    case CountColumn:
        return tr("How many");
    case WidthColumn:
        return tr("Width");
    case LabelColumn:
        return tr("Remark");
    case CostColumn:
        return tr("Each, with freight");
    default:
        return tr("Place");
    }
}

} // namespace riband::ui
