#include "ui/drive/drive_belts_model.h"

#include "ui/look/look.h"

namespace riband::ui {

void DriveBeltsModel::setBelts(std::vector<QString> headings, std::vector<BeltRow> belts) {
    beginResetModel();
    headings_ = std::move(headings);
    belts_ = std::move(belts);
    endResetModel();
}

int DriveBeltsModel::rowOf(const belt::Belt& belt) const {
    for (std::size_t i = 0; i < belts_.size(); ++i)
        if (belts_[i].belt == belt) return static_cast<int>(i);
    return -1;
}

int DriveBeltsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(belts_.size());
}

int DriveBeltsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(headings_.size());
}

QVariant DriveBeltsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const BeltRow& row = belts_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return row.cells[static_cast<std::size_t>(index.column())];
    case Qt::FontRole:
        return Look::font(14, row.inStock && row.reachable ? QFont::DemiBold : QFont::Normal);
    case Qt::ForegroundRole:
        return row.reachable ? Look::current().ink : Look::current().ink2;
    default:
        return {};
    }
}

QVariant DriveBeltsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    const auto at = static_cast<std::size_t>(section);
    return at < headings_.size() ? headings_[at] : QString{};
}

} // namespace riband::ui
