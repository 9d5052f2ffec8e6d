#pragma once

#include "core/shop/shop.h"
#include "ui/counter/inquiry.h"

#include <vector>

namespace riband::ui {

/// One thing to pick by a single key, when what was typed leaves something open.
struct Choice {
    enum class Does {
        Say,      ///< `value` takes the place of what is typed
        Settle,   ///< the reading number `reading` is meant
        Open,     ///< the piece, ticket or order with the code `value`
        Overrule, ///< the belt is sold as said, though something known of it disagrees
        Drive,    ///< the helper of that name is wanted
        Customer, ///< the order is for the customer named `value`
    };
    Does does;
    QString text;
    QString remark;
    QString value;
    std::size_t reading = 0;
    const belt::Profile* drawn = nullptr; ///< where the eye decides: its tooth is shown
};

/// What to pick from, and the question or complaint above it; at most nine, one for each digit.
struct Choices {
    QString heading;
    bool wrong = false; ///< the heading says what is wrong, not what to ask
    std::vector<Choice> choices;
    bool onlyByAlt = false; ///< Enter does something else: the line is clear already
};

/// For what stands on the line; empty if nothing is open. Reads the store for widths, codes and customers:
/// for another thread.
Choices choicesFor(const Inquiry& inquiry, const shop::Shop& shop);

} // namespace riband::ui
