#include "app/demo/story.h"

#include "core/belt/reader.h"
#include "core/measure/text.h"
#include "core/shop/cut.h"
#include "core/shop/queries.h"
#include "core/shop/receive.h"
#include "core/shop/stock.h"
#include "core/shop/suggest.h"
#include "ui/words/words.h"

#include <algorithm>
#include <map>
#include <sstream>
#include <stdexcept>

namespace riband::app {

namespace {

constexpr int mostSleevesBought = 4;

/// Does what events tell, at their time and as their person.
class Actor {
public:
    Actor(store::Connection& connection, std::shared_ptr<const belt::Tables> tables)
        : connection_{connection}, tables_{std::move(tables)},
          currency_{store::Settings{connection}.read().prices.currency} {
        for (const auto& person : store::People{connection}.present())
            people_.emplace(person.initials, person.id);
    }

    void act(const Event& event) {
        using Deed = void (Actor::*)(const Event&);
        static const std::map<std::string, Deed> deeds{
            {"receive", &Actor::receive},     {"found", &Actor::receive}, {"sale", &Actor::sale},
            {"otherwise", &Actor::otherwise}, {"refuse", &Actor::refuse}, {"order", &Actor::order},
            {"cancel", &Actor::cancel},       {"miscut", &Actor::miscut}, {"scrap", &Actor::scrap},
            {"quote", &Actor::quote},         {"park", &Actor::park}};
        now_ = event.at;
        (this->*deeds.at(event.act))(event);
    }

private:
    shop::Shop as(const Event& event) const {
        return {connection_, tables_, people_.at(event.who), [this] { return now_; }};
    }
    void wait(std::chrono::minutes minutes) { now_ += minutes; }

    /// The one belt that words mean; the story never leaves a question open.
    belt::Reading oneReading(const std::string& words) const {
        const auto understood = belt::understand(words, *tables_);
        if (understood.readings.size() != 1) throw std::runtime_error("not one belt: " + words);
        return understood.readings.front();
    }
    belt::Belt beltNamed(const std::string& designation) const {
        const auto belt = belt::readBelt(designation, *tables_);
        if (!belt) throw std::runtime_error("no belt: " + designation);
        return *belt;
    }
    Extent extentOf(const std::string& amount, const belt::Belt& belt) const {
        return readExtent(amount, tables_->profile(belt.profile)->unit()).value();
    }
    shop::Draft draftOf(const Event& event) const {
        shop::Draft draft{
            .lines = {}, .customer = event.customer, .phone = "", .due = std::nullopt, .note = event.note};
        std::istringstream words(event.text);
        for (std::string said; std::getline(words, said, ';');) {
            const belt::Reading reading = oneReading(said);
            draft.lines.push_back(
                {reading.belt, reading.width.value(), reading.quantity, said, std::nullopt, {}});
        }
        return draft;
    }

    void receive(const Event& event) {
        const belt::Belt belt = beltNamed(event.text);
        const bool found = event.act == "found"; // it was there before there was a book
        const auto book = found ? shop::takeOver : shop::receive;
        book(as(event),
             {{.belt = belt,
               .sleeves = static_cast<int>(event.count),
               .extent = extentOf(event.amount, belt),
               .costEach = readMoney(event.cost, currency_).value(),
               .batch = event.note,
               .made = event.made,
               .place = event.place,
               .kind = found ? cutting::PieceKind::Remnant : cutting::PieceKind::Sleeve}},
             nullptr);
    }

    /// As a maker numbers what he vulcanises on a day.
    static std::string lotOf(store::BeltId belt, Date made) {
        return "lot " + std::to_string(1000 + (37 * made.time_since_epoch().count() + belt.value()) % 9000);
    }

    /// What a new sleeve of the draft's belts costs and where it goes, when there is not enough of them.
    void restock(const Event& event, const shop::Draft& draft) {
        Event goodsIn = event;
        goodsIn.who = "ST";
        const Date made = dayOf(now_) - std::chrono::days{75};
        for (const auto& line : draft.lines) {
            const auto belt = store::Catalogue{connection_}.find(line.belt).value();
            shop::receive(as(goodsIn), {{.belt = belt.belt,
                                         .sleeves = 1,
                                         .extent = belt.newSleeve,
                                         .costEach = belt.sleeveCost,
                                         .batch = lotOf(belt.id, made),
                                         .made = made,
                                         .place = "E" + std::to_string(1 + belt.id.value() % 6) + "-1",
                                         .kind = cutting::PieceKind::Sleeve}});
        }
        wait(std::chrono::minutes{5});
    }
    /// Ordered; where there is not enough, sleeves are bought first, as many as it takes.
    shop::Ordered placed(const Event& event) { return placed(event, draftOf(event)); }
    shop::Ordered placed(const Event& event, const shop::Draft& draft) {
        for (int sleeves = 0;; ++sleeves) {
            try {
                const shop::Ordered ordered = shop::order(as(event), draft);
                if (ordered.ticket) chooseCutters(event, *ordered.ticket);
                return ordered;
            } catch (const shop::Refusal& refusal) {
                if (refusal.why() != shop::Refusal::Why::WidthTaken || sleeves == mostSleevesBought) throw;
            }
            restock(event, draft);
        }
    }

    /// The second cutter of the shop is for ribs.
    void chooseCutters(const Event& event, store::TicketId ticket) {
        const store::CutterId forRibs = store::Settings{connection_}.read().cutters.back().id;
        for (const auto& mounting : store::Tickets{connection_}.at(ticket).mountings)
            if (mounting.trim.unit() == Unit::Rib) shop::putOnCutter(as(event), mounting.id, forRibs);
    }

