#pragma once

#include "core/shop/order.h"

namespace riband::shop {

/// Mountings of one belt that are planned, for one order or several, and might be fewer if cut together.
struct Batch {
    std::vector<store::OrderId> orders;         ///< longest waiting first
    std::string codes;                          ///< of the orders, by spaces
    store::ShopCutter cutter;                   ///< that all are planned on, else the usual one
    std::optional<std::size_t> shaft;           ///< of the cutter; none if no shaft takes the belt
    std::int64_t mountings;                     ///< planned now
    std::vector<store::TicketMounting> planned; ///< these
    Outlook outlook; ///< their belts as lines, the pieces as if they were not planned yet
};

/// Every belt for which more than one mounting is planned; those of one shaft side by side, the longest
/// waiting first. Reads the store; `joint` then needs none.
std::vector<Batch> batches(const Shop& shop);

/// How the belts of a batch would be cut together.
struct Joint {
    std::int64_t mountings;
    std::int64_t sleeves; ///< opened
    Extent trim;          ///< saved
    /// Expected to be saved in all by the belt's worth table, labour of mounting included; nothing without a
    /// table.
    std::optional<Extent> width{};
    std::map<Extent, std::int64_t> forShelf{}; ///< so many belts of each width are cut as well
};
/// Belts cut for the shelf as well: none, unless somebody asks for what is suggested.
enum class ForShelf : std::uint8_t { None, AsSuggested };

/// Nothing if it saves no mounting, costs more than what is planned, or not all could be served. Pure.
std::optional<Joint> joint(const Batch& batch, const cutting::Limits& limits = {},
                           ForShelf shelf = ForShelf::None);

/// As `together` (core/shop/order.h), what is planned of the batch's belt alone.
Ordered cutTogether(const Shop& shop, const Batch& batch, ForShelf shelf);

} // namespace riband::shop
