#pragma once

#include "ui/counter/order_in_hand.h"

#include <QAbstractListModel>

namespace riband::ui {

/// The lines on the slip; the last one may be only pending: typed, not yet added. Keeps what it was given.
class SlipModel final : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { QuantityRole = Qt::UserRole, TitleRole, RemarkRole, AmountRole, StateRole, ChosenRole };
    enum class LineState { Added, Edited, Pending };
    explicit SlipModel(QObject* parent = nullptr) : QAbstractListModel{parent} {}
    void setLines(const OrderInHand& hand, const std::optional<SlipLine>& pending, const Currency& currency);
    /// The line that Change and Remove act on; it is marked where there are others beside it.
    void setChosen(std::optional<std::size_t> line);
    const SlipLine& line(int row) const { return rows_[static_cast<std::size_t>(row)].line; }
    bool isPending(int row) const { return rows_[static_cast<std::size_t>(row)].state == LineState::Pending; }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    struct Row {
        SlipLine line;
        LineState state;
    };
    QString remarkOf(const Row& row) const;
    std::vector<Row> rows_;
    std::optional<std::size_t> chosen_;
    Currency currency_{"EUR", 2};
};

} // namespace riband::ui
