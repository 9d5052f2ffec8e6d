#include "core/foresight/buying/need.h"

#include "core/foresight/best_fit.h"

#include <algorithm>

namespace riband::foresight {

namespace {

std::size_t openedBy(const Answer& answer) {
    return static_cast<std::size_t>(std::count_if(answer.mountings.begin(), answer.mountings.end(),
                                                  [](const Mounting& each) { return each.opensSleeve; }));
}

BestFit counterWith(const Setting& setting, const std::vector<Remnant>& remnants) {
    BestFit counter{setting};
    for (const Remnant& remnant : remnants)
        counter.keep(remnant.size, remnant.opened);
    return counter;
}

struct Run {
    std::size_t opened = 0;
    double lost = 0;
};

/// An order that needs more sleeves than are left goes elsewhere and leaves the rack as it was.
Run cutOut(BestFit counter, const std::vector<Order>& orders, std::size_t sleeves) {
    Run run;
    BestFit before = counter;
    for (const Order& order : orders) {
        before = counter;
        const std::size_t opens = openedBy(counter.answer(order));
        if (run.opened + opens <= sleeves) {
            run.opened += opens;
            continue;
        }
        run.lost += widthOf(order);
        counter = before;
    }
    return run;
}

std::size_t openedFor(BestFit counter, const std::vector<Order>& orders) {
    std::size_t opened = 0;
    for (const Order& order : orders)
        opened += openedBy(counter.answer(order));
    return opened;
}

/// Sums over the runs, by the number of sleeves.
class Sums {
public:
    void add(const BestFit& counter, const std::vector<Order>& orders) {
        const std::size_t opened = openedFor(counter, orders);
        if (opened >= runs_.size()) {
            runs_.resize(opened + 1, 0);
            lost_.resize(opened + 1, 0);
        }
        ++runs_[opened];
        for (std::size_t sleeves = 0; sleeves < opened; ++sleeves)
            lost_[sleeves] += cutOut(counter, orders, sleeves).lost;
    }
    Need need(int runs) const {
        Need need;
        double so = 0;
        for (std::size_t i = 0; i < runs_.size(); ++i) {
            so += runs_[i];
            need.enough.push_back(so / runs);
            need.lost.push_back(lost_[i] / runs);
        }
        return need;
    }

private:
    std::vector<int> runs_{0};
    std::vector<double> lost_{0};
};

} // namespace

int Need::sleevesFor(double service) const {
    const auto found = std::find_if(enough.begin(), enough.end(),
                                    [&](double share) { return share >= service * (1 - 1e-12); });
    return static_cast<int>(found - enough.begin());
}

double Need::enoughWith(int sleeves) const {
    return enough[std::min(static_cast<std::size_t>(std::max(sleeves, 0)), enough.size() - 1)];
}

double Need::lostWith(int sleeves) const {
    return lost[std::min(static_cast<std::size_t>(std::max(sleeves, 0)), lost.size() - 1)];
}

Need needOf(const Setting& setting, const std::vector<Remnant>& remnants, const Futures& futures, double days,
            int runs, Dice dice) {
    const BestFit counter = counterWith(setting, remnants);
    Sums sums;
    std::vector<Order> orders;
    for (int run = 0; run < runs; ++run) {
        futures.draw(dice, days, orders);
        orders = servable(setting, std::move(orders)); // keeps its room for the next run
        sums.add(counter, orders);
    }
    return sums.need(runs);
}

} // namespace riband::foresight
