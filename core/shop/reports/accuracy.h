#pragma once

#include "core/shop/reports/table.h"

namespace riband::shop {

enum class AccuracyBy : std::uint8_t {
    All,
    Place,
    Belt,
    Person, ///< who cut the piece last since it was counted before, by the month of the count
    Counter ///< who counted it, by the month
};

/// How often the book was right when it was counted. A piece counts once a count, by its last measurement;
/// it is right within the tolerance of the method, as the tolerances are now. A missing piece is wrong.
struct AccuracyRow {
    std::string group;           ///< "" for all, for no cut, or no place
    std::string month{};         ///< "2026-03" by person and counter
    std::int64_t counted = 0;    ///< pieces seen
    std::int64_t right = 0;      ///< of them: the width was
    std::int64_t elsewhere = 0;  ///< of them: lay elsewhere than the book said
    std::int64_t missing = 0;    ///< in the book and not seen
    std::int64_t unlabelled = 0; ///< seen and in no book
    /// right / (counted + missing); nothing if nothing was counted.
    std::optional<double> share() const;
};
/// The worst first, by the number that was wrong.
std::vector<AccuracyRow> accuracy(const Shop& shop, const Period& period, AccuracyBy by);

/// How much of the rack as it is now was counted in so many days before a moment, and has no open
/// difference.
struct ProvedShare {
    int days;
    std::int64_t pieces = 0, proved = 0;
    Money cost = Money::minor(0), provedCost = Money::minor(0);
};
ProvedShare provedShare(const Shop& shop, Moment until, int days = 90);

ReportTable tableOf(const std::vector<AccuracyRow>& rows);
ReportTable tableOf(const ProvedShare& share, const Currency& currency, Sees sees);

} // namespace riband::shop
