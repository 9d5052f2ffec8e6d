#pragma once

#include <QStyledItemDelegate>

namespace riband::ui {

/// A line of the slip: quantity, belt and width, amount; where it comes from below.
class SlipDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace riband::ui
