#pragma once

#include "core/shop/reports/both_ways.h"
#include "core/shop/reports/table.h"

#include <set>

namespace riband::shop {

/// What a figure of a report is made of, line by line.
struct Basis {
    ReportTable lines;
    std::int64_t all = 0; ///< lines; of many movements only the newest are told one by one
    /// What all of them come to, in the form of the report's own table: the figure. "" where it is no sum of
    /// theirs: a name, a share.
    std::string sum{};
    std::string unit{}; ///< of the sum: "mm", "ribs", "m²", "kg", "%", a currency's code; "" of a number
};

/// Behind one figure of a line of the waste report, by its name in files: "trim", "cost_trim", "opening",
/// "lost_m2". Nothing where none can be: a figure that its line leaves at zero. Any other name means the
/// line.
std::optional<store::Behind> behindFigure(const store::Behind& row, const std::string& name);
/// What the movements behind a figure come to in it; its `lines` are for who can name a movement to say.
struct Moves {
    struct Line {
        store::RecordedMovement movement;
        std::string counts; ///< what it adds to the figure; "" where the figure is no sum
    };
    std::vector<Line> newest;
    Basis basis;
};
Moves movesBehind(const Shop& shop, const store::Behind& what, const std::string& figure,
                  const Currency& currency, std::size_t most);

/// Which pieces stand behind a figure of the stock report: those of some belts, or of an age.
struct StockPart {
    std::set<store::BeltId> belts{}; ///< none: all
    std::optional<AgeRow> age{};
};
/// The pieces, each with what it adds to `figure` ("pieces", "width", "cost", "worth").
Basis piecesBehind(const Shop& shop, Date today, const StockPart& part, const std::string& figure,
                   const Currency& currency, Sees sees);

/// The order lines behind a figure of the margin report ("lines", "width", "revenue", "cost", "margin"): of a
/// belt by its designation, or of a customer ("" walk-ins).
struct SalesPart {
    std::optional<std::string> belt{}, customer{};
};
Basis salesBehind(const Shop& shop, const Period& period, const SalesPart& part, const std::string& figure,
                  const Currency& currency);

/// What a millimetre or rib of a belt really costs is reckoned from: its sleeve, and what was sold of what
/// was used.
Basis fullCostBehind(const Shop& shop, const Period& period, const std::string& belt,
                     const Currency& currency);

/// The decisions behind a figure of the override report: of all, a person, a reason or a belt, as `kind` and
/// `name` of its table say. With `played` what each came to replayed both ways.
Basis decisionsBehind(const Shop& shop, const Period& period, const std::string& kind,
                      const std::string& name, const std::string& figure, const BothWays* played,
                      const Currency& currency, Sees sees);

// The day's close: what was taken in a way, the orders made that now stand so, what an order is made of.
Basis takingsBehind(const Shop& shop, Date day, store::Payment kind, const std::string& figure,
                    const Currency& currency);
Basis ordersMadeBehind(const Shop& shop, Date day, store::OrderState state, const std::string& figure,
                       const Currency& currency);
Basis orderLinesBehind(const Shop& shop, const std::string& order, const std::string& figure,
                       const Currency& currency);

} // namespace riband::shop
