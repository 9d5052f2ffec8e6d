#include "core/shop/allot.h"

#include "core/shop/advised.h"
#include "core/shop/chosen_way.h"
#include "core/shop/outlook.h"
#include "core/shop/shelf_fill.h"
#include "core/shop/suggest_together.h"

#include <algorithm>

namespace riband::shop {

namespace {

using cutting::PieceKind;

/// The wanted lines of one belt, while they are planned.
class BeltAllotment {
public:
    BeltAllotment(const Shop& shop, const store::ShopSettings& settings, Promises& promises,
                  store::BeltId belt, Allotting how, Allotment& into)
        : shop_{shop}, settings_{settings}, promises_{promises}, belt_{store::Catalogue{shop.connection}.at(
                                                                     belt)},
          pieces_{store::Pieces{shop.connection}.ofBelt(belt)}, how_{how}, into_{into} {}

    void spare(const std::set<store::PieceId>& pieces) {
        std::erase_if(pieces_, [&](const store::StockPiece& each) { return pieces.contains(each.id); });
    }

    void serve(const std::vector<Wanted>& wanted) {
        const Outlook outlook = outlookFor(wanted);
        const Suggestion suggestion = suggestionFor(outlook);
        Advised advised{belt_.id,
                        suggestion.basis,
                        suggestion.worthVersion,
                        advisedWay(outlook, suggestion.best),
                        {},
                        false,
                        false};
        const auto noShelf = [](const Wanted& one) { return one.noShelf; };
        const bool declined = std::any_of(wanted.begin(), wanted.end(), noShelf);
        advised.shelfDeclined = declined && suggestion.best.fillsShelf();
        std::vector<Wanted> rest;
        for (const Wanted& one : wanted) {
            const auto chosen = servedAsChosen(one, wanted.size() == 1 ? &suggestion : nullptr);
            if (chosen)
                advised.taken = sumOf(advised.taken, *chosen);
            else
                rest.push_back(one);
        }
        if (rest.size() == wanted.size())
            advised.taken = serveAs(outlook, suggestion.best, wanted, declined);
        else if (!rest.empty())
            advised.taken = sumOf(advised.taken, planTogether(rest, declined));
        advised.overridden = rest.size() < wanted.size() && otherPieces(advised.suggested, advised.taken);
        into_.advised.push_back(std::move(advised));
    }

private:
    Outlook outlookFor(const std::vector<Wanted>& wanted) const {
        std::vector<cutting::Line> lines;
        for (const Wanted& one : wanted)
            lines.push_back({std::to_string(one.line.value()), one.extent, one.belts});
        return outlookOf(shop_, belt_, settings_, pieces_, promises_, std::move(lines));
    }

    Suggestion suggestionFor(const Outlook& outlook) const {
        return how_ == Allotting::ManyOrders ? suggestTogether(outlook, limits())
                                             : suggest(outlook, limits());
    }

    std::optional<store::AdvisedWay> servedAsChosen(const Wanted& one, const Suggestion* alone) {
        if (!one.way) return std::nullopt;
        const Outlook outlook = outlookFor({one});
        const std::optional<cutting::Plan> plan = stillPossible(outlook.problem, *one.way, one.wayPieces);
        if (!plan) {
            into_.otherWay = true;
            return std::nullopt;
        }
        Way way{*plan, {}};
        if (one.forShelf.size() == plan->mountings.size()) way.forShelf = one.forShelf;
        if (const auto future = futureOf(outlook.past)) priceWay(outlook, future->table, way);
        if (alone) takeCost(*alone, way);
        return serveAs(outlook, way, {one}, one.noShelf);
    }

    /// What look-ahead says of the way, if it weighed it.
    static void takeCost(const Suggestion& suggestion, Way& way) {
        std::vector<Way> all = suggestion.others;
        all.push_back(suggestion.best);
        for (const Way& each : all)
            if (each.plan.mountings == way.plan.mountings && each.forShelf == way.forShelf)
                way.cost = each.cost;
    }

    store::AdvisedWay planTogether(const std::vector<Wanted>& wanted, bool declined) {
        const Outlook outlook = outlookFor(wanted);
        return serveAs(outlook, suggestionFor(outlook).best, wanted, declined);
    }

