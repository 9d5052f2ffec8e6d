#include "core/store/flows.h"

#include "core/store/inner.h"
#include "core/store/number_rows.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace riband::store {
namespace {

// The same figures stand in the schema (migrations/0013_cutters.sql).
constexpr std::int64_t spanLength = 2'592'000'000; ///< thirty days
constexpr std::int64_t spansOfLong = 12;
constexpr int noReason = 4;
constexpr CutterId byHand{0};

std::int64_t spanOf(Moment at) { return at.time_since_epoch().count() / spanLength; }
Moment startOf(std::int64_t span) { return Moment{std::chrono::milliseconds{span * spanLength}}; }

using Key = std::tuple<BeltId, PersonId, CutterId, Account, int>;
struct KeyHash {
    std::size_t operator()(const Key& key) const {
        const auto& [belt, person, cutter, account, reason] = key;
        std::uint64_t mixed = static_cast<std::uint64_t>(belt.value());
        for (const std::int64_t part :
             {person.value(), cutter.value(), static_cast<std::int64_t>(account) * (noReason + 1) + reason})
            mixed = (mixed ^ (mixed >> 29)) * 0x9E3779B97F4A7C15u + static_cast<std::uint64_t>(part);
        return static_cast<std::size_t>(mixed ^ (mixed >> 32));
    }
};
using Sums = std::unordered_map<Key, Flow, KeyHash>;

std::optional<ScrapReason> reasonOf(int column) {
    return column == noReason ? std::nullopt : std::optional{static_cast<ScrapReason>(column)};
}

std::optional<CutterId> cutterOf(CutterId column) {
    return column == byHand ? std::nullopt : std::optional{column};
}

// Reports read some hundred thousand rows of sums, and each column less is a tenth of the time: what a sum is
// of comes as its belt and as person * 1048576 + cutter * 128 + account * 8 + reason (of 8,191 cutters at
// most).
Flow& flowAt(Sums& sums, const NumberRows& row) {
    const std::int64_t packed = row.number(1);
    const Key key{BeltId{row.number(0)}, PersonId{packed >> 20}, CutterId{packed >> 7 & 0x1FFF},
                  static_cast<Account>(packed >> 3 & 0xF), static_cast<int>(packed & 7)};
    const auto& [belt, person, cutter, account, reason] = key;
    const Flow none{belt, person, cutterOf(cutter), account,        reasonOf(reason),
                    0,    0,      Money::minor(0),  Money::minor(0)};
    return sums.try_emplace(key, none).first->second;
}

/// Whose flows are summed, as SQL packs them into a row (flowAt).
struct Wanted {
    bool each; ///< person and cutter
    std::optional<Account> only{};
};

/// Adds rows of (key in two columns, amount, cost), times `before` and `within`.
void addRows(NumberRows& rows, std::int64_t before, std::int64_t within, Sums& sums) {
    while (rows.next()) {
        Flow& flow = flowAt(sums, rows);
        const std::int64_t amount = rows.number(2);
        const Money cost = rows.money(3);
        flow.before += before * amount;
        flow.within += within * amount;
        flow.costBefore = flow.costBefore + cost * before;
        flow.costWithin = flow.costWithin + cost * within;
    }
}

/// The spans from `first` up to and without `last`: the long ones nearest to them, and what these leave out
/// or take too much at both ends.
void addSpans(Connection& connection, std::int64_t first, std::int64_t last, bool before,
              const Wanted& wanted, Sums& sums) {
    const auto add = [&](int level, std::int64_t from, std::int64_t until, std::int64_t sign) {
        if (from >= until) return;
        NumberRows rows{
            connection,
            "SELECT belt, ? * (person * 1048576 + cutter * 128) + account * 8 + reason, amount, cost"
            " FROM flow_total WHERE level = ? AND span >= ? AND span < ?"
            " AND (? IS NULL OR account = ?)",
            wanted.each,
            level,
            from,
            until,
            wanted.only,
            wanted.only};
        addRows(rows, before ? sign : 0, before ? 0 : sign, sums);
    };
    // A long span has about three times the rows of a short one.
    const auto nearest = [](std::int64_t span) { return (span + spansOfLong / 2) / spansOfLong; };
    const std::int64_t longFirst = nearest(first), longLast = nearest(last);
    const std::int64_t begin = longFirst * spansOfLong, end = longLast * spansOfLong;
    if (longFirst >= longLast ||
        std::abs(begin - first) + 3 * (longLast - longFirst) + std::abs(end - last) >= last - first)
        return add(0, first, last, 1);
    add(1, longFirst, longLast, 1);
    first < begin ? add(0, first, begin, 1) : add(0, begin, first, -1);
    last > end ? add(0, end, last, 1) : add(0, last, end, -1);
}

/// Where spans begin that is nearest to a moment, and what lies between.
struct Edge {
    std::int64_t span;
    Moment first, last;
    std::int64_t sign; ///< 1: what lies between comes after the span's beginning, -1: before it
};

Edge edgeOf(Moment moment) {
    const std::int64_t span = spanOf(moment);
    const Moment begin = startOf(span), next = startOf(span + 1);
    return moment - begin <= next - moment ? Edge{span, begin, moment, 1} : Edge{span + 1, moment, next, -1};
}

/// What lies between a moment and the nearest span, from the postings, times `before` and `within`. CROSS: by
/// time first; SQLite would rather read all postings and find their movements.
void addEdge(Connection& connection, const Edge& edge, std::int64_t before, std::int64_t within,
             const Wanted& wanted, Sums& sums) {
    NumberRows rows{connection,
                    "SELECT m.belt, ? * (m.person * 1048576 + coalesce(m.cutter, 0) * 128) + p.account * 8 + "
                    "coalesce(p.reason, 4),"
                    " p.amount, p.cost"
                    " FROM movement m CROSS JOIN posting p ON p.movement = m.id"
                    " WHERE m.at_ms >= ? AND m.at_ms < ? AND p.account <> 2 AND (? IS NULL OR p.account = ?)",
                    wanted.each,
                    edge.first,
                    edge.last,
                    wanted.only,
                    wanted.only};
    addRows(rows, before * edge.sign, within * edge.sign, sums);
}

bool isZero(const Flow& flow) {
    const Money none = Money::minor(0);
    return flow.before == 0 && flow.within == 0 && flow.costBefore == none && flow.costWithin == none;
}

} // namespace

