#pragma once

#include "core/shop/shop.h"
#include "core/store/advices.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::app {

/// One thing that somebody did in the demo shop, as resources/demo/story.csv tells it.
struct Event {
    Moment at;
    std::string who;  ///< initials
    std::string act;  ///< receive, found, sale, otherwise, refuse, order, cancel, miscut, scrap, quote, park
    std::string text; ///< what the customer said; several lines by ";". Goods in and scrap: the belt
    std::string amount; ///< width received, really left, spoiled or thrown away: mm or ribs
    std::int64_t count = 1;
    std::string cost; ///< a sleeve
    std::string place;
    std::optional<Date> made;
    std::string customer;
    std::string note;
    store::OverrideKey why{}; ///< otherwise: why another way than the suggested one, in the words of the note
};

/// The told story, oldest first; `today` is day 0 of it. Throws std::runtime_error if the resource is
/// damaged.
std::vector<Event> toldStory(Date today);

/// From now on the shop is advised so: whether dead ends are cut for the shelf.
void setAdvice(store::Connection& connection, const store::AdviceRules& advice);

/// Does what the events tell, one by one, by the verbs of the shop: the book is made as a real one is. Throws
/// std::runtime_error that names an event which the shop refused.
void live(store::Connection& connection, std::shared_ptr<const belt::Tables> tables,
          const std::vector<Event>& events);

} // namespace riband::app
