#pragma once

#include "core/store/id.h"

#include <QSortFilterProxyModel>

#include <optional>
#include <unordered_set>
#include <vector>

namespace riband::ui {

class RackModel;

/// The pieces that were found, sorted by what a column means.
class RackFilter final : public QSortFilterProxyModel {
    Q_OBJECT
public:
    explicit RackFilter(RackModel* model, QObject* parent = nullptr);
    /// Nothing: all of them.
    void setFound(const std::optional<std::vector<store::PieceId>>& pieces);
    /// All worths are there now: sorts by them, if that is what the rows are sorted by.
    void sortWorths();

protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

private:
    RackModel* model_;
    std::optional<std::unordered_set<std::int64_t>> found_;
};

} // namespace riband::ui
