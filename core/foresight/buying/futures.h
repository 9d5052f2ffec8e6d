#pragma once

#include "core/foresight/buying/record.h"
#include "core/foresight/demand/forecast.h"
#include "core/foresight/dice.h"

namespace riband::foresight {

/// Draws days to come. Orders are drawn from those of the record, each as likely as the other: what is asked
/// for together stays together. They come as a Poisson stream at the pace that was forecast (a compound
/// Poisson demand); if the bootstrap forecast best, weeks are drawn by its chain and a week with demand is
/// one that was. Keeps a reference: the record must outlive it.
class Futures {
public:
    Futures(const Record& record, const Forecast& forecast);

    /// An order of the record, on a day of those to come; days count from now on.
    struct Drawn {
        double day;
        std::size_t order;
    };
    /// In the place of what is in `drawn`.
    void draw(Dice& dice, double days, std::vector<Drawn>& drawn) const;
    const std::vector<Order>& orders() const { return record_.orders; }
    double ordersPerDay() const { return ordersPerDay_; }
    double widthPerDay() const { return ordersPerDay_ * record_.meanWidth(); }

private:
    void drawStream(Dice& dice, double days, std::vector<Drawn>& drawn) const;
    void drawWeeks(Dice& dice, double days, std::vector<Drawn>& drawn) const;

    const Record& record_;
    double ordersPerDay_ = 0;
    bool byWeeks_ = false;
    Chain chain_;
    std::vector<std::vector<Drawn>> weeks_; ///< with demand; days count from the beginning of the week
};

} // namespace riband::foresight
