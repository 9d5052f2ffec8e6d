#include "ui/rack/life_model.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QStringList>

#include <algorithm>

namespace riband::ui {

namespace {

/// Figures stand right, under their heading.
QVariant alignmentOf(int column) {
    const bool figures = column == LifeModel::ChangeColumn || column == LifeModel::AfterColumn;
    return QVariant::fromValue(Qt::Alignment{figures ? Qt::AlignRight : Qt::AlignLeft} | Qt::AlignVCenter);
}

bool ofPiece(const store::Posting& posting, store::PieceId piece) {
    return posting.piece == piece &&
           (posting.account == store::Account::Rack || posting.account == store::Account::Ready);
}

QString signedCount(Unit unit, std::int64_t count) {
    if (count == 0) return QStringLiteral("0");
    const QString size = shown(Extent::of(unit, count < 0 ? -count : count));
    return (count < 0 ? QStringLiteral("−") : QStringLiteral("+")) + size;
}

/// An act on several pieces, as a delivery is: what this one gives and takes balances by itself.
bool standsAlone(const store::Movement& movement, store::PieceId piece) {
    std::int64_t sum = 0;
    for (const auto& posting : movement.postings())
        if (posting.piece == piece) sum += posting.amount;
    return sum == 0;
}

/// Where the width came from or went to, as far as this piece tells.
QString whereTo(const store::RecordedMovement& recorded, store::PieceId piece, Unit unit,
                const PieceUpkeep& upkeep) {
    QStringList parts;
    const store::Movement& movement = recorded.movement;
    const bool alone = standsAlone(movement, piece);
    for (const auto& posting : movement.postings()) {
        if (ofPiece(posting, piece) || posting.amount == 0 || (alone && posting.piece != piece)) continue;
        const std::int64_t size = posting.amount < 0 ? -posting.amount : posting.amount;
        QString part = say(posting.account) + QLatin1Char(' ') + shown(Extent::of(unit, size));
        if (posting.reason) part += QStringLiteral(" (%1)").arg(say(*posting.reason));
        if (const auto order = posting.line ? upkeep.orders.find(*posting.line) : upkeep.orders.end();
            order != upkeep.orders.end())
            part += QStringLiteral(" (%1)").arg(text(order->second));
        parts << part;
    }
    if (const auto grams = upkeep.grams.find(recorded.id); grams != upkeep.grams.end())
        parts << LifeModel::tr("%1 g").arg(grams->second);
    return parts.join(QStringLiteral(", "));
}

/// What was noted, and who did it.
QString noteOf(const QString& note, store::PersonId person,
               const std::map<store::PersonId, std::string>& people) {
    const auto who = people.find(person);
    QStringList parts;
    if (!note.isEmpty()) parts << note;
    if (who != people.end()) parts << text(who->second);
    return parts.join(QStringLiteral(" · "));
}

} // namespace

void LifeModel::setLife(store::PieceId piece, Unit unit, const std::vector<store::RecordedMovement>& life,
                        const PieceUpkeep& upkeep) {
    beginResetModel();
    rows_.clear();
    unit_ = unit;
    for (const auto& recorded : life)
        add(recorded, piece, upkeep);
    addUpkeep(upkeep);
    std::stable_sort(rows_.begin(), rows_.end(), [](const Row& a, const Row& b) { return a.at < b.at; });
    std::int64_t after = 0;
    for (Row& row : rows_)
        row.after = after += row.change.value_or(0);
    endResetModel();
}

void LifeModel::add(const store::RecordedMovement& recorded, store::PieceId piece,
                    const PieceUpkeep& upkeep) {
    const store::Movement& movement = recorded.movement;
    std::int64_t change = 0;
    for (const auto& posting : movement.postings())
        if (ofPiece(posting, piece)) change += posting.amount;
    rows_.push_back({movement.about().at,
                     say(movement),
                     change,
                     0,
                     whereTo(recorded, piece, unit_, upkeep),
                     noteOf(text(movement.about().note), movement.about().person, upkeep.people),
                     {recorded.id}});
}

void LifeModel::addUpkeep(const PieceUpkeep& upkeep) {
    const auto way = [](const store::Relocation& moved) {
        if (moved.from.empty()) return tr("to %1").arg(text(moved.to));
        if (moved.to.empty()) return tr("from %1, to no place").arg(text(moved.from));
        return tr("from %1 to %2").arg(text(moved.from), text(moved.to));
    };
    const store::Inspection* last = nullptr;
    for (const auto& seen : upkeep.inspections)
        if (!seen.takenBack) last = &seen;
    for (const auto& moved : upkeep.relocations)
        rows_.push_back({moved.at,
                         tr("moved"),
                         std::nullopt,
                         0,
                         way(moved),
                         noteOf({}, moved.person, upkeep.people),
                         {std::nullopt, &moved == &upkeep.relocations.back()}});
    const auto verdict = [](const store::Inspection& seen) {
        const QString said = seen.until ? tr("sound, to be used by %1").arg(shown(*seen.until)) : tr("bad");
        return seen.takenBack ? tr("%1; taken back %2").arg(said, shown(dayOf(*seen.takenBack))) : said;
    };
    for (const auto& seen : upkeep.inspections)
        rows_.push_back({seen.at,
                         tr("inspected"),
                         std::nullopt,
                         0,
                         verdict(seen),
                         noteOf(text(seen.note), seen.person, upkeep.people),
                         {std::nullopt, false, &seen == last}});
}

void LifeModel::clear() {
    beginResetModel();
    rows_.clear();
    endResetModel();
}

int LifeModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int LifeModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant LifeModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::TextAlignmentRole) return alignmentOf(index.column());
    if (role == Qt::ToolTipRole && index.column() == WhereColumn) return row.where;
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case DayColumn:
        return shown(dayOf(row.at));
    case ActColumn:
        return row.act;
    case ChangeColumn:
        return row.change ? signedCount(unit_, *row.change) : QString{};
    case AfterColumn:
        return shown(Extent::of(unit_, row.after < 0 ? 0 : row.after));
    default:
        return row.note.isEmpty() ? row.where : row.where + QStringLiteral(" · ") + row.note;
    }
}

QVariant LifeModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return alignmentOf(section);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case DayColumn:
        return tr("Day");
    case ActColumn:
        return tr("What");
    case ChangeColumn:
        return tr("Change");
    case AfterColumn:
        return tr("Then");
    default:
        return tr("From or to");
    }
}

} // namespace riband::ui