namespace {

int numberOf(std::chrono::year_month month) {
    return static_cast<int>(month.year()) * 12 + static_cast<int>(static_cast<unsigned>(month.month())) - 1;
}

/// What a movement sold and lost, squared, into the sums of its month.
void scatter(Connection& connection, const Movement& movement) {
    std::int64_t sold = 0, lost = 0;
    for (const Posting& posting : movement.postings())
        if (posting.account == Account::Sold)
            sold += posting.amount;
        else if (posting.account > Account::Sold)
            lost += posting.amount;
    if (sold == 0 && lost == 0) return;
    const std::chrono::year_month_day day{dayOf(movement.about().at)};
    const auto less = static_cast<double>(lost), used = static_cast<double>(sold + lost);
    change(connection,
           "INSERT INTO scatter_total (month, unit, movements, sold, lost, lost_lost, lost_used, used_used)"
           " SELECT ?, unit, 1, ?, ?, ?, ?, ? FROM belt WHERE id = ? ON CONFLICT (month, unit) DO UPDATE SET"
           " movements = scatter_total.movements + 1, sold = scatter_total.sold + excluded.sold,"
           " lost = scatter_total.lost + excluded.lost,"
           " lost_lost = scatter_total.lost_lost + excluded.lost_lost,"
           " lost_used = scatter_total.lost_used + excluded.lost_used,"
           " used_used = scatter_total.used_used + excluded.used_used",
           numberOf(day.year() / day.month()), sold, lost, less * less, less * used, used * used,
           movement.about().belt);
}

} // namespace

