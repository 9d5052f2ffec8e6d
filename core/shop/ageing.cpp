#include "core/shop/ageing.h"

#include "core/shop/demand.h"
#include "core/shop/shelf_life.h"

#include <algorithm>

namespace riband::shop {

namespace {

using Why = Refusal::Why;
constexpr std::chrono::days year{365};

Date yearsAfter(Date day, int years) {
    const std::chrono::year_month_day date{day};
    const auto later = date + std::chrono::years{years};
    return later.ok() ? Date{later} : Date{later.year() / later.month() / std::chrono::last};
}

/// Gives each piece what is still expected to be sold till its day, the first due first.
class Pace {
public:
    Pace(std::map<store::BeltId, std::int64_t> soldInAYear, Date today)
        : sold_{std::move(soldInAYear)}, today_{today} {}

    Extent sells(const store::StockPiece& piece, Date until) {
        const std::int64_t days = std::max<std::int64_t>(0, (until - today_).count());
        const auto found = sold_.find(piece.belt);
        const std::int64_t pace = found == sold_.end() ? 0 : std::max<std::int64_t>(0, found->second);
        std::int64_t& given = given_[piece.belt];
        const std::int64_t left = std::max<std::int64_t>(0, pace * days / year.count() - given);
        const std::int64_t taken = std::min(left, piece.extent.count());
        given += taken;
        return Extent::of(piece.extent.unit(), taken);
    }

private:
    std::map<store::BeltId, std::int64_t> sold_, given_;
    Date today_;
};

} // namespace

Date useBy(const store::StockPiece& piece, store::ShelfYears life,
           const std::optional<store::Inspection>& last) {
    if (last && last->until) return *last->until;
    return yearsAfter(piece.born(), life.years);
}

std::vector<AgeingPiece> ageing(const Shop& shop, std::chrono::days within) {
    const Date today = dayOf(shop.now());
    const auto inspections = store::Upkeep{shop.connection}.lastInspections();
    const ShelfLife lives{shop};
    std::map<store::BeltId, store::StockedBelt> belts;
    for (const store::StockedBelt& belt : store::Catalogue{shop.connection}.all())
        belts.emplace(belt.id, belt);
    std::vector<AgeingPiece> rows;
    for (const store::StockPiece& piece : store::Pieces{shop.connection}.all()) {
        const store::StockedBelt& belt = belts.at(piece.belt);
        const auto found = inspections.find(piece.id);
        const auto last = found == inspections.end() ? std::nullopt : std::optional{found->second};
        const Date day = useBy(piece, lives.of(belt), last);
        const bool refused = last && !last->until;
        if (!refused && day > today + within) continue;
        rows.push_back(
            {piece, belt.designation, day, last && last->until, refused, Extent::none(piece.extent.unit())});
    }
    std::sort(rows.begin(), rows.end(), [](const AgeingPiece& a, const AgeingPiece& b) {
        return std::tie(a.useBy, a.piece.code) < std::tie(b.useBy, b.piece.code);
    });
    Pace pace{store::Sales{shop.connection}.soldSince(Moment{today - year}), today};
    for (AgeingPiece& row : rows)
        if (!row.refused) row.sells = pace.sells(row.piece, row.useBy);
    return rows;
}

std::optional<Date> inspect(const Shop& shop, store::PieceId id, bool sound, const std::string& note) {
    constexpr std::chrono::days early{183};
    store::Transaction transaction{shop.connection};
    const store::StockPiece piece = store::Pieces{shop.connection}.at(id);
    if (piece.gone()) refuse(Why::PieceGone, piece.code);
    store::Upkeep upkeep{shop.connection};
    const store::ShelfYears life = ShelfLife{shop}.of(store::Catalogue{shop.connection}.at(piece.belt));
    std::optional<store::Inspection> extension;
    for (const store::Inspection& inspection : upkeep.inspectionsOf(id))
        if (inspection.until && !inspection.takenBack) extension = inspection;
    if (sound && extension) refuse(Why::ExtendedAlready, piece.code);
    const Date day = useBy(piece, life, extension);
    const Moment now = shop.now();
    if (sound && day > dayOf(now) + early) refuse(Why::NotAged, piece.code);
    const auto until = sound ? std::optional{yearsAfter(day, life.extension)} : std::nullopt;
    upkeep.record({id, now, shop.person, until, note});
    transaction.commit();
    return until;
}

void undoInspection(const Shop& shop, store::PieceId id) {
    store::Transaction transaction{shop.connection};
    const store::StockPiece piece = store::Pieces{shop.connection}.at(id);
    if (piece.gone()) refuse(Why::PieceGone, piece.code);
    if (!store::Upkeep{shop.connection}.takeBackInspection(id, shop.person, shop.now()))
        refuse(Why::ActStays, piece.code);
    transaction.commit();
}

} // namespace riband::shop
