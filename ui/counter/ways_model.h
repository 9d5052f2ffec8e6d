#pragma once

#include "core/shop/suggest.h"
#include "ui/drawing/band.h"

#include <QAbstractListModel>

#include <memory>
#include <vector>

namespace riband::ui {

/// The other ways to serve what is wanted, cheapest first. Keeps the rows it was given.
class WaysModel final : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role {
        NameRole = Qt::UserRole, ///< "7K2-M", "new sleeve"
        PieceRole,               ///< "remnant 101 mm · A1-4"
        LeavesRole,
        ExtraRole,
        CostsRole, ///< true if it costs more than the suggested way
    };
    explicit WaysModel(QObject* parent = nullptr) : QAbstractListModel{parent} {}
    void setWays(const shop::Outlook& outlook, const std::vector<shop::Way>& ways,
                 const std::optional<Currency>& costs);
    void clear();
    /// To scale with each other: the widest piece fills the width.
    const BandPicture& picture(int row) const { return rows_[static_cast<std::size_t>(row)].band; }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    struct Row {
        QString name, piece, leaves, extra;
        bool costs;
        BandPicture band;
    };
    static Row rowOf(const shop::Outlook& outlook, const shop::Way& way,
                     const std::optional<Currency>& costs);
    std::vector<Row> rows_;
};

} // namespace riband::ui
