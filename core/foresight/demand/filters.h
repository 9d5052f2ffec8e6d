#pragma once

#include "core/foresight/demand/series.h"

namespace riband::foresight {

enum class Method {
    Mean,                 ///< of all periods so far: the reference that the others have to beat
    Smoothing,            ///< simple exponential smoothing; the first period seeds the level
    Croston,              ///< Croston, Oper. Res. Quarterly 23 (1972) 289-303
    SyntetosBoylan,       ///< Croston without its bias: Int. J. Forecasting 21 (2005) 303-314
    TeunterSyntetosBabai, ///< falls while nothing sells: Eur. J. Oper. Res. 214 (2011) 606-615
    Bootstrap, ///< two-state chain and sizes as they were: Willemain, Smart, Schwarz, Int. J. Forecasting 20
               ///< (2004) 375-387, without their jitter
};
constexpr Method allMethods[] = {Method::Mean,
                                 Method::Smoothing,
                                 Method::Croston,
                                 Method::SyntetosBoylan,
                                 Method::TeunterSyntetosBabai,
                                 Method::Bootstrap};

/// How fast a method forgets; 0 < each < 1. Mean and Bootstrap have none, Smoothing only the first.
struct Weights {
    double size = 0.1;
    double interval = 0.1; ///< of TSB: of the chance of a demand
    friend bool operator==(const Weights&, const Weights&) = default;
};

/// What the method expects of the next `periods` after the series together (methods.h).
double expectedAfter(const Series& series, Method method, Weights weights, int periods = 1);

/// The chain of Bootstrap: the chance that the next period has a demand, after one without and after one
/// with. Each starts with one step counted at the share of all periods that had a demand, so that a turn
/// never seen is taken as if the periods did not hang together; common practice, no source.
struct Chain {
    double afterNone = 0.5, afterDemand = 0.5;
    bool lastHadDemand = false;
};
Chain chainOf(const Series& series);

} // namespace riband::foresight
