#include "ui/review/buy_model.h"

#include "ui/words/buying_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

using foresight::Keeping;

/// What comes first on the list; a line that says nothing has no rank.
std::optional<int> rankOf(const shop::PurchaseLine& line, const shop::BuyingBelt& belt) {
    if (line.sleeves > 0) return 0;
    if (line.wanted > 0) return 1;
    if (line.advice.keeping != Keeping::Keep && belt.here() > 0) return 2;
    return std::nullopt;
}

} // namespace

void BuyModel::show(std::shared_ptr<const Purchase> purchase, bool everyBelt) {
    beginResetModel();
    purchase_ = std::move(purchase);
    rows_.clear();
    std::vector<int> ranks;
    for (std::size_t i = 0; i < purchase_->list.lines.size(); ++i) {
        const shop::PurchaseLine& line = purchase_->list.lines[i];
        const auto rank = rankOf(line, purchase_->outlook.belts[line.belt]);
        ranks.push_back(rank.value_or(3));
        if (rank || everyBelt) rows_.push_back(i);
    }
    std::stable_sort(rows_.begin(), rows_.end(),
                     [&](std::size_t a, std::size_t b) { return ranks[a] < ranks[b]; });
    endResetModel();
}

const shop::PurchaseLine& BuyModel::line(int row) const {
    return purchase_->list.lines[rows_[static_cast<std::size_t>(row)]];
}

int BuyModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int BuyModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString BuyModel::words(const shop::PurchaseLine& line, int column) const {
    const shop::BuyingBelt& belt = purchase_->outlook.belts[line.belt];
    switch (column) {
    case BeltColumn:
        return text(belt.belt.designation);
    case VerdictColumn:
        return verdictOf(line);
    case SleevesColumn:
        return line.wanted > 0 ? QString::number(line.sleeves) : QString{};
    case WidthColumn:
        return shown(line.width);
    case CostColumn:
        return line.sleeves > 0 && line.costKnown()
                   ? shownSum(line.cost(), purchase_->outlook.settings.prices.currency)
                   : QString{};
    case HereColumn:
        return belt.expected > 0 ? tr("%1 + %2 expected").arg(belt.here()).arg(belt.expected)
                                 : QString::number(belt.here());
    default:
        return line.advice.keeping == Keeping::Keep ? shownShare(line.advice.risk) : QString{};
    }
}

QVariant BuyModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    if (role == Qt::DisplayRole) return words(line(index.row()), index.column());
    if (role != Qt::TextAlignmentRole) return {};
    const bool figure = index.column() >= SleevesColumn;
    return QVariant::fromValue(Qt::Alignment{figure ? Qt::AlignRight : Qt::AlignLeft} | Qt::AlignVCenter);
}

QVariant BuyModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment{section >= SleevesColumn ? Qt::AlignRight : Qt::AlignLeft} |
                                   Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case BeltColumn:
        return tr("Belt");
    case VerdictColumn:
        return tr("What to do");
    case SleevesColumn:
        return tr("Sleeves");
    case WidthColumn:
        return tr("Width");
    case CostColumn:
        return tr("Cost");
    case HereColumn:
        return tr("Here");
    default:
        return tr("Risk");
    }
}

} // namespace riband::ui
