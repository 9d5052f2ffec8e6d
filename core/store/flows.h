#pragma once

#include "core/store/ledger.h"

#include <cstddef>

namespace riband::store {

/// Width and money of one belt that one person moved on one cutter, or by hand, to an account (plus) or from
/// it (minus): before a moment, and from there to another.
struct Flow {
    BeltId belt;
    PersonId person; ///< 0 where the sums are of all people and cutters
    std::optional<CutterId> cutter;
    Account account; ///< never Rack, which is minus the sum of the others, but behind a figure
    std::optional<ScrapReason> reason;
    std::int64_t before, within;
    Money costBefore, costWithin;
};

/// The same by the place of the piece that the width came from; "" where it lies nowhere. What was moved
/// before is told of Ready, and of all other accounts together as if it had been sold.
struct PlaceFlow {
    std::string place;
    Flow flow; ///< `person` is the last that moved some within; no cutter
};

/// Sums over the movements of a span, for judging what chance does: used up is what was sold or lost. Each
/// movement that used something up counts once. Sums of squares in square units.
struct Scatter {
    std::int64_t movements = 0;
    std::int64_t sold = 0, lost = 0;
    double lostLost = 0, lostUsed = 0, usedUsed = 0;
};

/// Which movements stand behind a figure; what is not said is not asked.
struct Behind {
    Moment from, until;
    std::vector<BeltId> belts{}; ///< any of them; none: all
    std::optional<PersonId> person{};
    std::optional<CutterId> cutter{}; ///< 0: by hand
    std::vector<Account> accounts{};  ///< any of them; none: all
    std::optional<ScrapReason> reason{};
    std::optional<std::string> place{}; ///< as in PlaceFlow
    std::optional<Unit> unit{};
};

/// The movements behind a figure, and what their postings that count in it come to.
struct Evidence {
    /// What one movement posted to the accounts that were asked for, as booked: nothing where none were.
    struct Line {
        MovementId movement;
        std::vector<Flow> flows; ///< by account and reason, in `within`
    };
    std::vector<Line> newest;   ///< newest first, as many as were asked for
    std::int64_t movements = 0; ///< all
    std::vector<Flow> sums;     ///< of all, by belt, account and reason, in `within`
};

/// The ledger summed for reports. Sums of whole spans of thirty days are kept (`follow`), so that a report
/// over years reads no posting but those at its edges. The only code that names the tables
/// `flow_total` and `scatter_total`.
class Flows {
public:
    explicit Flows(Connection& connection) : connection_{connection} {}
    /// Adds a movement to the sums, which are written with its transaction; Ledger::record calls it.
    void follow(const Movement& movement);
    /// By belt, person, cutter, account, reason; nothing that is zero throughout. Moments are after 1970.
    std::vector<Flow> sums(Moment from, Moment until) const;
    /// The same of all people and cutters together, of which there are fewer.
    std::vector<Flow> sumsOfAll(Moment from, Moment until) const;
    /// And without what was before, which is read more quickly still; of one account or of each.
    std::vector<Flow> within(Moment from, Moment until, std::optional<Account> only = std::nullopt) const;
    /// Of each person and cutter again, without what was before.
    std::vector<Flow> withinOfEach(Moment from, Moment until) const;
    /// By place, from the pieces and the postings since, as a piece may be moved. Width that was divided
    /// counts before the span where it lies now.
    std::vector<PlaceFlow> byPlace(Moment from, Moment until) const;
    /// By month (UTC) and unit, from the sums that are kept; months without movements are not told.
    struct MonthScatter {
        std::chrono::year_month month;
        Unit unit;
        Scatter scatter;
    };
    std::vector<MonthScatter> scatters(std::chrono::year_month first, std::chrono::year_month last) const;
    /// At most `most` movements are told one by one; the sums are of all.
    Evidence behind(const Behind& what, std::size_t most) const;
    std::optional<Moment> firstMovement() const;

private:
    Connection& connection_;
};

/// Writes the sums that are waiting; Transaction::commit does it.
void writeFlows(Connection& connection);

} // namespace riband::store