    store::AdvisedWay serveAs(const Outlook& outlook, Way way, const std::vector<Wanted>& wanted,
                              bool declined) {
        if (declined) declineShelf(outlook, way);
        note(outlook, way, wanted);
        return advisedWay(outlook, way);
    }

    cutting::Limits limits() const {
        const Moment until = shop_.now() + std::chrono::seconds{1};
        cutting::Limits limits;
        limits.stop = [this, until] { return shop_.now() > until; };
        return limits;
    }

    void note(const Outlook& outlook, const Way& way, const std::vector<Wanted>& wanted) {
        for (const cutting::Taken& taken : way.plan.taken)
            take(outlook.pieces[taken.piece].id, wanted[taken.line].line);
        for (std::size_t i = 0; i < way.plan.mountings.size(); ++i)
            mount(outlook, way, i, wanted);
        for (const cutting::Unserved& unserved : way.plan.unserved)
            into_.unserved.push_back(wanted[unserved.line].line);
    }

    void take(store::PieceId piece, store::LineId line) {
        into_.taken.emplace_back(piece, line);
        std::erase_if(pieces_, [&](const store::StockPiece& each) { return each.id == piece; });
    }

    void mount(const Outlook& outlook, const Way& way, std::size_t number,
               const std::vector<Wanted>& wanted) {
        const cutting::Mounting& mounting = way.plan.mountings[number];
        const cutting::Rules& rules = outlook.problem.rules;
        store::TicketMounting planned{.id = store::MountingId{0},
                                      .piece = outlook.pieces[mounting.piece].id,
                                      .state = store::MountingState::Planned,
                                      .cuts = {},
                                      .trim = rules.trim,
                                      .kerf = rules.kerf,
                                      .left = mounting.left,
                                      .restKept = false,
                                      .movement = std::nullopt};
        for (const cutting::Cut& cut : mounting.cuts)
            planned.cuts.push_back({wanted[cut.line].line, wanted[cut.line].extent, cut.count});
        if (number < way.forShelf.size()) addShelf(planned.cuts, way.forShelf[number]);
        keepFor(planned, outlook.pieces[mounting.piece], rules);
    }

    /// Narrow first, the widest last, as they are cut; of one width the customer's first.
    static void addShelf(std::vector<store::TicketCut>& cuts, const std::vector<Extent>& belts) {
        for (const Extent belt : belts) {
            if (!cuts.empty() && !cuts.back().line && cuts.back().extent == belt)
                ++cuts.back().count;
            else
                cuts.push_back({std::nullopt, belt, 1});
        }
        std::stable_sort(cuts.begin(), cuts.end(),
                         [](const auto& a, const auto& b) { return a.extent < b.extent; });
    }

    /// What other mountings of the piece are promised is left as well, and kept.
    void keepFor(store::TicketMounting planned, const store::StockPiece& piece, const cutting::Rules& rules) {
        static const store::Ticket unwritten{
            store::TicketId{0}, "", std::nullopt, store::TicketState::Open, {}, {}, {}};
        const Promise promise = promiseOf(planned, unwritten, rules);
        planned.left = piece.extent - promise.width;
        const bool promised = !promises_.on(piece.id).empty();
        planned.restKept = planned.left >= (promised ? rules.stub : leastKept(rules, belt_.listed));
        promises_.add(promise);
        into_.mountings.push_back(std::move(planned));
    }

