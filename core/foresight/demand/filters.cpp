#include "core/foresight/demand/methods.h"

namespace riband::foresight {

double expectedAfter(const Series& series, Method method, Weights weights, int periods) {
    return methods::with(method, weights, [&](auto filter) {
        for (const double demand : series)
            filter.take(demand);
        return filter.ahead(periods);
    });
}

Chain chainOf(const Series& series) {
    methods::Bootstrap bootstrap;
    for (const double demand : series)
        bootstrap.take(demand);
    return bootstrap.chain();
}

} // namespace riband::foresight