void Flows::follow(const Movement& movement) {
    const Movement::About& about = movement.about();
    for (const Posting& posting : movement.postings()) {
        if (posting.account == Account::Rack) continue;
        for (const int level : {0, 1}) {
            auto& [amount, cost] = connection_.inner().waiting.flows[{
                level, spanOf(about.at) / (level == 0 ? 1 : spansOfLong), about.belt.value(),
                about.person.value(), about.cutter.value_or(byHand).value(),
                static_cast<std::int64_t>(posting.account),
                posting.reason ? static_cast<int>(*posting.reason) : noReason}];
            amount += posting.amount;
            cost += posting.cost.inMinor();
        }
    }
    scatter(connection_, movement);
}

void writeFlows(Connection& connection) {
    for (const auto& [key, sum] : std::exchange(connection.inner().waiting.flows, {}))
        change(connection,
               "INSERT INTO flow_total (level, span, belt, person, cutter, account, reason, amount, cost)"
               " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)"
               " ON CONFLICT (level, span, belt, person, cutter, account, reason) DO UPDATE"
               " SET amount = flow_total.amount + excluded.amount, cost = flow_total.cost + excluded.cost",
               key[0], key[1], key[2], key[3], key[4], key[5], key[6], sum[0], sum[1]);
}

namespace {

std::vector<Flow> listOf(Sums sums) {
    std::vector<Flow> flows;
    flows.reserve(sums.size());
    for (const auto& [key, flow] : sums)
        if (!isZero(flow)) flows.push_back(flow);
    std::sort(flows.begin(), flows.end(), [](const Flow& a, const Flow& b) {
        return std::tie(a.belt, a.person, a.cutter, a.account, a.reason) <
               std::tie(b.belt, b.person, b.cutter, b.account, b.reason);
    });
    return flows;
}

std::vector<Flow> sumsOf(Connection& connection, Moment from, Moment until, const Wanted& wanted) {
    writeFlows(connection);
    Sums sums;
    const Edge first = edgeOf(from), last = edgeOf(until);
    addSpans(connection, 0, first.span, true, wanted, sums);
    addSpans(connection, first.span, last.span, false, wanted, sums);
    addEdge(connection, first, 1, -1, wanted, sums);
    addEdge(connection, last, 0, 1, wanted, sums);
    return listOf(std::move(sums));
}

} // namespace

std::vector<Flow> Flows::sums(Moment from, Moment until) const {
    return sumsOf(connection_, from, until, {.each = true});
}

std::vector<Flow> Flows::sumsOfAll(Moment from, Moment until) const {
    return sumsOf(connection_, from, until, {.each = false});
}

namespace {

std::vector<Flow> within(Connection& connection, Moment from, Moment until, const Wanted& wanted) {
    writeFlows(connection);
    Sums sums;
    const Edge first = edgeOf(from), last = edgeOf(until);
    addSpans(connection, first.span, last.span, false, wanted, sums);
    addEdge(connection, first, 0, -1, wanted, sums);
    addEdge(connection, last, 0, 1, wanted, sums);
    return listOf(std::move(sums));
}

} // namespace

std::vector<Flow> Flows::within(Moment from, Moment until, std::optional<Account> only) const {
    return store::within(connection_, from, until, {.each = false, .only = only});
}

std::vector<Flow> Flows::withinOfEach(Moment from, Moment until) const {
    return store::within(connection_, from, until, {.each = true});
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
            flows.push_back(
                {place, {belt, PersonId{0}, {}, Account::Ready, std::nullopt, ready, 0, none, none}});
        flows.push_back({place,
                         {belt,
                          PersonId{0},
                          {},
                          Account::Sold,
                          std::nullopt,
                          -rack - ready,
                          0,
                          -rows.get<Money>(3),
                          none}});
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
        flows.push_back({rows.get<std::string>(6),
                         {rows.get<BeltId>(0),
                          rows.get<PersonId>(1),
                          {},
                          rows.get<Account>(2),
                          reasonOf(rows.get<int>(3)),
                          0,
                          rows.get<std::int64_t>(4),
                          Money::minor(0),
                          rows.get<Money>(5)}});
    return flows;
}

