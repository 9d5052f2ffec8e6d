#include "app/export.h"
#include "app/table_words.h"
#include "core/measure/text.h"
#include "core/store/cutters.h"
#include "core/store/orders.h"

#include <map>

namespace riband::app {

namespace {

/// The names behind the ids of a ledger, each read once.
class Names {
public:
    explicit Names(const shop::Shop& shop) : connection_{shop.connection} {
        for (const auto& belt : store::Catalogue{connection_}.all())
            belts_.emplace(belt.id, belt);
        for (const auto& person : store::People{connection_}.all())
            people_.emplace(person.id, person.initials);
        for (const auto& cutter : store::Cutters{connection_}.all())
            cutters_.emplace(cutter.id, cutter.name);
    }
    const store::StockedBelt& belt(store::BeltId id) const { return belts_.at(id); }
    const std::string& person(store::PersonId id) const { return people_.at(id); }
    const std::string& cutter(store::CutterId id) const { return cutters_.at(id); }
    const std::string& piece(store::PieceId id) {
        const auto at = pieces_.find(id);
        return at != pieces_.end()
                   ? at->second
                   : pieces_.emplace(id, store::Pieces{connection_}.at(id).code).first->second;
    }
    const std::string& order(store::LineId line) {
        const store::OrderId id = store::Orders{connection_}.orderOf(line);
        const auto at = orders_.find(id);
        return at != orders_.end()
                   ? at->second
                   : orders_.emplace(id, store::Orders{connection_}.at(id).code).first->second;
    }

private:
    store::Connection& connection_;
    std::map<store::BeltId, store::StockedBelt> belts_;
    std::map<store::PersonId, std::string> people_;
    std::map<store::CutterId, std::string> cutters_;
    std::map<store::PieceId, std::string> pieces_;
    std::map<store::OrderId, std::string> orders_;
};

std::vector<std::string> fieldsOf(const store::RecordedMovement& recorded, const store::Posting& posting,
                                  Names& names, const Currency& currency) {
    const store::Movement::About& about = recorded.movement.about();
    const bool ribbed = names.belt(about.belt).unit == Unit::Rib;
    return {std::to_string(recorded.id.value()),
            printMoment(about.at),
            wordFor(about.act),
            names.person(about.person),
            names.belt(about.belt).designation,
            wordFor(posting.account),
            posting.piece ? names.piece(*posting.piece) : "",
            posting.line ? names.order(*posting.line) : "",
            ribbed ? "" : printMillimetres(posting.amount),
            ribbed ? std::to_string(posting.amount) : "",
            printMoney(posting.cost, currency),
            posting.reason ? wordFor(*posting.reason) : "",
            about.note,
            about.undoes ? std::to_string(about.undoes->value()) : "",
            about.cutter ? names.cutter(*about.cutter) : ""};
}

/// The days of which the ledger is read at once: a busy shop's fortnight is some thousands of movements.
constexpr auto window = std::chrono::days{14};
constexpr Moment first = Date{std::chrono::year{2000} / 1 / 1};

} // namespace

void exportLedger(const shop::Shop& shop, TableWriter& writer) {
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    const store::Ledger ledger{shop.connection};
    Names names{shop};
    writer.head({"movement", "at", "act", "person", "belt", "account", "piece", "order", "width_mm", "ribs",
                 "cost", "reason", "note", "undoes", "cutter"});
    const auto writeBetween = [&](Moment from, Moment until) {
        for (const auto& recorded : ledger.between(from, until))
            for (const auto& posting : recorded.movement.postings())
                writer.row(fieldsOf(recorded, posting, names, currency));
    };
    writeBetween(Moment::min(), first);
    Moment from = first;
    for (; from < shop.now(); from += window)
        writeBetween(from, from + window);
    writeBetween(from, Moment::max());
}

} // namespace riband::app
