#include "ui/bench/order_lines_model.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

/// Figures stand right, under their heading.
QVariant alignmentOf(int column) {
    const bool words = column == OrderLinesModel::BeltColumn;
    return QVariant::fromValue(Qt::Alignment{words ? Qt::AlignLeft : Qt::AlignRight} | Qt::AlignVCenter);
}

} // namespace

void OrderLinesModel::setOrder(const store::Order& order, std::vector<std::string> designations,
                               const Currency& currency) {
    beginResetModel();
    lines_ = order.lines;
    designations_ = std::move(designations);
    currency_ = currency;
    endResetModel();
}

int OrderLinesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int OrderLinesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant OrderLinesModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    if (role == Qt::TextAlignmentRole) return alignmentOf(index.column());
    if (role != Qt::DisplayRole) return {};
    const auto row = static_cast<std::size_t>(index.row());
    const store::OrderLine& line = lines_[row];
    switch (index.column()) {
    case BeltColumn:
        return text(designations_[row]);
    case WidthColumn:
        return shown(line.extent);
    case OrderedColumn:
        return QString::number(line.quantity - line.cancelled);
    case CutColumn:
        return QString::number(line.cut);
    default:
        return shown(line.price.total, currency_);
    }
}

QVariant OrderLinesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return alignmentOf(section);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case BeltColumn:
        return tr("Belt");
    case WidthColumn:
        return tr("Width");
    case OrderedColumn:
        return tr("Ordered");
    case CutColumn:
        return tr("Cut");
    default:
        return tr("Total");
    }
}

} // namespace riband::ui