std::vector<Flows::MonthScatter> Flows::scatters(std::chrono::year_month first,
                                                 std::chrono::year_month last) const {
    Statement rows{connection_,
                   "SELECT month, unit, movements, sold, lost, lost_lost, lost_used, used_used"
                   " FROM scatter_total WHERE month BETWEEN ? AND ?",
                   numberOf(first), numberOf(last)};
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

namespace {

/// For json_each.
template <class T>
std::string jsonOf(const std::vector<T>& values, std::int64_t (*number)(T)) {
    std::string list = "[";
    for (const T value : values)
        list += (list.size() > 1 ? "," : "") + std::to_string(number(value));
    return list + "]";
}

void add(Sums& sums, const Flow& more) {
    const Key key{more.belt, more.person, byHand, more.account,
                  more.reason ? static_cast<int>(*more.reason) : noReason};
    const auto [at, isNew] = sums.try_emplace(key, more);
    if (isNew) return;
    at->second.within += more.within;
    at->second.costWithin = at->second.costWithin + more.costWithin;
}

} // namespace

Evidence Flows::behind(const Behind& what, std::size_t most) const {
    const std::string belts = jsonOf<BeltId>(what.belts, [](BeltId id) { return id.value(); });
    const std::string accounts =
        jsonOf<Account>(what.accounts, [](Account account) { return static_cast<std::int64_t>(account); });
    Statement rows{
        connection_,
        "SELECT m.id, m.belt, p.account, coalesce(p.reason, 4), p.amount, p.cost"
        " FROM movement m CROSS JOIN posting p ON p.movement = m.id WHERE m.at_ms >= ? AND m.at_ms < ?"
        " AND (? OR m.belt IN (SELECT value FROM json_each(?)))"
        " AND (? IS NULL OR ? = (SELECT b.unit FROM belt b WHERE b.id = m.belt))"
        " AND (? IS NULL OR m.person = ?) AND (? IS NULL OR coalesce(m.cutter, 0) = ?)"
        " AND (? OR p.account IN (SELECT value FROM json_each(?))) AND (? IS NULL OR p.reason = ?)"
        " AND (? IS NULL OR p.account <> 2 AND ? = coalesce((SELECT l.name FROM piece c"
        "  JOIN piece s ON s.id = CASE WHEN c.kind = 2 THEN coalesce(c.parent, c.id) ELSE c.id END"
        "  JOIN place l ON l.id = s.place WHERE c.id = p.piece), ''))"
        " ORDER BY m.at_ms DESC, m.id DESC",
        what.from,
        what.until,
        what.belts.empty(),
        belts,
        what.unit,
        what.unit,
        what.person,
        what.person,
        what.cutter,
        what.cutter,
        what.accounts.empty(),
        accounts,
        what.reason,
        what.reason,
        what.place,
        what.place};
    Evidence found;
    Sums all, one;
    std::optional<MovementId> last;
    const auto finish = [&] {
        if (last && found.newest.size() < most)
            found.newest.push_back({*last, listOf(std::exchange(one, {}))});
    };
    while (rows.next()) {
        const auto movement = rows.get<MovementId>(0);
        if (last != movement) {
            finish();
            ++found.movements;
            one.clear();
        }
        last = movement;
        const Flow flow{rows.get<BeltId>(1),
                        PersonId{0},
                        {},
                        rows.get<Account>(2),
                        reasonOf(rows.get<int>(3)),
                        0,
                        rows.get<std::int64_t>(4),
                        Money::minor(0),
                        rows.get<Money>(5)};
        if (!what.accounts.empty()) add(one, flow);
        add(all, flow);
    }
    finish();
    found.sums = listOf(std::move(all));
    return found;
}

std::optional<Moment> Flows::firstMovement() const {
    return only<std::optional<Moment>>(connection_, "SELECT min(at_ms) FROM movement").value_or(std::nullopt);
}

} // namespace riband::store
