#include "ui/which/candidates_model.h"

#include "ui/which/stock_here.h"
#include "ui/words/identify_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QStringList>

namespace riband::ui {

using belt::identify::Candidate;

CandidatesModel::CandidatesModel(const belt::Tables& tables, StockReader& stock, QObject* parent)
    : QAbstractListModel{parent}, tables_{tables}, reader_{stock} {
    connect(&reader_, &StockReader::read, this, [this] {
        if (rowCount() == 0) return;
        lookUp();
        emit dataChanged(index(0), index(rowCount() - 1));
    });
}

void CandidatesModel::setAnswer(const Identifier::Shared& answer, bool keepWidth) {
    beginResetModel();
    answer_ = answer;
    keepWidth_ = keepWidth;
    lookUp();
    endResetModel();
}

/// What of each candidate is here, as far as that is read.
void CandidatesModel::lookUp() {
    stock_.clear();
    for (const Candidate& each : answer_->found.candidates) {
        const auto* stock = each.belt ? reader_.of(each.belt->profile) : nullptr;
        stock_.push_back(stock ? std::optional{stockHere(*each.belt, *stock)} : std::nullopt);
    }
}

void CandidatesModel::clear() {
    beginResetModel();
    answer_.reset();
    stock_.clear();
    endResetModel();
}

QString CandidatesModel::sizesOf(const Candidate& candidate) const {
    QStringList parts;
    if (candidate.belt && candidate.belt->teeth)
        parts << shownReading(belt::identify::Measure::Teeth,
                              static_cast<double>(candidate.belt->teeth->count()));
    if (candidate.belt) parts << shown(candidate.belt->length);
    if (candidate.width) {
        const Extent offered = candidate.width->offered(keepWidth_);
        QString wide = shown(offered);
        if (offered.unit() != Unit::Rib) {
            wide = tr("%1 wide").arg(wide);
            const belt::Belt belt = candidate.belt.value_or(
                belt::Belt{candidate.profile->name, {}, Length::millimetres(1000), {}});
            if (const auto tolerance = tables_.widthTolerance(belt, offered.width()))
                wide += QLatin1Char(' ') + shown(*tolerance);
        }
        parts << wide;
    }
    if (!candidate.belt) parts << text(candidate.profile->standard);
    if (!candidate.listed) parts << tr("in no list");
    return parts.join(QStringLiteral(" · "));
}

int CandidatesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || !answer_ ? 0 : static_cast<int>(answer_->found.candidates.size());
}

QVariant CandidatesModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Candidate& of = candidate(index.row());
    const auto& stock = stock_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case NameRole:
        return nameOf(of);
    case SizesRole:
        return sizesOf(of);
    case StockRole:
        if (!stock) return of.belt ? QStringLiteral("…") : QString{};
        return stock->isEmpty() ? tr("not here") : *stock;
    case HereRole:
        return stock && !stock->isEmpty();
    case ChanceRole:
        return shownChance(of.probability);
    case ProbabilityRole:
        return of.probability;
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return QStringList{nameOf(of), shownChance(of.probability), sizesOf(of),
                           index.data(StockRole).toString()}
            .join(QStringLiteral(", "));
    default:
        return {};
    }
}

} // namespace riband::ui
