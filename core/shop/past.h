#pragma once

#include "core/foresight/outlook.h"
#include "core/foresight/worth.h"
#include "core/shop/shop.h"
#include "core/store/worth_tables.h"

#include <map>
#include <optional>

namespace riband::shop {

/// What a suggestion for a belt goes by beside the pieces that are there, read from the store at once.
struct Past {
    foresight::Setting setting;
    std::vector<foresight::Order> orders; ///< as they were asked for, oldest first
    double today = 0;                     ///< days since the first of them
    std::optional<store::StoredWorth> worth;
};

/// `widest`: of the belt's pieces; a sleeve may be wider than those that are usual now.
Past pastOf(const Shop& shop, const store::StockedBelt& belt, const store::ShopSettings& settings,
            Extent widest);
/// One order more, of today: what is being asked for just now.
void addToday(Past& past, const std::vector<foresight::Line>& lines);

/// Why there is no worth table to go by.
enum class WorthFault : std::uint8_t {
    None,      ///< there is one
    Missing,   ///< none was made yet
    OtherForm, ///< made by another version of Riband
    OutOfDate, ///< made for other widths, rules or limits
    Unfit,     ///< the belt can't be weighed: no width is listed
};

/// The table before anything is learned: most of a width's size, as long as a listed one can be cut from it;
/// up to three ready belts of each listed width are worth half of their width, so that only dead ends are cut
/// up.
foresight::WorthTable unlearnedTable(const foresight::Setting& setting);

/// What is known of a belt's future.
struct Future {
    foresight::Outlook outlook;
    foresight::WorthTable table; ///< unlearned if there is a fault
    WorthFault fault;
    int version; ///< of the table, 0 if there is a fault
};
/// Pure. Nothing if the setting is no shop's (`Unfit`).
std::optional<Future> futureOf(const Past& past);

} // namespace riband::shop
