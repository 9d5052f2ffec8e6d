#include "ui/bench/together_model.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

void TogetherModel::setRows(std::vector<Row> rows, std::vector<std::string> shafts) {
    beginResetModel();
    rows_ = std::move(rows);
    shafts_ = std::move(shafts);
    endResetModel();
}

int TogetherModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int TogetherModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : Columns; }

QString TogetherModel::shaftOf(const Row& row) const {
    const auto& shaft = row.batch.shaft;
    return shaft && *shaft < shafts_.size() ? text(shafts_[*shaft]) : tr("none fits");
}

QVariant TogetherModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || role != Qt::DisplayRole) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
    case ShaftColumn:
        return shaftOf(row);
    case BeltColumn:
        return text(row.batch.outlook.belt.designation);
    case OrdersColumn:
        return text(row.batch.codes);
    case NowColumn:
        return static_cast<int>(row.batch.mountings);
    case ThenColumn:
        return static_cast<int>(row.joint.mountings);
    case SavesColumn:
        return tr("%n mountings", nullptr, static_cast<int>(row.batch.mountings - row.joint.mountings)) +
               QStringLiteral(" · ") + tr("%1 of trim").arg(shown(row.joint.trim));
    default:
        return {};
    }
}

QVariant TogetherModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case ShaftColumn:
        return tr("Shaft");
    case BeltColumn:
        return tr("Belt");
    case OrdersColumn:
        return tr("Orders");
    case NowColumn:
        return tr("Mountings now");
    case ThenColumn:
        return tr("Together");
    case SavesColumn:
        return tr("Saves");
    default:
        return {};
    }
}

} // namespace riband::ui
