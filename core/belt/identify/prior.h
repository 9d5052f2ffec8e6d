#pragma once

#include "core/belt/identify/figures.h"
#include "core/belt/tables.h"

#include <memory>
#include <vector>

namespace riband::belt::identify {

/// How often the shop has sold a belt, as customers who wanted it (not as belts: one customer's hundred is
/// one).
struct Sale {
    Belt belt;
    double times;
};

/// A belt that the one on the counter may be, and how likely that was before anything was measured.
struct Possible {
    Length length;
    std::int64_t teeth; ///< 0 of a ribbed belt
    double logPrior;
    bool listed; ///< in a maker's list
};

/// What is known before a belt is measured: the tables and what is usual. Immutable; one serves many answers
/// and threads.
///
/// A listed belt weighs 1/2 and 1 for each maker who lists it; of double-sided belts 3 % of that. What is in
/// no list weighs, all lengths of a profile together, 3 % of its lists, at least 2. (Common practice, no
/// source.) Sales are added to that as if the lists were 20 customers and a tenth of those who came: with
/// many sales the shop's own custom rules, and what it never sold stays possible.
class Prior {
public:
    explicit Prior(std::shared_ptr<const Tables> tables, const std::vector<Sale>& sales = {});
    const Tables& tables() const { return *tables_; }
    const std::shared_ptr<const Tables>& sharedTables() const { return tables_; }
    const std::vector<Sizes>& sizes() const { return sizes_; } ///< one a profile, in the order of the tables
    const std::vector<Possible>& belts() const { return belts_; }
    /// Where the belts of this profile begin and end.
    std::pair<std::size_t, std::size_t> rangeOf(std::size_t profile) const {
        return {starts_[profile], starts_[profile + 1]};
    }
    std::size_t profileOf(std::size_t belt) const;
    Belt belt(std::size_t index) const;

private:
    std::shared_ptr<const Tables> tables_;
    std::vector<Sizes> sizes_;
    std::vector<Possible> belts_;
    std::vector<std::size_t> starts_;
};

} // namespace riband::belt::identify
