#include "core/shop/counting/slip.h"

#include <algorithm>
#include <charconv>
#include <string>

namespace riband::shop::counting {

std::vector<std::int64_t> transpositionsOf(std::int64_t count, Unit unit) {
    std::int64_t grain = 1;
    if (unit == Unit::Micrometre) {
        grain = count % 100 == 0 ? 100 : 10;
        if (count % grain != 0) return {}; // nobody writes thousandths
    }
    const std::string digits = std::to_string(count / grain);
    std::vector<std::int64_t> meant;
    for (std::size_t i = 0; i + 1 < digits.size(); ++i) {
        std::string swapped = digits;
        std::swap(swapped[i], swapped[i + 1]);
        if (swapped == digits || swapped.front() == '0') continue;
        std::int64_t value = 0;
        std::from_chars(swapped.data(), swapped.data() + swapped.size(), value);
        meant.push_back(value * grain);
    }
    return meant;
}

} // namespace riband::shop::counting
