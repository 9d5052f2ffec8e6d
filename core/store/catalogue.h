#pragma once

#include "core/belt/belt.h"
#include "core/measure/extent.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::store {

/// Whether belts of listed widths may be cut for the shelf before anybody asks for them.
enum class PreCut : std::uint8_t {
    WherePays, ///< where trim is a large share of the rubber used (narrow and ribbed belts)
    Never,     ///< only what finishes a piece
    Always,
};

/// A belt that the shop keeps or has kept.
struct StockedBelt {
    BeltId id;
    belt::Belt belt;
    std::string designation; ///< belt::designation(belt)
    Unit unit;
    std::string body; ///< "rubber", "polyurethane", "" unknown
    std::string cord; ///< "glass", "steel", "aramid", "" unknown
    WidthPrice price;
    Extent newSleeve; ///< usual width of a sleeve as bought
    Money sleeveCost; ///< what one costs, last
    int deliveryDays;
    std::vector<Extent> listed; ///< widths that the shop usually sells, narrow first
    PreCut preCut = PreCut::WherePays;
};

/// The shop's belts. The only code that names the tables `belt` and `listed_width`.
class Catalogue {
public:
    explicit Catalogue(Connection& connection) : connection_{connection} {}
    std::optional<StockedBelt> find(const belt::Belt& belt) const;
    StockedBelt at(BeltId id) const;      ///< throws StoreError if there is none
    std::vector<StockedBelt> all() const; ///< by designation
    /// Belts of the same profile, any construction and length.
    std::vector<StockedBelt> ofProfile(const std::string& profile) const;
    BeltId add(const StockedBelt& belt); ///< `id` is not read
    void change(const StockedBelt& belt);

private:
    Connection& connection_;
};

} // namespace riband::store
