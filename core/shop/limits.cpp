#include "core/shop/limits.h"

#include "core/shop/demand.h"
#include "core/shop/queries.h"

#include <algorithm>

namespace riband::shop {

namespace {
constexpr std::ptrdiff_t longestPlace = 60;

bool isControl(unsigned char c) { return c < 0x20 || c == 0x7f; }
} // namespace

bool hasAmounts(const Shop& shop) {
    using store::OrderState;
    if (store::Ledger{shop.connection}.last()) return true;
    store::Orders orders{shop.connection};
    for (const OrderState state : {OrderState::Parked, OrderState::Quoted, OrderState::Open,
                                   OrderState::Ready, OrderState::HandedOver, OrderState::Cancelled})
        if (!orders.inState(state).empty()) return true;
    const std::vector<store::StockedBelt> belts = store::Catalogue{shop.connection}.all();
    return std::any_of(belts.begin(), belts.end(), [](const store::StockedBelt& belt) {
        return belt.price != WidthPrice::thousandths(0) || belt.sleeveCost != Money::minor(0);
    });
}

bool canBePlace(const Shop& shop, const std::string& place) {
    const auto begins = [](unsigned char c) { return (c & 0xc0) != 0x80; }; // a character of UTF-8
    return std::none_of(place.begin(), place.end(), isControl) &&
           std::count_if(place.begin(), place.end(), begins) <= longestPlace && !scan(shop, place).any();
}

std::string inOneLine(const std::string& said) {
    std::string line;
    for (const char c : said) {
        const bool blank = c == ' ' || isControl(static_cast<unsigned char>(c));
        if (!blank)
            line += c;
        else if (!line.empty() && line.back() != ' ')
            line += ' ';
    }
    if (!line.empty() && line.back() == ' ') line.pop_back();
    return line;
}

void demandPlace(const Shop& shop, const std::string& place) {
    if (!canBePlace(shop, place)) refuse(Refusal::Why::CodeTaken, place);
}

} // namespace riband::shop
