#pragma once

#include <QStyledItemDelegate>

namespace riband::ui {

/// A waiting mounting: belt and cuts, piece and place, whose it is; the shaft where it changes.
class BenchDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace riband::ui
