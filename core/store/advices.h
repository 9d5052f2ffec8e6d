#pragma once

#include "core/measure/date.h"
#include "core/measure/extent.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::store {

/// What a suggestion rested on. A layer that is missing or out of date falls back to the one before it.
enum class AdviceBasis : std::uint8_t {
    SmallestThatFits,
    ExactPlan, ///< best for this order alone
    LookAhead, ///< worth table of the belt and look-ahead
};

/// Why a person did something else than was suggested.
enum class OverrideKey : std::uint8_t {
    OlderFirst,
    NearerToHand,
    CustomerSawIt,
    Damaged,
    KeptForSomebody,
    Other
};

/// A way to serve the belts of one order and kind, as it was expected on that day.
struct AdvisedWay {
    /// One mounting.
    struct FromPiece {
        PieceId piece;
        Extent left;
        friend bool operator==(const FromPiece&, const FromPiece&) = default;
    };
    /// Belts that are cut for the shelf in the same mountings.
    struct ForShelf {
        Extent extent;
        std::int64_t belts;
        friend bool operator==(const ForShelf&, const ForShelf&) = default;
    };
    double cost = 0; ///< expected: worth taken from the rack and labour, less worth put back; µm or ribs
    Money costMoney = Money::minor(0); ///< the same, by the cost of the belt's sleeve then
    double worthLeft = 0;              ///< expected worth of the rests and of the shelf belts; µm or ribs
    std::int64_t sleevesOpened = 0;
    std::int64_t fromShelf = 0;     ///< ready belts taken
    std::vector<FromPiece> pieces;  ///< as many as mountings
    std::vector<ForShelf> forShelf; ///< narrow first, each width once
    friend bool operator==(const AdvisedWay&, const AdvisedWay&) = default;
};

/// What was suggested for the belts of one kind in an order, and what the order took: kept for the owner
/// ("does the suggestion pay?"). taken.cost - suggested.cost is what not following it is expected to cost.
struct Advice {
    AdviceId id; ///< given by the store
    OrderId order;
    BeltId belt;
    Moment at;
    PersonId person;
    AdviceBasis basis = AdviceBasis::SmallestThatFits;
    int worthVersion = 0; ///< of the belt's worth table; 0: there was none
    AdvisedWay suggested, taken;
    bool shelfDeclined = false;               ///< belts for the shelf were suggested and not wanted
    bool overridden = false;                  ///< other pieces than suggested
    std::optional<OverrideKey> overrideKey{}; ///< none if no reason was given
    std::string overrideWords{};              ///< the person's own, may be ""
};

/// The only code that names the tables `advice`, `advice_way`, `advice_piece` and `advice_shelf`.
class Advices {
public:
    explicit Advices(Connection& connection) : connection_{connection} {}
    AdviceId add(const Advice& advice); ///< inside the caller's transaction
    std::vector<Advice> ofOrder(OrderId order) const;
    std::vector<Advice> between(Moment from, Moment until) const; ///< from <= at < until, oldest first

private:
    Connection& connection_;
};

} // namespace riband::store
