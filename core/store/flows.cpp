#include "core/store/flows.h"

#include "core/store/inner.h"
#include "core/store/statement.h"

#include <map>
#include <tuple>
#include <utility>

namespace riband::store {
namespace {

// The same figures stand in the schema (migrations/*_reports.sql).
constexpr std::int64_t spanLength = 2'592'000'000; ///< thirty days
constexpr int noReason = 4;

std::int64_t spanOf(Moment at) { return at.time_since_epoch().count() / spanLength; }
Moment startOf(std::int64_t span) { return Moment{std::chrono::milliseconds{span * spanLength}}; }

using Key = std::tuple<BeltId, PersonId, Account, int>;
using Sums = std::map<Key, Flow>;

std::optional<ScrapReason> reasonOf(int column) {
    return column == noReason ? std::nullopt : std::optional{static_cast<ScrapReason>(column)};
}

Flow& flowAt(Sums& sums, const Statement& row) {
    const Key key{row.get<BeltId>(0), row.get<PersonId>(1), row.get<Account>(2), row.get<int>(3)};
    const Flow none{std::get<0>(key), std::get<1>(key), std::get<2>(key), reasonOf(std::get<3>(key)), 0, 0,
                    Money::minor(0),  Money::minor(0)};
    return sums.try_emplace(key, none).first->second;
}

/// What whole spans say: `before` sums the spans before that of `from`, `within` those from there to that of
/// `until`.
void addSpans(Connection& connection, Moment from, Moment until, Sums& sums) {
    const std::int64_t first = spanOf(from), last = spanOf(until);
    Statement rows{connection,
                   "SELECT belt, person, account, reason, sum(CASE WHEN span < ? THEN amount ELSE 0 END),"
                   " sum(CASE WHEN span < ? THEN 0 ELSE amount END),"
                   " sum(CASE WHEN span < ? THEN cost ELSE 0 END),"
                   " sum(CASE WHEN span < ? THEN 0 ELSE cost END)"
                   " FROM flow_total WHERE span < ? GROUP BY belt, person, account, reason",
                   first,
                   first,
                   first,
                   first,
                   last};
    while (rows.next()) {
        Flow& flow = flowAt(sums, rows);
        flow.before += rows.get<std::int64_t>(4);
        flow.within += rows.get<std::int64_t>(5);
        flow.costBefore = flow.costBefore + rows.get<Money>(6);
        flow.costWithin = flow.costWithin + rows.get<Money>(7);
    }
}

/// The part of a moment's own span that lies before it, from the postings. Times `before` and `within`.
void addEdge(Connection& connection, Moment moment, std::int64_t before, std::int64_t within, Sums& sums) {
    Statement rows{connection,
                   "SELECT m.belt, m.person, p.account, coalesce(p.reason, 4), sum(p.amount), sum(p.cost)"
                   " FROM movement m JOIN posting p ON p.movement = m.id"
                   " WHERE m.at_ms >= ? AND m.at_ms < ? AND p.account <> 2"
                   " GROUP BY m.belt, m.person, p.account, coalesce(p.reason, 4)",
                   startOf(spanOf(moment)), moment};
    while (rows.next()) {
        Flow& flow = flowAt(sums, rows);
        flow.before += before * rows.get<std::int64_t>(4);
        flow.within += within * rows.get<std::int64_t>(4);
        flow.costBefore = flow.costBefore + rows.get<Money>(5) * before;
        flow.costWithin = flow.costWithin + rows.get<Money>(5) * within;
    }
}

bool isZero(const Flow& flow) {
    const Money none = Money::minor(0);
    return flow.before == 0 && flow.within == 0 && flow.costBefore == none && flow.costWithin == none;
}

} // namespace

void Flows::follow(const Movement& movement) {
    const Movement::About& about = movement.about();
    for (const Posting& posting : movement.postings()) {
        if (posting.account == Account::Rack) continue;
        auto& [amount, cost] = connection_.inner().waiting.flows[{
            about.belt.value(), about.person.value(), static_cast<std::int64_t>(posting.account),
            posting.reason ? static_cast<int>(*posting.reason) : noReason, spanOf(about.at)}];
        amount += posting.amount;
        cost += posting.cost.inMinor();
    }
}

void writeFlows(Connection& connection) {
    for (const auto& [key, sum] : std::exchange(connection.inner().waiting.flows, {}))
        change(connection,
               "INSERT INTO flow_total (belt, person, account, reason, span, amount, cost)"
               " VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (belt, person, account, reason, span) DO UPDATE"
               " SET amount = flow_total.amount + excluded.amount, cost = flow_total.cost + excluded.cost",
               key[0], key[1], key[2], key[3], key[4], sum[0], sum[1]);
}

std::vector<Flow> Flows::sums(Moment from, Moment until) const {
    writeFlows(connection_);
    Sums sums;
    addSpans(connection_, from, until, sums);
    addEdge(connection_, from, 1, -1, sums);
    addEdge(connection_, until, 0, 1, sums);
    std::vector<Flow> flows;
    flows.reserve(sums.size());
    for (const auto& [key, flow] : sums)
        if (!isZero(flow)) flows.push_back(flow);
    return flows;
}

namespace {

/// What had left the rack before a moment: minus what lay there then, which is what lies there now less what
/// came since.
void addBefore(Connection& connection, Moment moment, std::vector<PlaceFlow>& flows) {
    Statement rows{connection,
                   "SELECT coalesce(l.name, ''), c.belt, sum(CASE c.kind WHEN 2 THEN 0 ELSE x.amount END),"
                   " sum(CASE c.kind WHEN 2 THEN 0 ELSE x.cost END),"
                   " sum(CASE c.kind WHEN 2 THEN x.amount ELSE 0 END)"
                   " FROM (SELECT id AS piece, extent AS amount, cost FROM piece WHERE extent > 0"
                   "  UNION ALL SELECT p.piece, -p.amount, -p.cost FROM movement m"
                   "  JOIN posting p ON p.movement = m.id WHERE m.at_ms >= ? AND p.account IN (2, 3)) x"
                   " JOIN piece c ON c.id = x.piece"
                   " JOIN piece s ON s.id = CASE WHEN c.kind = 2 THEN coalesce(c.parent, c.id) ELSE c.id END"
                   " LEFT JOIN place l ON l.id = s.place GROUP BY s.place, c.belt",
                   moment};
    while (rows.next()) {
        const auto place = rows.get<std::string>(0);
        const auto belt = rows.get<BeltId>(1);
        const auto rack = rows.get<std::int64_t>(2), ready = rows.get<std::int64_t>(4);
        const Money none = Money::minor(0);
        if (ready != 0)
            flows.push_back({place, {belt, PersonId{0}, Account::Ready, std::nullopt, ready, 0, none, none}});
        flows.push_back(
            {place,
             {belt, PersonId{0}, Account::Sold, std::nullopt, -rack - ready, 0, -rows.get<Money>(3), none}});
    }
}

} // namespace

std::vector<PlaceFlow> Flows::byPlace(Moment from, Moment until) const {
    std::vector<PlaceFlow> flows;
    addBefore(connection_, from, flows);
    Statement rows{
        connection_,
        "SELECT m.belt, max(m.person), p.account, coalesce(p.reason, 4), sum(p.amount), sum(p.cost),"
        " coalesce(l.name, '')"
        " FROM movement m JOIN posting p ON p.movement = m.id LEFT JOIN piece c ON c.id = p.piece"
        " LEFT JOIN piece s ON s.id = CASE WHEN c.kind = 2 THEN coalesce(c.parent, c.id) ELSE c.id END"
        " LEFT JOIN place l ON l.id = s.place"
        " WHERE m.at_ms >= ? AND m.at_ms < ? AND p.account <> 2"
        " GROUP BY s.place, m.belt, p.account, coalesce(p.reason, 4)",
        from, until};
    while (rows.next())
        flows.push_back(
            {rows.get<std::string>(6),
             {rows.get<BeltId>(0), rows.get<PersonId>(1), rows.get<Account>(2), reasonOf(rows.get<int>(3)), 0,
              rows.get<std::int64_t>(4), Money::minor(0), rows.get<Money>(5)}});
    return flows;
}

std::vector<Flows::MonthScatter> Flows::scatters(Moment from, Moment until) const {
    Statement rows{
        connection_,
        "SELECT strftime('%Y', day, 'unixepoch') * 12 + strftime('%m', day, 'unixepoch') - 1 AS month,"
        " unit, count(*), sum(sold), sum(lost), sum(1.0 * lost * lost),"
        " sum(1.0 * lost * (sold + lost)), sum(1.0 * (sold + lost) * (sold + lost)) FROM"
        " (SELECT m.at_ms / 1000 AS day, b.unit AS unit,"
        "  sum(CASE WHEN p.account = 4 THEN p.amount ELSE 0 END) AS sold,"
        "  sum(CASE WHEN p.account >= 5 THEN p.amount ELSE 0 END) AS lost"
        "  FROM movement m JOIN belt b ON b.id = m.belt JOIN posting p ON p.movement = m.id"
        "  WHERE m.at_ms >= ? AND m.at_ms < ? GROUP BY m.id) AS one"
        " WHERE sold <> 0 OR lost <> 0 GROUP BY month, unit",
        from, until};
    std::vector<MonthScatter> all;
    while (rows.next()) {
        const int month = rows.get<int>(0);
        all.push_back(
            {std::chrono::year{month / 12} / std::chrono::month{static_cast<unsigned>(month % 12 + 1)},
             rows.get<Unit>(1),
             {rows.get<std::int64_t>(2), rows.get<std::int64_t>(3), rows.get<std::int64_t>(4),
              rows.get<double>(5), rows.get<double>(6), rows.get<double>(7)}});
    }
    return all;
}

std::vector<MovementId> Flows::behind(const Behind& what, std::size_t most) const {
    Statement rows{connection_,
                   "SELECT m.id FROM movement m WHERE m.at_ms >= ? AND m.at_ms < ? AND (? < 0 OR m.belt = ?)"
                   " AND (? < 0 OR m.person = ?) AND EXISTS (SELECT 1 FROM posting p WHERE p.movement = m.id"
                   " AND (? < 0 OR p.account = ?) AND (? < 0 OR p.reason = ?))"
                   " ORDER BY m.at_ms DESC, m.id DESC LIMIT ?",
                   what.from,
                   what.until,
                   what.belt ? what.belt->value() : -1,
                   what.belt ? what.belt->value() : -1,
                   what.person ? what.person->value() : -1,
                   what.person ? what.person->value() : -1,
                   what.account ? static_cast<int>(*what.account) : -1,
                   what.account ? static_cast<int>(*what.account) : -1,
                   what.reason ? static_cast<int>(*what.reason) : -1,
                   what.reason ? static_cast<int>(*what.reason) : -1,
                   most};
    std::vector<MovementId> ids;
    while (rows.next())
        ids.push_back(rows.get<MovementId>(0));
    return ids;
}

std::optional<Moment> Flows::firstMovement() const {
    return only<std::optional<Moment>>(connection_, "SELECT min(at_ms) FROM movement").value_or(std::nullopt);
}

} // namespace riband::store
