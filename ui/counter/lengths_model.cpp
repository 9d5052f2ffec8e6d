#include "ui/counter/lengths_model.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QStringList>

namespace riband::ui {

LengthsModel::Row LengthsModel::rowOf(const belt::Profile& profile, const belt::MadeLength& length,
                                      const std::map<std::string, Extent>& here) {
    Row row{{profile.name, length.teeth, length.length, {}}, {}, {}, {}, false};
    const std::string designation = belt::designation(row.belt);
    row.name = text(designation.substr(profile.name.size() + 1));
    if (length.teeth) row.teeth = QString::number(length.teeth->count());
    const auto found = here.find(designation);
    row.inStock = found != here.end() && !found->second.isNone();
    QStringList figures;
    if (length.teeth) figures << tr("%1 teeth").arg(row.teeth);
    if (shown(length.length) != shown(Length::millimetres(row.name.toLongLong())))
        figures << shown(length.length);
    if (row.inStock) figures << tr("here: %1").arg(shown(found->second));
    row.remark = figures.join(QStringLiteral(" · "));
    return row;
}

void LengthsModel::setLengths(const belt::Profile& profile, const std::vector<belt::MadeLength>& lengths,
                              const std::map<std::string, Extent>& here) {
    beginResetModel();
    rows_.clear();
    for (const auto& length : lengths)
        rows_.push_back(rowOf(profile, length, here));
    endResetModel();
}

void LengthsModel::clear() {
    beginResetModel();
    rows_.clear();
    endResetModel();
}

int LengthsModel::rowOf(const belt::Belt& belt) const {
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (rows_[i].belt.length == belt.length && rows_[i].belt.teeth == belt.teeth)
            return static_cast<int>(i);
    return -1;
}

int LengthsModel::rowOfText(const QString& typed) const {
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (rows_[i].name.startsWith(typed) || rows_[i].teeth == typed) return static_cast<int>(i);
    return -1;
}

int LengthsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant LengthsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return row.remark.isEmpty() ? row.name : row.name + QStringLiteral(" · ") + row.remark;
    case CodeRole:
        return row.name;
    case InStockRole:
        return row.inStock;
    default:
        return {};
    }
}

} // namespace riband::ui
