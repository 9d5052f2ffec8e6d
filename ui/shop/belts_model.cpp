#include "ui/shop/belts_model.h"

#include "core/measure/text.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QLocale>
#include <QRegularExpression>
#include <QStringList>

#include <algorithm>

namespace riband::ui {

std::optional<std::vector<Extent>> readListed(const std::string& typed, Unit unit) {
    std::vector<Extent> listed;
    const QRegularExpression between{QStringLiteral("[;,]\\s+|;|\\s+")};
    for (const QString& part : text(typed).split(between, Qt::SkipEmptyParts)) {
        const auto read = readExtent(part.toStdString(), unit);
        if (!read || read->isNone()) return std::nullopt;
        listed.push_back(*read);
    }
    std::sort(listed.begin(), listed.end());
    listed.erase(std::unique(listed.begin(), listed.end()), listed.end());
    return listed;
}

QString shownListed(const std::vector<Extent>& listed) {
    QStringList widths;
    for (const Extent width : listed)
        widths << shownNumber(width);
    return widths.join(QStringLiteral("; "));
}

void BeltsModel::setBelts(std::vector<store::StockedBelt> belts, const Currency& currency) {
    beginResetModel();
    rows_ = std::move(belts);
    currency_ = currency;
    endResetModel();
}

void BeltsModel::change(int row, const store::StockedBelt& belt) {
    rows_[static_cast<std::size_t>(row)] = belt;
    emit dataChanged(index(row, 0), index(row, ColumnCount - 1));
}

int BeltsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int BeltsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant BeltsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || role != Qt::DisplayRole) return {};
    const store::StockedBelt& belt = rows_[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
    case BeltColumn:
        return text(belt.designation);
    case PriceColumn: {
        const QString price =
            text(printWidthPrice(belt.price, currency_)).replace(QLatin1Char('.'), QLocale().decimalPoint());
        return belt.unit == Unit::Rib ? tr("%1 a rib").arg(price) : tr("%1 a mm").arg(price);
    }
    case SleeveColumn:
        return shown(belt.newSleeve);
    case DeliveryColumn:
        return tr("%n days", nullptr, belt.deliveryDays);
    default:
        return shownListed(belt.listed);
    }
}

QVariant BeltsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case BeltColumn:
        return tr("Belt");
    case PriceColumn:
        return tr("Price");
    case SleeveColumn:
        return tr("New sleeve");
    case DeliveryColumn:
        return tr("Delivery");
    default:
        return tr("Usual widths");
    }
}

} // namespace riband::ui