    const Shop& shop_;
    const store::ShopSettings& settings_;
    Promises& promises_;
    store::StockedBelt belt_;
    std::vector<store::StockPiece> pieces_;
    Allotting how_;
    Allotment& into_;
};

std::vector<store::BeltId> beltsOf(const std::vector<Wanted>& wanted) {
    std::vector<store::BeltId> belts;
    for (const Wanted& one : wanted)
        if (std::find(belts.begin(), belts.end(), one.belt) == belts.end()) belts.push_back(one.belt);
    return belts;
}

std::vector<Wanted> ofBelt(const std::vector<Wanted>& wanted, store::BeltId belt) {
    std::vector<Wanted> some;
    std::copy_if(wanted.begin(), wanted.end(), std::back_inserter(some),
                 [&](const Wanted& one) { return one.belt == belt && one.belts > 0; });
    return some;
}

/// Ready belts of one belt go from the shelf to the order.
void bookTaken(const Shop& shop, store::BeltId belt,
               const std::vector<std::pair<store::StockPiece, store::LineId>>& taken) {
    std::vector<store::Posting> postings;
    for (const auto& [piece, line] : taken) {
        const std::int64_t width = piece.extent.count();
        postings.push_back({store::Account::Ready, piece.id, {}, -width, -piece.cost, {}});
        postings.push_back({store::Account::Sold, piece.id, line, width, piece.cost, {}});
    }
    store::Ledger{shop.connection}.record(
        store::Movement{{store::Act::TakeReady, shop.now(), shop.person, belt, "", {}}, std::move(postings)});
}

void countTaken(const Shop& shop, const Allotment& allotment) {
    store::Orders orders{shop.connection};
    for (const auto& [piece, lineId] : allotment.taken) {
        const store::Order order = orders.at(orders.orderOf(lineId));
        for (store::OrderLine line : order.lines)
            if (line.id == lineId) {
                ++line.cut;
                orders.changeLine(line);
            }
    }
}

void bookAllTaken(const Shop& shop, const Allotment& allotment) {
    std::map<store::BeltId, std::vector<std::pair<store::StockPiece, store::LineId>>> byBelt;
    for (const auto& [piece, line] : allotment.taken) {
        const store::StockPiece stock = store::Pieces{shop.connection}.at(piece);
        byBelt[stock.belt].emplace_back(stock, line);
    }
    for (const auto& [belt, taken] : byBelt)
        bookTaken(shop, belt, taken);
    countTaken(shop, allotment);
}

} // namespace

namespace {

/// The belts one after the other, each from what the ones before it leave.
class Allotter {
public:
    Allotter(const Shop& shop, Allotting how)
        : shop_{shop}, settings_{store::Settings{shop.connection}.read()}, how_{how},
          promises_{Promises::read(shop, settings_)} {}

    void serve(store::BeltId belt, const std::vector<Wanted>& wanted,
               const std::set<store::PieceId>& spared) {
        if (spared.empty() || !serveWithout(belt, wanted, spared))
            BeltAllotment{shop_, settings_, promises_, belt, how_, allotment_}.serve(wanted);
    }
    const Allotment& allotment() const { return allotment_; }

private:
    /// False, and nothing is allotted, if that doesn't serve all.
    bool serveWithout(store::BeltId belt, const std::vector<Wanted>& wanted,
                      const std::set<store::PieceId>& spared) {
        Promises promises = promises_;
        Allotment tried = allotment_;
        BeltAllotment one{shop_, settings_, promises, belt, how_, tried};
        one.spare(spared);
        one.serve(wanted);
        if (tried.unserved.size() > allotment_.unserved.size()) return false;
        promises_ = std::move(promises);
        allotment_ = std::move(tried);
        return true;
    }

    const Shop& shop_;
    const store::ShopSettings settings_;
    const Allotting how_;
    Promises promises_;
    Allotment allotment_;
};

} // namespace

Allotment allot(const Shop& shop, const std::vector<Wanted>& wanted, Allotting how,
                const std::set<store::PieceId>& spared) {
    Allotter allotter{shop, how};
    for (const store::BeltId belt : beltsOf(wanted))
        allotter.serve(belt, ofBelt(wanted, belt), spared);
    return allotter.allotment();
}

std::optional<store::TicketId> enter(const Shop& shop, store::OrderId order, const Allotment& allotment) {
    bookAllTaken(shop, allotment);
    if (allotment.mountings.empty()) return std::nullopt;
    return store::Tickets{shop.connection}.add({.id = store::TicketId{0},
                                                .code = "",
                                                .order = order,
                                                .state = store::TicketState::Open,
                                                .made = shop.now(),
                                                .mountings = allotment.mountings,
                                                .taken = allotment.taken});
}

} // namespace riband::shop
