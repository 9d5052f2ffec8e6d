#pragma once

#include "ui/which/identifier.h"
#include "ui/which/stock_here.h"

#include <QAbstractListModel>

namespace riband::ui {

/// The belts (or profiles) that it may be, likeliest first.
class CandidatesModel final : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { NameRole = Qt::UserRole, SizesRole, StockRole, HereRole, ChanceRole, ProbabilityRole };
    explicit CandidatesModel(const belt::Tables& tables, QObject* parent = nullptr)
        : QAbstractListModel{parent}, tables_{tables} {}
    void setAnswer(const Identifier::Shared& answer, StockHere& stock, bool keepWidth);
    void clear();
    const belt::identify::Candidate& candidate(int row) const {
        return answer_->found.candidates[static_cast<std::size_t>(row)];
    }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    QString sizesOf(const belt::identify::Candidate& candidate) const;
    const belt::Tables& tables_;
    Identifier::Shared answer_;
    std::vector<QString> stock_; ///< beside the candidates
    bool keepWidth_ = false;
};

} // namespace riband::ui
