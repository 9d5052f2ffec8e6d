#pragma once

#include "core/cutting/problem.h"
#include "core/cutting/setup.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::store {

/// What a quantity takes off the width price of a line.
struct QuantityStep {
    std::int64_t from; ///< belts of one line
    Permille off;
    friend bool operator==(const QuantityStep&, const QuantityStep&) = default;
};

/// How the shop prices; docs/prices.md.
struct PriceRules {
    Currency currency{"EUR", 2};
    Money cuttingCharge = Money::minor(250); ///< a belt
    Money minimumLine = Money::minor(0);
    std::vector<QuantityStep> steps; ///< by `from`, rising
    Permille tax{0};
    std::int64_t roundTotalTo = 1; ///< minor units: a line's total to this step
    bool pricesIncludeTax = false;
    friend bool operator==(const PriceRules&, const PriceRules&) = default;
};

/// What the suggestion goes by (docs/foresight.md); the rack's limit is ShopSettings::mostRemnants.
struct AdviceRules {
    bool finish = true;                    ///< dead ends are cut into ready belts
    int shelfLimit = 6;                    ///< ready belts of a width, 0 to 6
    int shelfAtOnce = 4;                   ///< for the shelf in a mounting; 0: any number
    Permille interest{60};                 ///< a year, on the width that lies there
    Width holding = Width::millimetres(2); ///< a piece on the rack costs so much a year
    friend bool operator==(const AdviceRules&, const AdviceRules&) = default;
};

/// How people count (docs/counting.md). The tolerances are common practice, no source.
struct CountRules {
    Extent calliper = Width::micrometres(300);
    Extent tape = Width::millimetres(1);
    Extent eye = Width::millimetres(5); ///< says that the piece is there; the book is not corrected by it
    Money approveOver = Money::minor(5'000); ///< a difference worth more needs the stock manager or the owner
    int minutesADay = 20;
    int daysA = 30, daysB = 60, daysC = 90; ///< longest time between counts, by class
    friend bool operator==(const CountRules&, const CountRules&) = default;
};

/// By what the shop buys (docs/buying.md); the interest is that of AdviceRules.
struct BuyingRules {
    Permille service{950}; ///< of the times between two chances to buy in which nobody is sent away
    int deliveryDays = 5;  ///< of belts whose entry says none
    int reviewDays = 7;    ///< from one look at the purchase list to the next
    Money orderCost = Money::minor(500); ///< work and freight that one line of a purchase order costs
    friend bool operator==(const BuyingRules&, const BuyingRules&) = default;
};

/// What labels are printed on: a roll, one label a page, or sheets.
struct LabelStock {
    Width width = Width::millimetres(58), height = Width::millimetres(40); ///< of one label
    int columns = 1, rows = 1;                                             ///< labels on a sheet
    Width left = Width::millimetres(0), top = Width::millimetres(0);       ///< of the first one on the sheet
    Width across = Width::millimetres(0), down = Width::millimetres(0);    ///< gaps between labels
    bool sheet = false; ///< of the paper of the shop; else a roll
    friend bool operator==(const LabelStock&, const LabelStock&) = default;
};

/// A cutter of the shop; 0: new, its number is given when it is written.
struct ShopCutter {
    CutterId id{0};
    cutting::Cutter cutter{.name = "Cutter"};
};

struct ShopSettings {
    std::string name;
    std::string address; ///< for papers, lines by '\n'
    PriceRules prices;
    cutting::Rules toothed = cutting::Rules::usual(Unit::Micrometre);
    cutting::Rules ribbed = cutting::Rules::usual(Unit::Rib);
    Extent mountingCost = Width::millimetres(4);
    int mostRemnants = 10; ///< of a belt
    AdviceRules advice;
    BuyingRules buying;
    std::vector<ShopCutter> cutters{ShopCutter{}}; ///< never none; the first is the usual one
    std::string paper = "A4";
    CountRules counting;
    LabelStock labels;
    const cutting::Rules& rulesFor(Unit unit) const { return unit == Unit::Rib ? ribbed : toothed; }
    const cutting::Cutter& usualCutter() const { return cutters.front().cutter; }
    /// The usual one where that one was taken out.
    const ShopCutter& cutterOf(CutterId id) const;
};

/// The only code that names the tables `setting` and `price_step`; `cutter` and `cutter_shaft` are Cutters'.
class Settings {
public:
    explicit Settings(Connection& connection) : connection_{connection} {}
    ShopSettings read() const; ///< as in ShopSettings where nothing was written
    /// Cutters need names, each another: throws std::invalid_argument.
    void write(const ShopSettings& settings);

private:
    Connection& connection_;
};

} // namespace riband::store
