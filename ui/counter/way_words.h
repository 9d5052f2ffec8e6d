#pragma once

#include "core/shop/suggest.h"
#include "ui/drawing/band.h"

#include <QString>

#include <vector>

namespace riband::ui {

/// A way to serve the wishes as the Counter shows it.
struct ShownWay {
    QString headline; ///< "Cut the remnant 7K2-M"
    QString piece;    ///< "128.5 mm · place B3-2 · on the rack 41 days"
    QString cost;     ///< "takes 97 mm of worth, 4.85 EUR"; money for who may see costs
    QString reason;
    QString brief;                  ///< what it leaves, for lists: "leaves 121.5 mm"
    QString source;                 ///< for the slip: "remnant 7K2-M", "from ready belts"
    QString extra;                  ///< "+ 6.2 mm · 0.31 EUR" over the suggested way; "the same" if nothing
    QString shelf;                  ///< what is to be cut as well: "2 × 20 mm"; "" if nothing
    QString missing;                ///< what can't be served, and why; "" if all is
    std::vector<BandPicture> bands; ///< one a mounting
    std::vector<QString> bandNames; ///< whose band it is, where there are several
    bool cuts = false;              ///< false: nothing is to be cut, all comes from the shelf
};
/// `costs`: the currency in which money is told beside width; nothing for who does not see costs.
ShownWay shownWay(const shop::Outlook& outlook, const shop::Way& way, const std::optional<Currency>& costs);

/// "Saves 31 mm against a new sleeve.": the suggested way beside what one would do without it; "" if there is
/// nothing to compare with.
QString savingOf(const shop::Outlook& outlook, const shop::Suggestion& suggestion,
                 const std::optional<Currency>& costs);

/// An expected width with what it comes to: "6.2 mm · 0.31 EUR"; the width alone without a currency and where
/// a sleeve has no price.
QString shownExpected(const store::StockedBelt& belt, double width, const std::optional<Currency>& costs);
/// A signed count of the belt's unit: "6.2 mm", "2 ribs".
QString shownCount(Unit unit, std::int64_t count);

} // namespace riband::ui
