#include "core/shop/learn.h"

#include "core/foresight/fit.h"
#include "core/foresight/worth_text.h"

#include <algorithm>

namespace riband::shop {

namespace {

using foresight::Fit;
constexpr int unitsASlice = 60; // orders played, some milliseconds
constexpr std::uint64_t fitDice = 77;
constexpr auto oldAfter = std::chrono::days{30};

Extent widestOf(const Shop& shop, const store::StockedBelt& belt) {
    Extent widest = Extent::none(belt.unit);
    for (const store::StockPiece& piece : store::Pieces{shop.connection}.ofBelt(belt.id))
        widest = std::max(widest, piece.extent);
    return widest;
}

Lesson lessonOf(const Shop& shop, store::BeltId id, const store::ShopSettings& settings) {
    const store::StockedBelt belt = store::Catalogue{shop.connection}.at(id);
    return {id, pastOf(shop, belt, settings, widestOf(shop, belt)), shop.now()};
}

} // namespace

bool isDue(const Lesson& lesson) {
    const Past& past = lesson.past;
    if (!past.setting.fault().empty()) return false;
    if (!past.worth || past.worth->form != foresight::worthTextForm ||
        past.worth->madeFor != foresight::print(past.setting))
        return true;
    const auto now = static_cast<std::int64_t>(past.orders.size());
    const std::int64_t then = past.worth->orders;
    if (now >= then + std::max<std::int64_t>(5, then / 10)) return true;
    const bool any =
        !past.orders.empty() && past.today - past.orders.back().day <
                                    static_cast<double>((lesson.now - past.worth->made).count()) / 86'400'000;
    return any && lesson.now - past.worth->made > oldAfter;
}

Lesson lessonOf(const Shop& shop, store::BeltId belt) {
    return lessonOf(shop, belt, store::Settings{shop.connection}.read());
}

std::vector<store::BeltId> dueBelts(const Shop& shop, std::size_t ofMost) {
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    auto belts = store::Orders{shop.connection}.timesOrdered();
    std::stable_sort(belts.begin(), belts.end(),
                     [](const auto& a, const auto& b) { return a.second > b.second; });
    belts.erase(belts.begin() + static_cast<std::ptrdiff_t>(std::min(ofMost, belts.size())), belts.end());
    std::vector<store::BeltId> due;
    for (const auto& [belt, often] : belts)
        if (isDue(lessonOf(shop, belt, settings))) due.push_back(belt);
    return due;
}

std::optional<store::StoredWorth> learn(const Lesson& lesson, const std::function<bool(double)>& goOn) {
    const std::optional<Future> future = futureOf(lesson.past);
    if (!future) return std::nullopt;
    Fit fit{lesson.past.setting, foresight::Fit::Knobs{},
            foresight::Dice::of(lesson.past.setting.seed, fitDice)};
    while (fit.rounds() < Fit::firstRounds) {
        if (!goOn(static_cast<double>(fit.rounds()) / Fit::firstRounds)) return std::nullopt;
        fit.advance(future->outlook, unitsASlice);
    }
    return store::StoredWorth{foresight::worthTextForm,
                              0,
                              lesson.now,
                              static_cast<std::int64_t>(lesson.past.orders.size()),
                              foresight::print(lesson.past.setting),
                              foresight::print(fit.table())};
}

int keepWorth(const Shop& shop, store::BeltId belt, const store::StoredWorth& table) {
    store::Transaction transaction{shop.connection};
    const int version = store::WorthTables{shop.connection}.put(belt, table);
    transaction.commit();
    return version;
}

} // namespace riband::shop
