#include "ui/shop/shafts_model.h"

#include "ui/words/tr.h"

#include <QLocale>

namespace riband::ui {

namespace {

constexpr double LargestMm = 10'000;

double* figure(cutting::Shaft& shaft, int column) {
    switch (column) {
    case ShaftsModel::DrivenColumn:
        return &shaft.diameterDriven;
    case ShaftsModel::TensionColumn:
        return &shaft.diameterTension;
    case ShaftsModel::UsableColumn:
        return &shaft.usable;
    case ShaftsModel::ClosestColumn:
        return &shaft.closest;
    case ShaftsModel::FarthestColumn:
        return &shaft.farthest;
    default:
        return nullptr;
    }
}

/// With a comma or a point, as everywhere in Riband.
double readFigure(QString typed, bool& ok) {
    return typed.trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&ok);
}

} // namespace

void ShaftsModel::setShafts(std::vector<cutting::Shaft> shafts) {
    beginResetModel();
    shafts_ = std::move(shafts);
    endResetModel();
}

void ShaftsModel::add() {
    const int row = rowCount();
    beginInsertRows({}, row, row);
    shafts_.push_back({tr("new shaft").toStdString(), 40, 40, 400, 100, 800});
    endInsertRows();
    emit edited();
}

void ShaftsModel::remove(int row) {
    if (row < 0 || row >= rowCount()) return;
    beginRemoveRows({}, row, row);
    shafts_.erase(shafts_.begin() + row);
    endRemoveRows();
    emit edited();
}

int ShaftsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shafts_.size());
}

int ShaftsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant ShaftsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
    cutting::Shaft shaft = shafts_[static_cast<std::size_t>(index.row())];
    if (const double* value = figure(shaft, index.column()))
        return QString::number(*value).replace(QLatin1Char('.'), QLocale().decimalPoint());
    return text(shaft.name);
}

bool ShaftsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !checkIndex(index, CheckIndexOption::IndexIsValid)) return false;
    cutting::Shaft& shaft = shafts_[static_cast<std::size_t>(index.row())];
    const QString typed = value.toString().trimmed();
    if (double* place = figure(shaft, index.column())) {
        bool ok = false;
        const double read = readFigure(typed, ok);
        if (!ok || read <= 0 || read > LargestMm) return false;
        *place = read;
    } else if (typed.isEmpty())
        return false;
    else
        shaft.name = typed.toStdString();
    emit dataChanged(index, index);
    emit edited();
    return true;
}

Qt::ItemFlags ShaftsModel::flags(const QModelIndex& index) const {
    return QAbstractTableModel::flags(index) | (index.isValid() ? Qt::ItemIsEditable : Qt::NoItemFlags);
}

QVariant ShaftsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case NameColumn:
        return tr("Shaft");
    case DrivenColumn:
        return tr("Driven ⌀");
    case TensionColumn:
        return tr("Tension ⌀");
    case UsableColumn:
        return tr("Usable");
    case ClosestColumn:
        return tr("Closest");
    default:
        return tr("Farthest");
    }
}

} // namespace riband::ui
