// What figures are made of that no movements stand behind: pieces, order lines, takings.
#include "core/shop/reports/basis.h"

#include "core/measure/text.h"
#include "core/store/sold_lines.h"

#include <algorithm>

namespace riband::shop {

namespace {

std::string count(std::int64_t value) { return std::to_string(value); }

/// Adds lines up in the figure that was asked for.
class Adding {
public:
    Adding(std::vector<std::string> columns, std::string figure, const Currency& currency)
        : basis_{.lines = {std::move(columns), {}}}, figure_{std::move(figure)}, currency_{currency} {}

    void line(std::vector<std::string> fields) {
        basis_.lines.rows.push_back(std::move(fields));
        ++basis_.all;
    }
    /// What the line adds where `name` is the figure.
    void money(const char* name, Money amount) {
        if (figure_ == name) money_ = money_.value_or(Money::minor(0)) + amount;
    }
    void width(const char* name, Unit unit, std::int64_t amount) {
        if (figure_ != name) return;
        width_ += amount;
        unit_ = unit;
    }
    void one(const char* name) {
        if (figure_ == name) ones_ = ones_.value_or(0) + 1;
    }

    Basis finish() && {
        if (money_) {
            basis_.sum = printMoney(*money_, currency_);
            basis_.unit = std::string{currency_.code()};
        } else if (unit_) {
            basis_.sum = amountOf(*unit_, width_);
            basis_.unit = wordFor(*unit_);
        } else if (ones_) {
            basis_.sum = count(*ones_);
        }
        return std::move(basis_);
    }

private:
    Basis basis_;
    std::string figure_;
    const Currency& currency_;
    std::optional<Money> money_;
    std::optional<Unit> unit_;
    std::int64_t width_ = 0;
    std::optional<std::int64_t> ones_;
};

const char* wordFor(cutting::PieceKind kind) {
    const char* const words[] = {"sleeve", "remnant", "ready belt"};
    return words[static_cast<std::size_t>(kind)];
}

bool isIn(const AgeRow& age, int days) {
    return days >= age.fromDays && (!age.belowDays || days < *age.belowDays);
}

Money totalOf(const store::OrderLine& line) {
    return line.cancelled < line.quantity ? line.price.total : Money::minor(0);
}

Money totalOf(const store::Order& order) {
    Money total = Money::minor(0);
    for (const store::OrderLine& line : order.lines)
        total = total + totalOf(line);
    return total;
}

} // namespace

Basis piecesBehind(const Shop& shop, Date today, const StockPart& part, const std::string& figure,
                   const Currency& currency, Sees sees) {
    std::vector<std::string> columns{"piece", "kind", "belt", "width", "days", "place", "received", "batch"};
    if (sees == Sees::Cost) columns.insert(columns.end(), {"cost", "worth"});
    Adding adding{std::move(columns), figure, currency};
    const store::Catalogue catalogue{shop.connection};
    std::map<store::BeltId, std::string> names;
    for (const store::StockedBelt& belt : catalogue.all())
        names.emplace(belt.id, belt.designation);
    std::vector<WeighedPiece> pieces = weighedPieces(shop, today);
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const WeighedPiece& a, const WeighedPiece& b) { return a.days > b.days; });
    for (const auto& [piece, days, worth] : pieces) {
        if (!part.belts.empty() && !part.belts.contains(piece.belt)) continue;
        if (part.age && !isIn(*part.age, days)) continue;
        const Unit unit = piece.extent.unit();
        std::vector<std::string> fields{
            piece.code,  wordFor(piece.kind), names.at(piece.belt),      amountOf(unit, piece.extent.count()),
            count(days), piece.place,         printDate(piece.received), piece.batch};
        if (sees == Sees::Cost) {
            fields.push_back(printMoney(piece.cost, currency));
            fields.push_back(worth ? printMoney(*worth, currency) : "");
            adding.money("cost", piece.cost);
            if (worth) adding.money("worth", *worth);
        }
        adding.line(std::move(fields));
        adding.one("pieces");
        adding.width("width", unit, piece.extent.count());
    }
    return std::move(adding).finish();
}

