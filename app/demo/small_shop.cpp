#include "app/demo/demo_shop.h"
#include "app/demo/dice.h"
#include "app/demo/story.h"
#include "app/import.h"
#include "core/belt/reader.h"

#include <algorithm>

namespace riband::app {

namespace {

using namespace std::chrono_literals;

constexpr int daysOfTrade = 118;
constexpr std::size_t refusesEvery = 5; ///< of those who do otherwise: wants no belts for the shelf
constexpr std::size_t followed = 10; ///< sales of the trade at first; then somebody knows better where he can
const std::vector<std::string> customers{"",
                                         "",
                                         "",
                                         "Northfold Packaging",
                                         "Aldermoor Dairy",
                                         "Tannet Sawmill",
                                         "Quill Press",
                                         "Orchard Laundry",
                                         "Brackwater Pumps"};

/// The ordinary business round the told story: sales of belts that the story leaves alone.
class Trade {
public:
    Trade(store::Connection& connection, const belt::Tables& tables, Date today, std::uint64_t seed,
          const std::vector<Event>& story)
        : tables_{tables}, today_{today}, dice_{seed} {
        for (auto& belt : store::Catalogue{connection}.all())
            if (!belt.listed.empty() && !toldOf(story, belt.designation)) belts_.push_back(std::move(belt));
    }

    std::vector<Event> events() {
        std::vector<Event> events;
        for (int day = daysOfTrade; day > 0; --day)
            for (std::size_t sales = dice_.below(3); sales > 0; --sales)
                events.push_back(sale(today_ - std::chrono::days{day} + 9h));
        for (std::size_t i = followed; i < events.size(); ++i)
            doOtherwise(events[i], i - followed);
        return events;
    }

private:
    static bool toldOf(const std::vector<Event>& story, const std::string& designation) {
        return std::any_of(story.begin(), story.end(),
                           [&](const Event& event) { return event.text == designation; });
    }

    /// What people say when they know better: sometimes they do.
    static void doOtherwise(Event& event, std::size_t number) {
        using store::OverrideKey;
        const struct {
            OverrideKey why;
            const char* who;
            const char* words;
        } reasons[] = {{OverrideKey::NearerToHand, "CL", "a pallet stood before the other one"},
                       {OverrideKey::OlderFirst, "ST", "made earlier by its label"},
                       {OverrideKey::CustomerSawIt, "CL", "wanted it from the piece on the counter"},
                       {OverrideKey::NearerToHand, "CL", ""},
                       {OverrideKey::KeptForSomebody, "ST", "Quill Press comes for that one on Monday"},
                       {OverrideKey::Damaged, "CL", "an edge of the other is frayed"},
                       {OverrideKey::Other, "CL", "the label of the other can't be read"}};
        if (number % refusesEvery == refusesEvery - 1) {
            event.act = "refuse";
            return;
        }
        const auto& reason = reasons[number % std::size(reasons)];
        event.act = "otherwise";
        event.who = reason.who;
        event.why = reason.why;
        event.note = reason.words;
    }

    Event sale(Moment morning) {
        const store::StockedBelt& belt = dice_.of(belts_);
        const Extent width = dice_.of(belt.listed);
        const std::string printed = belt::printed(belt.belt, width, tables_);
        return {.at = morning + std::chrono::minutes{dice_.below(420)},
                .who = "CL",
                .act = "sale",
                .text = std::to_string(1 + dice_.below(3)) + " x " + printed,
                .amount = "",
                .count = 1,
                .cost = "",
                .place = "",
                .made = std::nullopt,
                .customer = dice_.of(customers),
                .note = ""};
    }

    const belt::Tables& tables_;
    Date today_;
    Dice dice_;
    std::vector<store::StockedBelt> belts_;
};

} // namespace

void makeSmallShop(store::Connection& connection, const std::shared_ptr<const belt::Tables>& tables,
                   Moment now, std::uint64_t seed) {
    furnish(connection);
    const auto owner = store::People{connection}.present().front().id;
    importBelts({connection, tables, owner, [now] { return now; }}, QStringLiteral(":/demo/belts.csv"));
    const Date today = dayOf(now - 8h); // the story's last day is over by eight in the morning
    std::vector<Event> events = toldStory(today);
    const std::vector<Event> trade = Trade{connection, *tables, today, seed, events}.events();
    events.insert(events.end(), trade.begin(), trade.end());
    std::stable_sort(events.begin(), events.end(),
                     [](const Event& a, const Event& b) { return a.at < b.at; });
    // The told half year knew no shelf of finished ends; from today on the shop has one.
    store::AdviceRules without;
    without.finish = false;
    without.shelfLimit = 0;
    setAdvice(connection, without);
    live(connection, tables, events);
    setAdvice(connection, {});
}

} // namespace riband::app
