#pragma once

#include "core/foresight/lookahead.h"

#include <limits>
#include <map>
#include <optional>

namespace riband::foresight {

/// How much of the method is used; the layers can be measured apart.
enum class Layer : std::uint8_t {
    Price,     ///< price rule by the worth curve
    LookAhead, ///< and every choice tried on the same futures
};

/// The ways to serve an order that are worth a look, and which is taken.
struct Choice {
    std::vector<Way> ways; ///< the price rule's first; none if nothing here can serve it
    std::size_t best = 0;
    std::optional<std::size_t> smallest{}; ///< the smallest that fits, if one takes the whole order
    std::vector<Worth> extra;              ///< expected cost of each way over the best
    bool judged = false;                   ///< by look-ahead; else by the table alone
    Reason why;
};

/// Chooses from a stock by a worth table and an outlook that somebody else keeps: the advisor that plays a
/// shop, and a real shop's counter, decide by this one and the same code. One object is one desk.
class Chooser {
public:
    Chooser(const Setting& setting, Layer layer, LookAhead::Knobs knobs = {});

    /// `mayFill`: belts may be cut for the shelf as well. `mostSleeves`: that can be opened. The same
    /// arguments give the same choice.
    Choice choose(const WorthTable& table, const Outlook& outlook, const Stock& stock, const Asked& asked,
                  bool mayFill, std::uint64_t seed, int mostSleeves = std::numeric_limits<int>::max());

    PriceRule& rule() { return rule_; }

private:
    void addWhole(const WorthTable& table, const Stock& stock, const Asked& asked, Choice& choice);
    void addSplits(const WorthTable& table, const Stock& stock, const Asked& asked, Choice& choice);
    Worth judge(const WorthTable& table, const Outlook& outlook, const Stock& stock, const Asked& asked,
                std::uint64_t seed, Choice& choice);
    Size leftOf(const Stock& stock, const Asked& asked, const Share& share) const;
    Reason reasonOf(const WorthTable& table, const Stock& stock, const Asked& asked, const Choice& choice,
                    Worth saved) const;

    Setting setting_;
    Layer layer_;
    PriceRule rule_;
    LookAhead lookAhead_;
};

} // namespace riband::foresight
