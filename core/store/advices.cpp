#include "core/store/advices.h"

#include "core/store/statement.h"

namespace riband::store {
namespace {

constexpr int suggestedWay = 0, takenWay = 1;

#define ADVICES                                                                                              \
    "SELECT a.id, a.sales_order, a.belt, a.at_ms, a.person, a.basis, a.worth_version, a.shelf_declined,"     \
    " a.overridden, a.override_key, a.override_words, b.unit FROM advice a JOIN belt b ON b.id = a.belt "

void addWay(Connection& connection, AdviceId advice, int which, const AdvisedWay& way) {
    change(connection,
           "INSERT INTO advice_way (advice, which, cost, cost_money, worth_left, sleeves_opened, from_shelf)"
           " VALUES (?, ?, ?, ?, ?, ?, ?)",
           advice, which, way.cost, way.costMoney, way.worthLeft, way.sleevesOpened, way.fromShelf);
    std::int64_t position = 0;
    for (const AdvisedWay::FromPiece& from : way.pieces)
        change(connection,
               "INSERT INTO advice_piece (advice, which, position, piece, left_over) VALUES (?, ?, ?, ?, ?)",
               advice, which, position++, from.piece, from.left);
    for (const AdvisedWay::ForShelf& belts : way.forShelf)
        change(connection, "INSERT INTO advice_shelf (advice, which, extent, belts) VALUES (?, ?, ?, ?)",
               advice, which, belts.extent, belts.belts);
}

AdvisedWay wayOf(Connection& connection, AdviceId advice, int which, Unit unit) {
    AdvisedWay way;
    Statement row{connection,
                  "SELECT cost, cost_money, worth_left, sleeves_opened, from_shelf FROM advice_way"
                  " WHERE advice = ? AND which = ?",
                  advice, which};
    if (!row.next()) return way;
    way.cost = row.get<double>(0);
    way.costMoney = row.get<Money>(1);
    way.worthLeft = row.get<double>(2);
    way.sleevesOpened = row.get<std::int64_t>(3);
    way.fromShelf = row.get<std::int64_t>(4);
    Statement pieces{connection,
                     "SELECT piece, left_over FROM advice_piece WHERE advice = ? AND which = ?"
                     " ORDER BY position",
                     advice, which};
    while (pieces.next())
        way.pieces.push_back({pieces.get<PieceId>(0), pieces.extent(1, unit)});
    Statement shelf{connection,
                    "SELECT extent, belts FROM advice_shelf WHERE advice = ? AND which = ? ORDER BY extent",
                    advice, which};
    while (shelf.next())
        way.forShelf.push_back({shelf.extent(0, unit), shelf.get<std::int64_t>(1)});
    return way;
}

std::vector<Advice> advicesOf(Connection& connection, Statement& rows) {
    std::vector<Advice> advices;
    while (rows.next()) {
        const auto id = rows.get<AdviceId>(0);
        const auto unit = rows.get<Unit>(11);
        advices.push_back({.id = id,
                           .order = rows.get<OrderId>(1),
                           .belt = rows.get<BeltId>(2),
                           .at = rows.get<Moment>(3),
                           .person = rows.get<PersonId>(4),
                           .basis = rows.get<AdviceBasis>(5),
                           .worthVersion = rows.get<int>(6),
                           .suggested = wayOf(connection, id, suggestedWay, unit),
                           .taken = wayOf(connection, id, takenWay, unit),
                           .shelfDeclined = rows.get<bool>(7),
                           .overridden = rows.get<bool>(8),
                           .overrideKey = rows.get<std::optional<OverrideKey>>(9),
                           .overrideWords = rows.get<std::string>(10)});
    }
    return advices;
}

} // namespace

AdviceId Advices::add(const Advice& advice) {
    const auto id = insert<AdviceId>(
        connection_,
        "INSERT INTO advice (sales_order, belt, at_ms, person, basis, worth_version, shelf_declined,"
        " overridden, override_key, override_words) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        advice.order, advice.belt, advice.at, advice.person, advice.basis, advice.worthVersion,
        advice.shelfDeclined, advice.overridden, advice.overrideKey, advice.overrideWords);
    addWay(connection_, id, suggestedWay, advice.suggested);
    addWay(connection_, id, takenWay, advice.taken);
    return id;
}

std::vector<Advice> Advices::ofOrder(OrderId order) const {
    Statement rows{connection_, ADVICES "WHERE a.sales_order = ? ORDER BY a.id", order};
    return advicesOf(connection_, rows);
}

std::vector<Advice> Advices::between(Moment from, Moment until) const {
    Statement rows{connection_, ADVICES "WHERE a.at_ms >= ? AND a.at_ms < ? ORDER BY a.at_ms, a.id", from,
                   until};
    return advicesOf(connection_, rows);
}

} // namespace riband::store
