#pragma once

#include "ui/desk/stock_reader.h"
#include "ui/which/identifier.h"

#include <QAbstractListModel>

namespace riband::ui {

/// The belts (or profiles) that it may be, likeliest first.
class CandidatesModel final : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { NameRole = Qt::UserRole, SizesRole, StockRole, HereRole, ChanceRole, ProbabilityRole };
    CandidatesModel(const belt::Tables& tables, StockReader& stock, QObject* parent = nullptr);
    void setAnswer(const Identifier::Shared& answer, bool keepWidth);
    void clear();
    const belt::identify::Candidate& candidate(int row) const {
        return answer_->found.candidates[static_cast<std::size_t>(row)];
    }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    QString sizesOf(const belt::identify::Candidate& candidate) const;
    void lookUp();
    const belt::Tables& tables_;
    StockReader& reader_;
    Identifier::Shared answer_;
    std::vector<std::optional<QString>> stock_; ///< beside the candidates; none while it is being read
    bool keepWidth_ = false;
};

} // namespace riband::ui
