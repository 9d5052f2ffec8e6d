#pragma once

#include "ui/drive/answer.h"

#include <QAbstractTableModel>

namespace riband::ui {

/// The belts that exist for a drive, best first; what is here stands out, what is out of reach is faint.
class DriveBeltsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit DriveBeltsModel(QObject* parent = nullptr) : QAbstractTableModel{parent} {}
    void setBelts(std::vector<QString> headings, std::vector<BeltRow> belts);
    const BeltRow& belt(int row) const { return belts_[static_cast<std::size_t>(row)]; }
    int rowOf(const belt::Belt& belt) const; ///< -1 if it is not listed

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<QString> headings_;
    std::vector<BeltRow> belts_;
};

} // namespace riband::ui
