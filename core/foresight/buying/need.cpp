#include "core/foresight/buying/need.h"

#include "core/foresight/best_fit.h"

#include <algorithm>

namespace riband::foresight {

namespace {

BestFit counterWith(const Setting& setting, const std::vector<Remnant>& remnants) {
    BestFit counter{setting};
    for (const Remnant& remnant : remnants)
        counter.keep(remnant.size, remnant.opened);
    return counter;
}

/// A future: the lines of its orders, that a sleeve can give, each on its day.
struct Asked {
    double day;
    const std::vector<Line>* lines;
};
using Future = std::vector<Asked>;

/// Width lost with so many sleeves: an order that needs more than are left goes elsewhere and leaves the rack
/// as it was.
double lostWith(BestFit& counter, const Future& future, std::size_t sleeves) {
    double lost = 0;
    for (const Asked& order : future)
        if (const auto opened = counter.serve(*order.lines, order.day, sleeves))
            sleeves -= *opened;
        else
            lost += widthOf(*order.lines);
    return lost;
}

std::size_t openedFor(BestFit& counter, const Future& future) {
    std::size_t opened = 0;
    for (const Asked& order : future)
        opened += *counter.serve(*order.lines, order.day, BestFit::anyNumber);
    return opened;
}

/// Sums over the runs, by the number of sleeves.
class Sums {
public:
    explicit Sums(const BestFit& counter) : counter_{counter}, played_{counter} {}
    void add(const Future& future) {
        played_ = counter_;
        const std::size_t opened = openedFor(played_, future);
        if (opened >= runs_.size()) {
            runs_.resize(opened + 1, 0);
            lost_.resize(opened + 1, 0);
        }
        ++runs_[opened];
        for (std::size_t sleeves = 0; sleeves < opened; ++sleeves) {
            played_ = counter_;
            lost_[sleeves] += lostWith(played_, future, sleeves);
        }
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
    BestFit counter_, played_; ///< played again and again in the same memory
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
    std::vector<std::vector<Line>> able;
    for (const Order& order : futures.orders())
        able.push_back(servable(setting, order.lines));
    Sums sums{counterWith(setting, remnants)};
    std::vector<Futures::Drawn> drawn;
    Future future;
    for (int run = 0; run < runs; ++run) {
        futures.draw(dice, days, drawn);
        future.clear();
        for (const Futures::Drawn& each : drawn)
            if (!able[each.order].empty()) future.push_back({each.day, &able[each.order]});
        sums.add(future);
    }
    return sums.need(runs);
}

} // namespace riband::foresight
