#pragma once

#include <QStyledItemDelegate>

namespace riband::ui {

/// A row of the other ways: piece, small band, what it leaves, what it costs more.
class WaysDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace riband::ui
