#pragma once

#include <QStyledItemDelegate>

namespace riband::ui {

/// A profile as its tooth, drawn true, with its name below.
class ProfilesDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace riband::ui
