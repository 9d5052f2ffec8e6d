#include "ui/bench/bench_model.h"

#include "ui/words/due_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QStringList>

namespace riband::ui {

namespace {
const QString Dot = QStringLiteral(" · ");

bool shareLines(const shop::BenchMounting& one, const shop::BenchMounting& other) {
    for (const auto& cut : one.mounting.cuts)
        for (const auto& each : other.mounting.cuts)
            if (cut.line && cut.line == each.line) return true;
    return false;
}
} // namespace

QString shownCuts(const shop::BenchMounting& mounting) {
    QStringList cuts;
    for (const auto& cut : mounting.mounting.cuts) {
        const QString belts =
            BenchModel::tr("%1 × %2", "how many, width").arg(cut.count).arg(shown(cut.extent));
        cuts << (cut.line ? belts : BenchModel::tr("%1 to the shelf").arg(belts));
    }
    return cuts.join(QStringLiteral(", "));
}

void BenchModel::setMountings(std::vector<shop::BenchMounting> mountings,
                              std::vector<shop::MountingFor> whose, bool many, Date today) {
    beginResetModel();
    whose_ = std::move(whose);
    today_ = today;
    rows_ = std::move(mountings);
    many_ = many;
    endResetModel();
}

int BenchModel::rowOf(store::MountingId mounting) const {
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (rows_[i].mounting.id == mounting) return static_cast<int>(i);
    return -1;
}

int BenchModel::rowAfter(const shop::BenchMounting& gone) const {
    int best = -1, likest = 0;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const bool lines = shareLines(rows_[i], gone);
        const bool piece = rows_[i].piece.id == gone.piece.id;
        const bool order = !gone.order.empty() && rows_[i].order == gone.order;
        const int like = 4 * int{lines} + 2 * int{order} + int{piece};
        if (like <= likest) continue;
        likest = like;
        best = static_cast<int>(i);
    }
    return best;
}

bool BenchModel::isOf(std::size_t row, const std::string& code) const {
    return rows_[row].ticket == code || rows_[row].piece.code == code || whose_[row].isFor(code);
}

int BenchModel::rowOfCode(const std::string& code, int now) const {
    if (now >= 0 && isOf(static_cast<std::size_t>(now), code)) return now;
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (isOf(i, code)) return static_cast<int>(i);
    return -1;
}

int BenchModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QString BenchModel::shaftOf(std::size_t row) const {
    const auto nameOf = [this](const shop::BenchMounting& each) {
        const cutting::Cutter& cutter = each.cutter.cutter;
        const QString shaft = each.setUp ? tr("shaft %1").arg(text(cutter.shafts[each.setUp->shaft].name))
                                         : tr("no shaft fits");
        return many_ ? text(cutter.name) + Dot + shaft : shaft;
    };
    const QString name = nameOf(rows_[row]);
    return row > 0 && nameOf(rows_[row - 1]) == name ? QString{} : name;
}

QString BenchModel::inOneLine(const QModelIndex& index) const {
    const auto said = [&](int role) { return index.data(role).toString(); };
    const QString line = tr("%1: %2 from %3, %4", "belt, cuts, piece, ticket")
                             .arg(said(BeltRole), said(CutsRole), said(PieceRole), said(OrderRole));
    const QString due = said(DueRole);
    return due.isEmpty() ? line : line + Dot + due;
}

QVariant BenchModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto row = static_cast<std::size_t>(index.row());
    const shop::BenchMounting& shown = rows_[row];
    switch (role) {
    case BeltRole:
        return text(shown.belt.designation);
    case CutsRole:
        return shownCuts(shown);
    case PieceRole:
        return shown.piece.place.empty() ? text(shown.piece.code)
                                         : text(shown.piece.code) + Dot + text(shown.piece.place);
    case OrderRole: {
        const QString codes =
            text(shown.ticket) + Dot + (shown.order.empty() ? tr("for the shelf") : text(shown.order));
        return shown.customer.empty() ? codes : codes + Dot + text(shown.customer);
    }
    case DueRole:
        return whose_[row].due ? tr("by %1", "a time").arg(shownDue(*whose_[row].due, today_)) : QString{};
    case ShaftRole:
        return shaftOf(row);
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return inOneLine(index);
    case Qt::ToolTipRole:
        return QStringList{index.data(BeltRole).toString(), shownCuts(shown),
                           index.data(PieceRole).toString(), index.data(OrderRole).toString(),
                           index.data(DueRole).toString()}
            .join(QLatin1Char('\n'))
            .trimmed();
    default:
        return {};
    }
}

} // namespace riband::ui
