#pragma once

#include "core/store/flows.h"

namespace riband::shop {

/// Where width (or the money that goes with it, or its area) came from and went in a period. Each figure
/// counts plus in its own direction, so that
///     opening + bought + found = sold + ready + trim + kerf + end + stub + miscut + damaged + aged
///                                + difference + closing
/// exactly. `opening` and `closing` are the rack (sleeves and remnants). `ready` is what the shelf of ready
/// belts gained: minus where more of them were sold than made, for then they move on to `sold`. What was
/// undone stands with its sign turned where and when it was undone. docs/reports.md
template <class Amount>
struct Balance {
    Amount opening{}, bought{}, found{};
    Amount sold{}, ready{}, trim{}, kerf{}, end{};
    Amount stub{}, miscut{}, damaged{}, aged{};
    Amount difference{}, closing{};

    Amount scrap() const { return stub + miscut + damaged + aged; }
    Amount lost() const { return trim + kerf + end + scrap() + difference; }
    /// Gone from the shop for good, sold or lost.
    Amount used() const { return sold + lost(); }
    Amount in() const { return opening + bought + found; }
    Amount out() const { return used() + ready + closing; }
    /// Sold of what was used; nothing if nothing was.
    std::optional<double> yield() const {
        if (!(used() > Amount{})) return std::nullopt;
        return static_cast<double>(sold) / static_cast<double>(used());
    }
    /// The figure in which an account counts, and which sign its postings have there.
    Amount& of(store::Account account, std::optional<store::ScrapReason> reason);
    Balance& operator+=(const Balance& other);
    friend bool operator==(const Balance&, const Balance&) = default;
};

/// The figures of a balance in the order in which reports show them, with their names in files.
template <class Amount>
struct Figure {
    const char* name;
    Amount Balance<Amount>::*value;
};
template <class Amount>
inline constexpr Figure<Amount> figures[] = {{"opening", &Balance<Amount>::opening},
                                             {"bought", &Balance<Amount>::bought},
                                             {"found", &Balance<Amount>::found},
                                             {"sold", &Balance<Amount>::sold},
                                             {"ready", &Balance<Amount>::ready},
                                             {"trim", &Balance<Amount>::trim},
                                             {"kerf", &Balance<Amount>::kerf},
                                             {"end", &Balance<Amount>::end},
                                             {"stub", &Balance<Amount>::stub},
                                             {"miscut", &Balance<Amount>::miscut},
                                             {"damaged", &Balance<Amount>::damaged},
                                             {"aged", &Balance<Amount>::aged},
                                             {"difference", &Balance<Amount>::difference},
                                             {"closing", &Balance<Amount>::closing}};

template <class Amount>
Balance<Amount>& Balance<Amount>::operator+=(const Balance& other) {
    for (const auto& figure : figures<Amount>)
        this->*figure.value += other.*figure.value;
    return *this;
}

template <class Amount>
Amount& Balance<Amount>::of(store::Account account, std::optional<store::ScrapReason> reason) {
    using store::Account;
    switch (account) {
    case Account::Bought:
        return bought;
    case Account::Found:
        return found;
    case Account::Ready:
        return ready;
    case Account::Sold:
        return sold;
    case Account::Trim:
        return trim;
    case Account::Kerf:
        return kerf;
    case Account::End:
        return end;
    case Account::Difference:
        return difference;
    case Account::Rack:
        return closing;
    case Account::Scrap:
        break;
    }
    Amount* const byReason[] = {&stub, &miscut, &damaged, &aged};
    return *byReason[static_cast<std::size_t>(reason.value())];
}

} // namespace riband::shop
