#include "ui/counter/slip_model.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

/// The lines of a belt are planned together: while one of them is typed the others come from the pieces that
/// the card names, too.
SlipLine plannedWith(SlipLine line, const std::optional<SlipLine>& pending) {
    if (pending && !pending->source.empty() && pending->line.belt == line.line.belt && !line.line.way)
        line.source = pending->source;
    return line;
}

} // namespace

void SlipModel::setLines(const OrderInHand& hand, const std::optional<SlipLine>& pending,
                         const Currency& currency) {
    beginResetModel();
    rows_.clear();
    currency_ = currency;
    for (std::size_t i = 0; i < hand.lines().size(); ++i) {
        if (hand.editing() != i)
            rows_.push_back({plannedWith(hand.lines()[i], pending), LineState::Added});
        else
            rows_.push_back({pending.value_or(hand.lines()[i]), LineState::Edited});
    }
    if (pending && !hand.editing()) rows_.push_back({*pending, LineState::Pending});
    endResetModel();
}

void SlipModel::setChosen(std::optional<std::size_t> line) {
    if (line == chosen_) return;
    chosen_ = line;
    if (!rows_.empty()) emit dataChanged(index(0), index(rowCount() - 1), {ChosenRole});
}

int SlipModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QString SlipModel::remarkOf(const Row& row) const {
    if (row.state == LineState::Pending) return tr("adding");
    if (row.state == LineState::Edited) return tr("being changed");
    return text(row.line.source);
}

QVariant SlipModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    const QString title =
        tr("%1, %2", "belt and width").arg(text(row.line.belt.designation), shown(row.line.line.extent));
    switch (role) {
    case QuantityRole:
        return QString::number(row.line.line.quantity);
    case TitleRole:
        return title;
    case RemarkRole:
        return remarkOf(row);
    case AmountRole:
        return shown(row.line.price.net, currency_);
    case StateRole:
        return static_cast<int>(row.state);
    case ChosenRole:
        return rows_.size() > 1 && chosen_ == static_cast<std::size_t>(index.row());
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return tr("%1 × %2: %3", "quantity, belt, amount")
            .arg(row.line.line.quantity)
            .arg(title, shown(row.line.price.net, currency_));
    default:
        return {};
    }
}

} // namespace riband::ui
