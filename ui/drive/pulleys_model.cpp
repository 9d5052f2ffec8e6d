#include "ui/drive/pulleys_model.h"

#include "ui/look/look.h"

namespace riband::ui {

namespace {

constexpr int mostPulleys = 50;

QString& cellOf(ManyQuestion::Row& row, int column) {
    return column == PulleysModel::XColumn ? row.x : column == PulleysModel::YColumn ? row.y : row.size;
}

bool isCheck(int column) { return column == PulleysModel::BackColumn || column == PulleysModel::SetColumn; }

} // namespace

void PulleysModel::setRows(std::vector<ManyQuestion::Row> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    rows_.emplace_back();
    mover_.reset();
    marked_ = -1;
    endResetModel();
    emit edited();
}

void PulleysModel::removeRow(int row) {
    if (row < 0 || isLast(row)) return;
    beginRemoveRows({}, row, row);
    rows_.erase(rows_.begin() + row);
    if (mover_ && *mover_ == static_cast<std::size_t>(row))
        mover_.reset();
    else if (mover_ && *mover_ > static_cast<std::size_t>(row))
        --*mover_;
    endRemoveRows();
    emit edited();
}

bool PulleysModel::moveRow(int row, int by) {
    const int to = row + by;
    if (row < 0 || to < 0 || isLast(row) || isLast(to)) return false;
    const auto from = static_cast<std::size_t>(row), target = static_cast<std::size_t>(to);
    std::swap(rows_[from], rows_[target]);
    if (mover_ == from)
        mover_ = target;
    else if (mover_ == target)
        mover_ = from;
    emit dataChanged(index(std::min(row, to), 0), index(std::max(row, to), ColumnCount - 1));
    emit edited();
    return true;
}

void PulleysModel::mark(int row) {
    if (row == marked_) return;
    marked_ = row;
    emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

int PulleysModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int PulleysModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

Qt::ItemFlags PulleysModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags usual = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (!isCheck(index.column())) return usual | Qt::ItemIsEditable;
    return isLast(index.row()) ? usual : usual | Qt::ItemIsUserCheckable;
}

QVariant PulleysModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    ManyQuestion::Row row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::ForegroundRole && index.row() == marked_) return Look::current().danger;
    if (isCheck(index.column())) {
        if (role != Qt::CheckStateRole || isLast(index.row())) return {};
        const bool on =
            index.column() == BackColumn ? row.back : mover_ == static_cast<std::size_t>(index.row());
        return on ? Qt::Checked : Qt::Unchecked;
    }
    if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
    return cellOf(row, index.column());
}

void PulleysModel::check(const QModelIndex& index, bool on) {
    const auto row = static_cast<std::size_t>(index.row());
    if (index.column() == BackColumn)
        rows_[row].back = on;
    else
        mover_ = on ? std::optional{row} : std::nullopt;
}

bool PulleysModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return false;
    if (isCheck(index.column())) {
        if (role != Qt::CheckStateRole || isLast(index.row())) return false;
        check(index, value.toInt() == Qt::Checked);
    } else {
        if (role != Qt::EditRole) return false;
        cellOf(rows_[static_cast<std::size_t>(index.row())], index.column()) = value.toString().trimmed();
    }
    emit dataChanged(this->index(0, 0), this->index(rowCount() - 1, ColumnCount - 1));
    if (!rows_.back().isEmpty() && rowCount() <= mostPulleys) {
        beginInsertRows({}, rowCount(), rowCount());
        rows_.emplace_back();
        endInsertRows();
    }
    emit edited();
    return true;
}

QVariant PulleysModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) return {};
    if (orientation == Qt::Vertical) return section + 1;
    switch (section) {
    case XColumn:
        return tr("x mm");
    case YColumn:
        return tr("y mm");
    case SizeColumn:
        return tr("Teeth\nor mm");
    case BackColumn:
        return tr("On the\nback");
    default:
        return tr("Can\nbe set");
    }
}

} // namespace riband::ui
