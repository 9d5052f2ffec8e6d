#include "core/shop/spread.h"

#include <stdexcept>

namespace riband::shop {

namespace {

/// amount * part / whole, rounded; taken apart so that it can't overflow for any width and amount in use.
Money shareOf(Money amount, std::int64_t part, std::int64_t whole) {
    const std::int64_t each = amount.inMinor() / whole;
    const std::int64_t rest = amount.inMinor() % whole;
    return Money::minor(each * part + roundedQuotient(rest * part, whole));
}

std::int64_t sumOf(const std::vector<std::int64_t>& widths) {
    std::int64_t sum = 0;
    for (const std::int64_t width : widths) {
        if (width < 0) throw std::invalid_argument("money is spread over widths that are not negative");
        sum += width;
    }
    if (sum == 0) throw std::invalid_argument("money can't be spread over no width");
    return sum;
}

} // namespace

std::vector<Money> spread(Money amount, const std::vector<std::int64_t>& widths) {
    const std::int64_t whole = sumOf(widths);
    std::vector<Money> shares;
    std::int64_t running = 0;
    Money given = Money::minor(0);
    for (const std::int64_t width : widths) {
        running += width;
        const Money until = shareOf(amount, running, whole);
        shares.push_back(until - given);
        given = until;
    }
    return shares;
}

} // namespace riband::shop