Basis salesBehind(const Shop& shop, const Period& period, const SalesPart& part, const std::string& figure,
                  const Currency& currency) {
    Adding adding{
        {"at", "order", "customer", "belt", "unit", "width", "revenue", "cost", "margin"}, figure, currency};
    const auto known = [&](const store::SoldLine& line, Money sum) {
        return line.costKnown ? printMoney(sum, currency) : "";
    };
    store::SalesOf whose{.customer = part.customer};
    std::map<store::BeltId, store::StockedBelt> belts;
    for (const store::StockedBelt& belt : store::Catalogue{shop.connection}.all()) {
        if (part.belt == belt.designation) whose.belt = belt.id;
        belts.emplace(belt.id, belt);
    }
    for (const store::SoldLine& line : store::soldLines(shop.connection, period.from, period.until, whose)) {
        const store::StockedBelt& belt = belts.at(line.belt);
        adding.line({printMoment(line.at), line.order, line.customer, belt.designation, wordFor(belt.unit),
                     amountOf(belt.unit, line.width), printMoney(line.revenue, currency),
                     known(line, line.cost), known(line, line.revenue - line.cost)});
        adding.one("lines");
        if (whose.belt) adding.width("width", belt.unit, line.width);
        adding.money("revenue", line.revenue);
        adding.money("cost", line.costKnown ? line.cost : Money::minor(0));
        adding.money("revenue_without_cost", line.costKnown ? Money::minor(0) : line.revenue);
        if (line.costKnown) adding.money("margin", line.revenue - line.cost);
    }
    return std::move(adding).finish();
}

Basis fullCostBehind(const Shop& shop, const Period& period, const std::string& designation,
                     const Currency& currency) {
    Basis basis{.lines = {{"what", "amount"}, {}}};
    const auto moved = movedByBelt(shop, period);
    for (const store::StockedBelt& belt : store::Catalogue{shop.connection}.all()) {
        if (belt.designation != designation) continue;
        const auto at = moved.find(belt.id);
        const auto balance = at == moved.end() ? Balance<std::int64_t>{} : at->second;
        basis.lines.rows = {{"sleeve_cost", printMoney(belt.sleeveCost, currency)},
                            {"sleeve_width", amountOf(belt.unit, belt.newSleeve.count())},
                            {"sold", amountOf(belt.unit, balance.sold)},
                            {"used", amountOf(belt.unit, balance.used())}};
    }
    basis.all = static_cast<std::int64_t>(basis.lines.rows.size());
    return basis;
}

Basis takingsBehind(const Shop& shop, Date day, store::Payment kind, const std::string& figure,
                    const Currency& currency) {
    Adding adding{{"at", "order", "customer", "person", "amount"}, figure, currency};
    const Moment from{day};
    const store::Orders orders{shop.connection};
    const store::People people{shop.connection};
    for (const store::Taking& taking :
         store::Takings{shop.connection}.between(from, from + std::chrono::days{1})) {
        if (taking.kind != kind) continue;
        const store::Order order = orders.at(taking.order);
        adding.line({printMoment(taking.at), order.code, order.customerName,
                     people.at(taking.person).initials, printMoney(taking.amount, currency)});
        adding.one("orders");
        adding.money("amount", taking.amount);
    }
    return std::move(adding).finish();
}

Basis ordersMadeBehind(const Shop& shop, Date day, store::OrderState state, const std::string& figure,
                       const Currency& currency) {
    Adding adding{{"made", "order", "customer", "person", "amount"}, figure, currency};
    const Moment from{day}, until{day + std::chrono::days{1}};
    const store::Orders orders{shop.connection};
    const store::People people{shop.connection};
    for (const store::OrderId id : store::ordersMadeIn(shop.connection, from, until, state)) {
        const store::Order order = orders.at(id);
        adding.line({printMoment(order.made), order.code, order.customerName,
                     people.at(order.person).initials, printMoney(totalOf(order), currency)});
        adding.one("orders");
        adding.money("amount", totalOf(order));
    }
    return std::move(adding).finish();
}

Basis orderLinesBehind(const Shop& shop, const std::string& code, const std::string& figure,
                       const Currency& currency) {
    Adding adding{{"belt", "unit", "width", "quantity", "total"}, figure, currency};
    const store::Catalogue catalogue{shop.connection};
    if (const auto order = store::Orders{shop.connection}.byCode(code))
        for (const store::OrderLine& line : order->lines) {
            const Unit unit = line.extent.unit();
            adding.line({catalogue.at(line.belt).designation, wordFor(unit),
                         amountOf(unit, line.extent.count()), count(line.quantity),
                         printMoney(totalOf(line), currency)});
            adding.money("total", totalOf(line));
        }
    return std::move(adding).finish();
}

} // namespace riband::shop
