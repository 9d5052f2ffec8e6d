#pragma once

#include "core/belt/tables.h"

#include <QAbstractListModel>

#include <vector>

namespace riband::ui {

/// The profiles of the tables, by family; those that the shop keeps say so.
class ProfilesModel final : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { ProfileRole = Qt::UserRole, KeptRole };
    explicit ProfilesModel(QObject* parent = nullptr) : QAbstractListModel{parent} {}
    /// `kept`: names of the profiles in the shop's catalogue; they come first.
    void setProfiles(const std::vector<belt::Profile>& profiles, const std::vector<std::string>& kept);
    const belt::Profile& profile(int row) const { return *rows_[static_cast<std::size_t>(row)].profile; }
    int rowOf(std::string_view name) const; ///< -1 if unknown

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    struct Row {
        const belt::Profile* profile;
        bool kept;
    };
    std::vector<Row> rows_;
};

} // namespace riband::ui
