#include "core/shop/counting/verdict.h"

#include <algorithm>
#include <cstdlib>
#include <stdexcept>

namespace riband::shop::counting {

std::int64_t toleranceOf(const store::CountRules& rules, Unit unit, store::Method method) {
    if (unit == Unit::Rib) return 0;
    switch (method) {
    case store::Method::Calliper:
        return rules.calliper.count();
    case store::Method::Tape:
        return rules.tape.count();
    case store::Method::Eye:
        return rules.eye.count();
    }
    return 0;
}

Verdict verdictOf(const std::vector<Look>& looks, const store::CountRules& rules, Unit unit) {
    if (looks.empty()) throw std::invalid_argument("a verdict needs a measurement");
    const Look& last = looks.back();
    const std::int64_t tolerance = toleranceOf(rules, unit, last.method);
    if (last.gap == 0) return Verdict::Agrees;
    if (!last.outOfBook && std::abs(last.gap) <= tolerance) return Verdict::Within;
    if (looks.size() < 2) return Verdict::Again;
    const Look& before = looks[looks.size() - 2];
    const std::int64_t coarser = std::max(tolerance, toleranceOf(rules, unit, before.method));
    return std::abs(last.gap - before.gap) <= coarser ? Verdict::Differs : Verdict::Again;
}

} // namespace riband::shop::counting
