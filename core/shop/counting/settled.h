#pragma once

#include "core/shop/counting/settle.h"

#include <map>

namespace riband::shop {

/// A settlement with what people know it by.
struct SettledCase {
    store::Settlement settlement;
    std::string place; ///< of the count
    std::optional<store::StockPiece> piece;
    std::string belt; ///< designation
    Unit unit;
    std::int64_t change = 0;                      ///< what it did to the width of its piece
    std::optional<store::Settlement> counteredBy; ///< none: it stands
};

/// All that was ever settled, newest first; what only counters another one stands with that. What is known of
/// each is read when it is asked for, since a shop of years has many.
class SettledCases {
public:
    explicit SettledCases(const Shop& shop);
    std::size_t size() const { return settlements_.size(); }
    store::SettlementId id(std::size_t index) const { return settlements_.at(index).id; }
    SettledCase at(std::size_t index) const;

private:
    const Shop& shop_;
    std::vector<store::Settlement> settlements_;
    std::map<store::SettlementId, store::Settlement> counters_; ///< by what they counter
};

} // namespace riband::shop
