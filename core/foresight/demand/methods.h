#pragma once

#include "core/foresight/demand/filters.h"

/// The methods one by one: each takes one period after the other and says what is to be expected of the next
/// `periods` together; 0 before anything was asked for. No common base: choosing a method looks a hundred
/// million periods ahead for a large shop.
namespace riband::foresight::methods {

class Mean {
public:
    void take(double demand) {
        sum_ += demand;
        ++periods_;
    }
    double ahead(int periods) const { return periods_ > 0 ? periods * sum_ / periods_ : 0; }

private:
    double sum_ = 0;
    int periods_ = 0;
};

class Smoothing {
public:
    explicit Smoothing(Weights weights) : alpha_{weights.size} {}
    void take(double demand) {
        level_ = any_ ? level_ + alpha_ * (demand - level_) : demand;
        any_ = true;
    }
    double ahead(int periods) const { return periods * level_; }

private:
    double alpha_, level_ = 0;
    bool any_ = false;
};

/// Sizes and intervals smoothed apart, each only when there is a demand.
class Croston {
public:
    Croston(Weights weights, double unbias) : weights_{weights}, unbias_{unbias} {}
    void take(double demand) {
        ++since_;
        if (demand <= 0) return;
        size_ = any_ ? size_ + weights_.size * (demand - size_) : demand;
        interval_ = any_ ? interval_ + weights_.interval * (since_ - interval_) : since_;
        any_ = true;
        since_ = 0;
        rate_ = unbias_ * size_ / interval_; // here, since most periods have no demand
    }
    double ahead(int periods) const { return periods * rate_; }

private:
    Weights weights_;
    double unbias_, size_ = 0, interval_ = 1, since_ = 0, rate_ = 0;
    bool any_ = false;
};

class TeunterSyntetosBabai {
public:
    explicit TeunterSyntetosBabai(Weights weights) : weights_{weights} {}
    void take(double demand) {
        ++periods_;
        const bool has = demand > 0;
        if (has && !any_) start(demand);
        if (!any_) return;
        if (has) size_ += weights_.size * (demand - size_);
        chance_ += weights_.interval * ((has ? 1 : 0) - chance_);
    }
    double ahead(int periods) const { return any_ ? periods * size_ * chance_ : 0; }

private:
    /// The empty periods up to the first demand have gone by already.
    void start(double demand) {
        any_ = true;
        size_ = demand;
        chance_ = 1.0 / periods_;
        for (int i = 1; i < periods_; ++i)
            chance_ -= weights_.interval * chance_;
    }
    Weights weights_;
    double size_ = 0, chance_ = 0;
    int periods_ = 0;
    bool any_ = false;
};

class Bootstrap {
public:
    void take(double demand) {
        const bool has = demand > 0;
        if (periods_ > 0) ++steps_[last_ ? 1 : 0][has ? 1 : 0];
        if (has) {
            sum_ += demand;
            ++demands_;
        }
        last_ = has;
        ++periods_;
    }
    Chain chain() const {
        return periods_ > 0 ? Chain{chanceAfter(false), chanceAfter(true), last_} : Chain{};
    }
    double ahead(int periods) const {
        if (demands_ == 0) return 0;
        const Chain chain = this->chain();
        double expected = 0, chance = last_ ? 1 : 0;
        for (int i = 0; i < periods; ++i)
            expected += chance = chance * chain.afterDemand + (1 - chance) * chain.afterNone;
        return expected * sum_ / demands_;
    }

private:
    /// One further step is counted as if the weeks did not hang together: what was never seen follows the
    /// mean.
    double chanceAfter(bool demand) const {
        const auto& to = steps_[demand ? 1 : 0];
        return (to[1] + demands_ / static_cast<double>(periods_)) / (to[0] + to[1] + 1);
    }
    double steps_[2][2]{};
    double sum_ = 0;
    int demands_ = 0, periods_ = 0;
    bool last_ = false;
};

/// Seeds as the R package `forecast` has them: the first size, and the first interval counted from the start
/// of the series. TSB starts from the first size and one over the first interval, as if it had known them in
/// the periods before.
template <class Use>
auto with(Method method, Weights weights, Use use) {
    switch (method) {
    case Method::Mean:
        return use(Mean{});
    case Method::Smoothing:
        return use(Smoothing{weights});
    case Method::Croston:
        return use(Croston{weights, 1});
    case Method::SyntetosBoylan:
        return use(Croston{weights, 1 - weights.interval / 2});
    case Method::TeunterSyntetosBabai:
        return use(TeunterSyntetosBabai{weights});
    case Method::Bootstrap:
        break;
    }
    return use(Bootstrap{});
}

} // namespace riband::foresight::methods
