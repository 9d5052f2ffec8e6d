#include "ui/shop/people_model.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

void PeopleModel::setPeople(std::vector<store::Person> people) {
    std::stable_partition(people.begin(), people.end(),
                          [](const store::Person& person) { return !person.gone; });
    beginResetModel();
    rows_ = std::move(people);
    endResetModel();
}

int PeopleModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int PeopleModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant PeopleModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || role != Qt::DisplayRole) return {};
    const store::Person& person = rows_[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
    case InitialsColumn:
        return text(person.initials);
    case NameColumn:
        return text(person.name);
    case RoleColumn:
        return say(person.role);
    default:
        return person.gone ? tr("has left") : person.locked ? tr("asks for a number") : tr("not locked");
    }
}

QVariant PeopleModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case InitialsColumn:
        return tr("Initials");
    case NameColumn:
        return tr("Name");
    case RoleColumn:
        return tr("Role");
    default:
        return tr("Lock");
    }
}

} // namespace riband::ui
