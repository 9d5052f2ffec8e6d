#include "core/shop/allot.h"

#include "core/shop/chosen_way.h"

#include <algorithm>

namespace riband::shop {

namespace {

using cutting::PieceKind;

/// The wanted lines of one belt, while they are planned.
class BeltAllotment {
public:
    BeltAllotment(const Shop& shop, const store::ShopSettings& settings, Promises& promises,
                  store::BeltId belt, Allotment& into)
        : shop_{shop}, settings_{settings}, promises_{promises}, belt_{store::Catalogue{shop.connection}.at(
                                                                     belt)},
          pieces_{store::Pieces{shop.connection}.ofBelt(belt)}, into_{into} {}

    void serve(const std::vector<Wanted>& wanted) {
        std::vector<Wanted> rest;
        for (const Wanted& one : wanted)
            if (!servedAsChosen(one)) rest.push_back(one);
        if (!rest.empty()) planTogether(rest);
    }

private:
    cutting::Problem problemFor(const std::vector<Wanted>& wanted) {
        std::vector<Extent> asked;
        std::vector<cutting::Line> lines;
        for (const Wanted& one : wanted) {
            asked.push_back(one.extent);
            lines.push_back({std::to_string(one.line.value()), one.extent, one.belts});
        }
        offers_ = offersOf(pieces_, promises_, settings_.rulesFor(belt_.unit), asked);
        return problemOf(belt_, settings_, offers_, std::move(lines));
    }

    bool servedAsChosen(const Wanted& one) {
        if (!one.way) return false;
        const cutting::Problem problem = problemFor({one});
        const std::optional<cutting::Plan> plan = stillPossible(problem, *one.way, one.wayPieces);
        if (!plan) {
            into_.otherWay = true;
            return false;
        }
        note(problem, *plan, {one});
        return true;
    }

    void planTogether(const std::vector<Wanted>& wanted) {
        const cutting::Problem problem = problemFor(wanted);
        note(problem, cutting::plan(problem, limits()), wanted);
    }

    cutting::Limits limits() const {
        const Moment until = shop_.now() + std::chrono::seconds{1};
        cutting::Limits limits;
        limits.stop = [this, until] { return shop_.now() > until; };
        return limits;
    }

    void note(const cutting::Problem& problem, const cutting::Plan& plan, const std::vector<Wanted>& wanted) {
        for (const cutting::Taken& taken : plan.taken)
            take(taken, wanted);
        for (const cutting::Mounting& mounting : plan.mountings)
            mount(problem, mounting, wanted);
        for (const cutting::Unserved& unserved : plan.unserved)
            into_.unserved.push_back(wanted[unserved.line].line);
    }

    void take(const cutting::Taken& taken, const std::vector<Wanted>& wanted) {
        const store::PieceId piece = offers_[taken.piece].piece.id;
        into_.taken.emplace_back(piece, wanted[taken.line].line);
        std::erase_if(pieces_, [&](const store::StockPiece& each) { return each.id == piece; });
    }

    void mount(const cutting::Problem& problem, const cutting::Mounting& mounting,
               const std::vector<Wanted>& wanted) {
        const store::StockPiece& piece = offers_[mounting.piece].piece;
        store::TicketMounting planned{.id = store::MountingId{0},
                                      .piece = piece.id,
                                      .state = store::MountingState::Planned,
                                      .cuts = {},
                                      .trim = problem.rules.trim,
                                      .kerf = problem.rules.kerf,
                                      .left = mounting.left,
                                      .restKept = false,
                                      .movement = std::nullopt};
        for (const cutting::Cut& cut : mounting.cuts)
            planned.cuts.push_back({wanted[cut.line].line, wanted[cut.line].extent, cut.count});
        keepFor(planned, piece, problem.rules);
    }

    /// What other mountings of the piece are promised is left as well, and kept.
    void keepFor(store::TicketMounting planned, const store::StockPiece& piece, const cutting::Rules& rules) {
        static const store::Ticket unwritten{
            store::TicketId{0}, "", store::OrderId{0}, store::TicketState::Open, {}, {}, {}};
        const Promise promise = promiseOf(planned, unwritten, rules);
        planned.left = piece.extent - promise.width;
        planned.restKept = planned.left >= rules.stub;
        promises_.add(promise);
        into_.mountings.push_back(std::move(planned));
    }

    const Shop& shop_;
    const store::ShopSettings& settings_;
    Promises& promises_;
    store::StockedBelt belt_;
    std::vector<store::StockPiece> pieces_;
    std::vector<Offer> offers_; ///< of the problem at hand
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

Allotment allot(const Shop& shop, const std::vector<Wanted>& wanted) {
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    Promises promises = Promises::read(shop, settings);
    Allotment allotment;
    for (const store::BeltId belt : beltsOf(wanted))
        BeltAllotment{shop, settings, promises, belt, allotment}.serve(ofBelt(wanted, belt));
    return allotment;
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
