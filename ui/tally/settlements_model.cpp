#include "ui/tally/settlements_model.h"

#include "ui/words/count_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

SettlementsModel::SettlementsModel(Session& session, QObject* parent)
    : QAbstractTableModel{parent}, session_{session} {}

void SettlementsModel::read() {
    shop::SettledCases cases{session_.shop()};
    beginResetModel();
    cases_.emplace(std::move(cases));
    rows_.assign(cases_->size(), {});
    endResetModel();
}

int SettlementsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int SettlementsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : int{ColumnCount};
}

QString SettlementsModel::initials(store::PersonId person) const {
    return text(store::People{session_.shop().connection}.at(person).initials);
}

QStringList SettlementsModel::wordsOf(const shop::SettledCase& settled) const {
    const store::Settlement& act = settled.settlement;
    return {
        shown(act.at),
        act.approved ? tr("%1, approved by %2", "initials").arg(initials(act.person), initials(*act.approved))
                     : initials(act.person),
        settled.piece ? text(settled.piece->code) : tr("without label"),
        text(settled.belt),
        text(settled.place),
        say(act.explanation),
        settled.change == 0 ? QStringLiteral("0") : shownChange(settled.unit, settled.change),
        settled.counteredBy ? tr("taken back %1 by %2", "when, initials")
                                  .arg(shown(settled.counteredBy->at), initials(settled.counteredBy->person))
                            : tr("stands", "a settlement")};
}

const QStringList& SettlementsModel::row(int row) const {
    const auto at = static_cast<std::size_t>(row);
    if (rows_[at].isEmpty()) session_.attempt([&] { rows_[at] = wordsOf(cases_->at(at)); });
    return rows_[at];
}

QVariant SettlementsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    if (role == Qt::TextAlignmentRole && index.column() == Width)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    return row(index.row()).value(index.column());
}

QVariant SettlementsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    const QStringList heads{tr("When"),  tr("Who"),   tr("Piece"), tr("Belt"),
                            tr("Place"), tr("Cause"), tr("Width"), tr("State")};
    return heads.value(section);
}

} // namespace riband::ui
