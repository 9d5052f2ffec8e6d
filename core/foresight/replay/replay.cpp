#include "core/foresight/replay/replay.h"

#include <cmath>
#include <deque>

namespace riband::foresight {

namespace {

constexpr double daysOfYear = 365;
constexpr int runsOfNeed = 60;

double widthOf(const std::vector<Order>& orders) {
    double width = 0;
    for (const Order& order : orders)
        width += foresight::widthOf(order);
    return width;
}

class Year {
public:
    Year(const ReplayRules& rules, const StockRule& stock)
        : rules_{rules}, stock_{stock}, counter_{rackOf(rules, stock)} {
        counter_.rack.scrapBelow(rules.leastRemnant);
        onHand_ = stock.reorderPoint + stock.lot;
        heldBefore_ = counter_.rack.held();
    }

    Played play(const std::vector<Order>& orders, double days) {
        std::vector<Order> waiting;
        for (const Order& order : orders) {
            if (!waiting.empty() &&
                (!rules_.together || std::floor(order.day) != std::floor(waiting.front().day)))
                serve(waiting);
            waiting.push_back(order);
        }
        serve(waiting);
        waitUntil(days);
        finish();
        return played_;
    }

private:
    static BestFit rackOf(const ReplayRules& rules, const StockRule& stock) {
        BestFit rack{rules.setting};
        for (const Remnant& remnant : stock.rack)
            rack.keep(remnant.size, remnant.opened);
        return rack;
    }

    void serve(std::vector<Order>& waiting) {
        if (waiting.empty()) return;
        waitUntil(waiting.back().day);
        const int before = counter_.opened;
        const auto refused = rules_.together
                                 ? cutTogether(counter_, rules_.setting, waiting, counter_.opened + onHand_)
                                 : cutEach(counter_, waiting, counter_.opened + onHand_);
        onHand_ -= counter_.opened - before;
        counter_.rack.scrapBelow(rules_.leastRemnant);
        for (const Order& order : waiting)
            played_.sold += foresight::widthOf(order);
        for (const Order& order : refused)
            played_.lost += foresight::widthOf(order);
        played_.orders += static_cast<double>(waiting.size());
        played_.lostOrders += static_cast<double>(refused.size());
        waiting.clear();
    }

    void waitUntil(double day) {
        for (; nextReview_ <= day; nextReview_ += rules_.terms.reviewDays) {
            arrive(nextReview_);
            review();
        }
        arrive(day);
        today_ = std::max(today_, day);
    }

    void arrive(double day) {
        while (!onTheirWay_.empty() && onTheirWay_.front() <= day) {
            count(onTheirWay_.front());
            onTheirWay_.pop_front();
            ++onHand_;
        }
        count(day);
    }

    void count(double day) {
        played_.stockDays += onHand_ * std::max(day - counted_, 0.0);
        counted_ = std::max(counted_, day);
    }

    void review() {
        const int lacking = stock_.reorderPoint - onHand_ - static_cast<int>(onTheirWay_.size());
        if (lacking <= 0) return;
        const int bought = std::max(lacking, stock_.lot);
        played_.bought += bought;
        for (int i = 0; i < bought; ++i)
            onTheirWay_.push_back(nextReview_ + rules_.sleeve.leadDays);
    }

    void finish() {
        played_.sold -= played_.lost;
        played_.sleeves = counter_.opened;
        played_.mountings = counter_.mountings;
        played_.used =
            static_cast<double>(counter_.opened) * rules_.setting.sleeve + heldBefore_ - counter_.rack.held();
        played_.rubber = played_.used * rules_.sleeve.cost / rules_.sleeve.width;
    }

    const ReplayRules& rules_;
    const StockRule& stock_;
    Counter counter_;
    int onHand_ = 0;
    std::deque<double> onTheirWay_; ///< days of arrival
    double heldBefore_ = 0, nextReview_ = 0, today_ = 0, counted_ = 0;
    Played played_;
};

} // namespace

void Played::add(const Played& other, double millimetres) {
    orders += other.orders;
    lostOrders += other.lostOrders;
    sold += other.sold * millimetres;
    lost += other.lost * millimetres;
    used += other.used * millimetres;
    sleeves += other.sleeves;
    mountings += other.mountings;
    bought += other.bought;
    rubber += other.rubber;
    stockDays += other.stockDays;
    expense += other.expense;
}

double expenseOf(const Played& played, const ReplayRules& rules, const WidthMoney& unit) {
    return played.rubber + played.mountings * rules.setting.rules.mountingCost * unit.rubber +
           rules.terms.interest * rules.sleeve.cost * played.stockDays / daysOfYear +
           played.lost * unit.margin;
}

StockRule stockRuleOf(const ReplayRules& rules, const Record& record) {
    StockRule rule;
    if (record.orders.empty()) return {.reorderPoint = 0, .lot = 0};
    Forecast pace; // the replayed time is known: its own pace, not a forecast of the next one
    pace.method = Method::Mean;
    pace.expected =
        record.meanWidth() * static_cast<double>(record.orders.size()) / record.days * daysOfPeriod;
    const Futures futures{record, pace};
    const Consumption usual = consumptionOf(rules.setting, futures, Dice::of(rules.terms.seed, 1));
    rule.rack = usual.rack;
    rule.reorderPoint =
        needOf(rules.setting, rule.rack, futures, rules.sleeve.leadDays + rules.terms.reviewDays, runsOfNeed,
               Dice::of(rules.terms.seed, 2))
            .sleevesFor(rules.terms.service);
    const double perYear =
        futures.widthPerDay() * daysOfYear * usual.usedPerSold / static_cast<double>(rules.sleeve.width);
    rule.lot = economicLot(perYear, rules.terms.orderCost, rules.terms.interest * rules.sleeve.cost,
                           std::max(1, static_cast<int>(perYear)));
    return rule;
}

Played playYear(const ReplayRules& rules, const StockRule& stock, const std::vector<Order>& orders,
                double days) {
    const std::vector<Order> possible = servable(rules.setting, orders);
    Played played = Year{rules, stock}.play(possible, days);
    const double lost = widthOf(orders) - widthOf(possible); // too wide for the sleeve
    played.lost += lost;
    played.lostOrders += static_cast<double>(orders.size() - possible.size());
    played.orders += static_cast<double>(orders.size() - possible.size());
    return played;
}

} // namespace riband::foresight
