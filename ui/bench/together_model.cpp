#include "ui/bench/together_model.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

/// In all by the worth table, where there is one; else the trims alone.
QString savedBy(const TogetherModel::Row& row, const std::optional<Currency>& costs) {
    if (!row.joint.width) return TogetherModel::tr("%1 of trim").arg(shown(row.joint.trim));
    const auto width = static_cast<double>(row.joint.width->count());
    if (!costs) return shown(*row.joint.width);
    const Money money = shop::asMoney(row.batch.outlook.belt, width);
    return TogetherModel::tr("%1, worth %2", "width, money")
        .arg(shown(*row.joint.width), shown(money, *costs));
}

QString shelfOf(const TogetherModel::Row& row) {
    QStringList belts;
    for (const auto& [extent, count] : row.joint.forShelf)
        belts << TogetherModel::tr("%1 × %2", "belts of a width").arg(count).arg(shown(extent));
    return belts.isEmpty() ? TogetherModel::tr("nothing") : belts.join(QStringLiteral(", "));
}

} // namespace

void TogetherModel::setRows(std::vector<Row> rows, bool many, const std::optional<Currency>& costs) {
    beginResetModel();
    rows_ = std::move(rows);
    many_ = many;
    saved_.clear();
    for (const Row& row : rows_)
        saved_.push_back(savedBy(row, costs));
    endResetModel();
}

int TogetherModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int TogetherModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : Columns; }

QString TogetherModel::shaftOf(const Row& row) const {
    const cutting::Cutter& cutter = row.batch.cutter.cutter;
    const auto& shaft = row.batch.shaft;
    const QString name = shaft ? text(cutter.shafts[*shaft].name) : tr("none fits");
    return many_ ? tr("%1, %2", "shaft, cutter").arg(name, text(cutter.name)) : name;
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
        return tr("%n mountings", nullptr, static_cast<int>(row.batch.mountings - row.joint.mountings));
    case WidthColumn:
        return saved_[static_cast<std::size_t>(index.row())];
    case ShelfColumn:
        return shelfOf(row);
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
    case WidthColumn:
        return tr("Width saved");
    case ShelfColumn:
        return tr("For the shelf");
    default:
        return {};
    }
}

} // namespace riband::ui
