#pragma once

#include <QStyledItemDelegate>

namespace riband::ui {

/// A candidate: its teeth to scale, its name, its sizes, what of it is here, and how likely it is as a bar.
class CandidatesDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace riband::ui
