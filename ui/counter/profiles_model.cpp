#include "ui/counter/profiles_model.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

void ProfilesModel::setProfiles(const std::vector<belt::Profile>& profiles,
                                const std::vector<std::string>& kept) {
    beginResetModel();
    rows_.clear();
    for (const auto& profile : profiles)
        rows_.push_back({&profile, std::find(kept.begin(), kept.end(), profile.name) != kept.end()});
    std::stable_sort(rows_.begin(), rows_.end(), [](const Row& a, const Row& b) { return a.kept > b.kept; });
    endResetModel();
}

int ProfilesModel::rowOf(std::string_view name) const {
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (rows_[i].profile->name == name) return static_cast<int>(i);
    return -1;
}

int ProfilesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant ProfilesModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return text(row.profile->name);
    case Qt::AccessibleTextRole:
    case Qt::ToolTipRole:
        return tr("%1, %2 pitch, %3", "profile, its pitch, its tooth")
            .arg(text(row.profile->name), shown(row.profile->pitch), say(row.profile->shape));
    case KeptRole:
        return row.kept;
    default:
        return {};
    }
}

} // namespace riband::ui
