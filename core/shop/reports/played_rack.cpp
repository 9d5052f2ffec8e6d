#include "core/shop/reports/played_rack.h"

#include "core/shop/offers.h"
#include "core/shop/once.h"

#include <algorithm>

namespace riband::shop {

namespace {

using cutting::PieceKind;
using foresight::Size;

constexpr int pricings = 60;      ///< as for how far one could have come
constexpr int planSteps = 20'000; ///< looks of the planner at its limit: no clock, so that the same is found

Size sizeOf(Extent extent) { return static_cast<Size>(extent.count()); }

foresight::Hindsight hindsightOf(const BeltDeeds& belt) {
    std::vector<foresight::Order> orders;
    const auto add = [&](const foresight::Order& order) {
        auto some = possible(order, belt.past.setting);
        if (!some.lines.empty()) orders.push_back(std::move(some));
    };
    for (const foresight::Order& order : belt.past.orders)
        add(order);
    for (const Deed& deed : belt.deeds)
        add({0, linesOf(deed)});
    return {belt.past.setting, orders, pricings};
}

} // namespace

std::vector<foresight::Line> linesOf(const Deed& deed) {
    std::vector<foresight::Line> lines;
    for (const Wish& wish : deed.wishes)
        lines.push_back({sizeOf(wish.extent), static_cast<int>(wish.quantity)});
    return lines;
}

JudgesPrices::JudgesPrices(const BeltDeeds& belt)
    : setting_{belt.past.setting}, hindsight_{hindsightOf(belt)} {}

double JudgesPrices::ofPiece(Extent extent, PieceKind kind) const {
    if (kind == PieceKind::Sleeve) return static_cast<double>(extent.count());
    if (sizeOf(extent) < setting_.rules.stub) return 0;
    return std::min(hindsight_.worthOfRemnant(sizeOf(extent)), static_cast<double>(extent.count()));
}

double JudgesPrices::ofReady(Extent extent) const { return hindsight_.worthOfReady({{sizeOf(extent), 1}}); }

bool PlayedRack::follow(const Deed& deed) {
    const store::AdvisedWay& way = deed.advice.suggested;
    for (const auto& from : way.pieces)
        if (!cut(from.piece, from.left)) return false;
    for (const auto& belts : way.forShelf)
        for (std::int64_t i = 0; i < belts.belts; ++i)
            shelve(belts.extent, dayOf(deed.advice.at));
    std::int64_t ready = way.fromShelf;
    for (const Wish& wish : deed.wishes)
        for (std::int64_t i = 0; i < wish.quantity && ready > 0 && unshelve(wish.extent); ++i)
            --ready;
    return ready == 0;
}

void PlayedRack::decide(const Deed& deed, const Past& past, const Future* future) {
    const Date today = dayOf(deed.advice.at);
    bringSleeves(deed.wishes, today);
    const Outlook outlook = outlookFor(deed.wishes, today, past);
    cutting::Limits limits;
    limits.stop = [looks = 0]() mutable { return ++looks > planSteps; };
    const Way way = suggestBy(outlook, future, limits).best;
    for (const cutting::Taken& taken : way.plan.taken)
        unshelve(outlook.pieces[taken.piece].extent);
    for (std::size_t i = 0; i < way.plan.mountings.size(); ++i) {
        cut(outlook.pieces[way.plan.mountings[i].piece].id, way.left(i, outlook.problem.rules));
        if (i < way.forShelf.size())
            for (const Extent belt : way.forShelf[i])
                shelve(belt, today);
    }
}

PlayedRack::Contents PlayedRack::contentsOf(std::vector<store::StockPiece> pieces) {
    std::sort(pieces.begin(), pieces.end(), [](const auto& a, const auto& b) { return a.extent < b.extent; });
    Contents contents;
    for (const store::StockPiece& piece : pieces)
        if (piece.kind != PieceKind::Sleeve) contents.emplace(piece.kind, piece.extent);
    return contents;
}

bool PlayedRack::cut(store::PieceId id, Extent left) {
    const auto piece =
        std::find_if(pieces_.begin(), pieces_.end(), [&](const auto& each) { return each.id == id; });
    if (piece == pieces_.end() || piece->extent <= left) return false;
    cost_ += prices_.ofPiece(piece->extent, piece->kind) - prices_.ofPiece(left, PieceKind::Remnant) +
             prices_.mounting();
    piece->kind = PieceKind::Remnant;
    piece->extent = left;
    if (left < rules().stub) pieces_.erase(piece);
    return true;
}

void PlayedRack::shelve(Extent extent, Date today) {
    cost_ -= prices_.ofReady(extent);
    pieces_.push_back(made(PieceKind::Ready, extent, today));
}

bool PlayedRack::unshelve(Extent extent) {
    const auto ready = std::find_if(pieces_.begin(), pieces_.end(), [&](const auto& piece) {
        return piece.kind == PieceKind::Ready && piece.extent == extent;
    });
    if (ready == pieces_.end()) return false;
    cost_ += prices_.ofReady(extent);
    pieces_.erase(ready);
    return true;
}

/// The shop bought what it needed: in another history it would have as well.
void PlayedRack::bringSleeves(const std::vector<Wish>& wishes, Date today) {
    const Extent sleeve = belt_.belt.newSleeve;
    std::int64_t wanted = sleeve.count(), there = 0;
    for (const Wish& wish : wishes)
        wanted += 2 * wish.quantity * (wish.extent + rules().kerf).count();
    for (const store::StockPiece& piece : pieces_)
        if (piece.kind == PieceKind::Sleeve) there += piece.extent.count();
    for (; there < wanted; there += sleeve.count())
        pieces_.push_back(made(PieceKind::Sleeve, sleeve, today));
}

store::StockPiece PlayedRack::made(PieceKind kind, Extent extent, Date today) {
    const std::int64_t number = ++made_;
    return {.id = store::PieceId{-number},
            .code = "+" + std::to_string(number),
            .belt = belt_.belt.id,
            .kind = kind,
            .extent = extent,
            .reserved = Extent::none(extent.unit()),
            .cost = Money::minor(0),
            .parent = std::nullopt,
            .place = "",
            .received = today,
            .made = std::nullopt,
            .batch = ""};
}

Outlook PlayedRack::outlookFor(const std::vector<Wish>& wishes, Date today, const Past& past) const {
    std::vector<cutting::Line> lines;
    std::vector<Extent> asked;
    for (const Wish& wish : wishes) {
        lines.push_back({std::to_string(lines.size() + 1), wish.extent, wish.quantity});
        asked.push_back(wish.extent);
    }
    const std::vector<Offer> offers = offersOf(pieces_, Promises::none(), rules(), asked);
    std::vector<store::StockPiece> offered;
    std::map<Extent, int> shelf;
    for (const Offer& offer : offers)
        offered.push_back(offer.piece);
    for (const store::StockPiece& piece : pieces_)
        if (piece.kind == PieceKind::Ready) ++shelf[piece.extent];
    return {belt_.belt,
            std::move(offered),
            problemOf(belt_.belt, belt_.settings, offers, std::move(lines)),
            today,
            past,
            shelf};
}

} // namespace riband::shop