    void cutAll(const Event& event, std::optional<store::TicketId> ticket) {
        if (!ticket) return;
        for (const auto& mounting : store::Tickets{connection_}.at(*ticket).mountings) {
            wait(std::chrono::minutes{6});
            shop::recordCut(
                as(event),
                {.mounting = mounting.id, .left = measured(event, mounting), .keepRest = {}, .place = ""});
        }
    }
    std::optional<Extent> measured(const Event& event, const store::TicketMounting& mounting) const {
        if (event.amount.empty()) return std::nullopt;
        return readExtent(event.amount, mounting.trim.unit()).value();
    }

    store::OrderId cutOrder(const Event& event, const shop::Draft& draft) {
        const shop::Ordered ordered = placed(event, draft);
        cutAll(event, ordered.ticket);
        return ordered.order;
    }
    void sell(const Event& event, const shop::Draft& draft) {
        const store::OrderId order = cutOrder(event, draft);
        wait(std::chrono::minutes{4});
        shop::handOver(as(event), order);
    }
    void sale(const Event& event) { sell(event, draftOf(event)); }

    /// The next best way instead of the suggested one, where there is one.
    void otherwise(const Event& event) {
        shop::Draft draft = draftOf(event);
        shop::DraftLine& line = draft.lines.front();
        const shop::Outlook outlook = shop::lookAt(as(event), line.belt, {{line.extent, line.quantity}});
        const shop::Suggestion suggestion = shop::suggest(outlook);
        for (const shop::Way& way : suggestion.others) {
            if (!way.plan.unserved.empty() || way.plan.newSleeves > suggestion.best.plan.newSleeves) continue;
            line.way = way.plan;
            line.forShelf = way.forShelf;
            for (const cutting::Piece& piece : outlook.problem.pieces)
                line.wayPieces.push_back(piece.code);
            line.overrideKey = event.why;
            line.overrideWords = event.note;
            break;
        }
        draft.note.clear();
        sell(event, draft);
    }
    /// A day on which a dead end would have been finished for the shelf, and nobody wanted that.
    void refuse(const Event& event) {
        const store::AdviceRules usual = store::Settings{connection_}.read().advice;
        setAdvice(connection_, {});
        shop::Draft draft = draftOf(event);
        shop::DraftLine& line = draft.lines.front();
        const shop::Outlook outlook = shop::lookAt(as(event), line.belt, {{line.extent, line.quantity}});
        const auto shelf = shop::suggest(outlook).best.forShelf;
        line.noShelf = std::any_of(shelf.begin(), shelf.end(), [](const auto& cut) { return !cut.empty(); });
        draft.note.clear();
        const store::OrderId order = cutOrder(event, draft);
        setAdvice(connection_, usual);
        wait(std::chrono::minutes{4});
        shop::handOver(as(event), order);
    }
    void order(const Event& event) { placed(event); }
    void quote(const Event& event) { shop::quote(as(event), draftOf(event)); }
    void park(const Event& event) { shop::park(as(event), draftOf(event)); }

    /// Cut, then not wanted: the belts go on the shelf.
    void cancel(const Event& event) {
        const store::OrderId order = cutOrder(event, draftOf(event));
        wait(std::chrono::hours{26});
        for (const store::PieceId ready : shop::cancel(as(event), order))
            shop::move(as(event), ready, event.place);
    }

    /// The first belt is good, the second was spoiled at `amount`; what is missing is cut from what is left.
    void miscut(const Event& event) {
        const shop::Ordered ordered = placed(event);
        const auto mounting = store::Tickets{connection_}.at(ordered.ticket.value()).mountings.front();
        const store::StockPiece piece = store::Pieces{connection_}.at(mounting.piece);
        const Extent spoiled = readExtent(event.amount, piece.extent.unit()).value();
        wait(std::chrono::minutes{9});
        const auto replanned =
            shop::recordMiscut(as(event), {.mounting = mounting.id,
                                           .good = {event.count},
                                           .spoiled = spoiled,
                                           .left = piece.extent - mounting.trim -
                                                   mounting.cuts.front().extent * event.count - spoiled,
                                           .note = event.note});
        Event plain = event;
        plain.amount.clear();
        cutAll(plain, replanned.ticket);
        shop::handOver(as(event), ordered.order);
    }

    void scrap(const Event& event) {
        const belt::Belt belt = beltNamed(event.text);
        const Extent extent = extentOf(event.amount, belt);
        const auto stocked = store::Catalogue{connection_}.find(belt).value();
        for (const auto& piece : store::Pieces{connection_}.ofBelt(stocked.id))
            if (piece.extent == extent) {
                shop::scrap(as(event), piece.id, extent, store::ScrapReason::Aged, event.note);
                return;
            }
        throw std::runtime_error("no such piece");
    }

    store::Connection& connection_;
    std::shared_ptr<const belt::Tables> tables_;
    Currency currency_;
    std::map<std::string, store::PersonId> people_;
    Moment now_{};
};

} // namespace

void live(store::Connection& connection, std::shared_ptr<const belt::Tables> tables,
          const std::vector<Event>& events) {
    Actor actor{connection, std::move(tables)};
    for (const Event& event : events) {
        const std::string told = printMoment(event.at) + " " + event.act + " " + event.text + ": ";
        try {
            actor.act(event);
        } catch (const shop::Refusal& refusal) {
            throw std::runtime_error(told + ui::say(refusal).toStdString());
        } catch (const std::bad_optional_access&) {
            throw std::runtime_error(told + "something is missing in this event");
        } catch (const std::bad_variant_access&) {
            throw std::runtime_error(told + "a quantity can't be read");
        } catch (const std::runtime_error& error) {
            throw std::runtime_error(told + error.what());
        }
    }
}

} // namespace riband::app
