#pragma once

#include "core/cutting/planner/model.h"

#include <functional>
#include <limits>

namespace riband::cutting::planner {

constexpr std::int64_t unlimited = std::numeric_limits<std::int64_t>::max() / 4;
/// A limit of which some was used is still no limit.
constexpr bool limits(std::int64_t most) { return most < unlimited / 2; }

/// Costs and prices of the search are counted in 1/1024 µm (or rib), so that a price may be a fraction of the
/// unit while all sums stay exact.
constexpr std::int64_t scale = 1024;

/// What the search minimises.
enum class Aim : std::uint8_t {
    Unserved, ///< the width not served
    Spent,    ///< the worth spent, with no more than a given width unserved
};

/// What is still to be done and what it may be done with.
struct State {
    Counts demand;                      ///< of each item
    std::vector<std::int64_t> free;     ///< pieces of each kind
    std::int64_t budget = 0;            ///< width that may go unserved (Aim::Spent)
    std::int64_t sleeves = unlimited;   ///< new sleeves that may be opened
    std::int64_t mountings = unlimited; ///< mountings that may be made

    bool done() const;
};

State startOf(const Model& model);

/// The fewest mountings that could have room for what must be served; nothing if no number could.
std::optional<std::int64_t> fewestMountings(const Model& model, const State& state);

/// Asks the caller's stop, and remembers a yes. Also counts work, so that a search without a limit ends.
class Stopper {
public:
    Stopper(std::function<bool()> stop, std::int64_t work) : stop_{std::move(stop)}, work_{work} {}
    /// `work`: about so many list steps were done since last time.
    bool now(std::int64_t work) {
        if (stopped_) return true;
        work_ -= work;
        sinceAsked_ += work;
        if (sinceAsked_ < 20'000) return false; // well under a millisecond
        sinceAsked_ = 0;
        stopped_ = work_ < 0 || (stop_ && stop_());
        return stopped_;
    }
    bool stopped() const { return stopped_; }

private:
    std::function<bool()> stop_;
    std::int64_t work_;
    std::int64_t sinceAsked_ = 0;
    bool stopped_ = false;
};

} // namespace riband::cutting::planner
