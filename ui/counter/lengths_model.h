#pragma once

#include "core/belt/tables.h"

#include <QAbstractListModel>
#include <QString>

#include <map>
#include <vector>

namespace riband::ui {

/// The lengths that exist of a profile; those on the rack say how wide they are here.
class LengthsModel final : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { InStockRole = Qt::UserRole, CodeRole };
    explicit LengthsModel(QObject* parent = nullptr) : QAbstractListModel{parent} {}
    /// `here`: width on the rack by designation.
    void setLengths(const belt::Profile& profile, const std::vector<belt::MadeLength>& lengths,
                    const std::map<std::string, Extent>& here);
    void clear();
    const belt::Belt& belt(int row) const { return rows_[static_cast<std::size_t>(row)].belt; }
    int rowOf(const belt::Belt& belt) const; ///< -1 if it is in no list
    /// The first length whose code, teeth or millimetres begin with `typed`; -1 if none does.
    int rowOfText(const QString& typed) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    struct Row {
        belt::Belt belt;
        QString name;  ///< "1200"
        QString teeth; ///< "150"
        QString remark;
        bool inStock;
    };
    static Row rowOf(const belt::Profile& profile, const belt::MadeLength& length,
                     const std::map<std::string, Extent>& here);
    std::vector<Row> rows_;
};

} // namespace riband::ui
