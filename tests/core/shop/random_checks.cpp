// What must hold after each random act.
#include "core/shop/reports/waste.h"
#include "core/store/verify.h"
#include "tests/core/shop/random_shop.h"

namespace riband::shop {

using store::Account;
using store::OrderState;

void RandomShop::checkBook() {
    CHECK(shop_.disagreements().empty());
    checkWidths();
    checkOrders();
    if (oneIn(10)) checkReports();
}

void RandomShop::checkWidths() {
    std::map<bool, std::map<Account, std::int64_t>> sums;
    for (const store::Ledger::Balance& balance : store::Ledger{shop_.connection}.balances()) {
        const Unit unit = store::Catalogue{shop_.connection}.at(balance.belt).unit;
        sums[unit == Unit::Rib][balance.account] += balance.amount;
    }
    std::map<bool, std::int64_t> onRack;
    for (const store::StockPiece& piece : store::Pieces{shop_.connection}.all())
        onRack[piece.extent.unit() == Unit::Rib] += piece.extent.count();
    for (const bool ribbed : {false, true}) {
        auto& sum = sums[ribbed];
        CHECK(-sum[Account::Bought] - sum[Account::Found] == bought_[ribbed]);
        CHECK(sum[Account::Rack] + sum[Account::Ready] == onRack[ribbed]);
        std::int64_t gone = 0;
        for (const Account account :
             {Account::Sold, Account::Trim, Account::Kerf, Account::End, Account::Scrap, Account::Difference})
            gone += sum[account];
        CHECK(onRack[ribbed] + gone == bought_[ribbed]);
    }
}

void RandomShop::checkOrders() {
    std::map<store::LineId, std::int64_t> told;
    for (const Missing& row : missing(shop_.shop))
        told[row.line.id] += row.belts;
    for (const BenchMounting& row : bench(shop_.shop))
        for (const store::TicketCut& cut : row.mounting.cuts)
            if (cut.line) told[*cut.line] += cut.count;
    for (const OrderState state : {OrderState::Open, OrderState::Ready})
        for (const store::Order& order : store::Orders{shop_.connection}.inState(state))
            for (const store::OrderLine& line : order.lines)
                CHECK(line.cut + line.cancelled + told[line.id] == line.quantity);
}

void RandomShop::checkReports() {
    const Moment first{Date{std::chrono::year{2026} / 1 / 1}}, now = shop_.shop.now();
    const Moment from = first + std::chrono::minutes{number(0, (now - first) / std::chrono::minutes{1})};
    for (const Period& period : {Period{first, now}, Period{from, now}, Period{first, from}})
        for (const GroupBy by :
             {GroupBy::Belt, GroupBy::Person, GroupBy::Cutter, GroupBy::Place, GroupBy::Cause})
            for (const WasteRow& row : waste(shop_.shop, period, by)) {
                CHECK(row.width.in() == row.width.out());
                CHECK(row.money.in() == row.money.out());
            }
    std::map<store::BeltId, std::pair<std::int64_t, std::int64_t>> rack;
    for (const store::StockPiece& piece : store::Pieces{shop_.connection}.all())
        if (piece.kind != cutting::PieceKind::Ready) {
            rack[piece.belt].first += piece.extent.count();
            rack[piece.belt].second += piece.cost.inMinor();
        }
    for (const WasteRow& row : waste(shop_.shop, {from, now + std::chrono::hours{1}}, GroupBy::Belt)) {
        CHECK(row.width.closing == rack[row.behind.belts.front()].first);
        CHECK(row.money.closing == rack[row.behind.belts.front()].second);
    }
}

} // namespace riband::shop
