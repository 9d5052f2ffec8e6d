#pragma once

#include "core/shop/counting/settled.h"
#include "ui/desk/session.h"

#include <QAbstractTableModel>

namespace riband::ui {

/// All that was ever settled, newest first. A line is read from the book when it is first shown.
class SettlementsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { When, Who, Piece, Belt, Place, Cause, Width, State, ColumnCount };
    explicit SettlementsModel(Session& session, QObject* parent = nullptr);
    /// Reads again. Throws StoreError.
    void read();
    store::SettlementId settlement(int row) const { return cases_->id(static_cast<std::size_t>(row)); }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const QStringList& row(int row) const;
    QStringList wordsOf(const shop::SettledCase& settled) const;
    QString initials(store::PersonId person) const;

    Session& session_;
    std::optional<shop::SettledCases> cases_;
    mutable std::vector<QStringList> rows_; ///< empty: not read yet
};

} // namespace riband::ui
