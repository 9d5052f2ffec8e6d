#pragma once

#include "core/shop/buying/purchase.h"

#include <QString>
#include <QStringList>

namespace riband::ui {

// What to buy, in words.

QString say(foresight::Method method);
QString say(foresight::Pattern pattern);
/// What a line of the purchase list says of its belt, short: "buy", "enough here", "don't keep".
QString verdictOf(const shop::PurchaseLine& line);
/// Why a line says so: the most telling first, each a sentence with its figures.
QStringList whyOf(const shop::PurchaseLine& line, const shop::BuyingOutlook& outlook);
/// By what method the sales are forecast, and how it was chosen.
QString forecastOf(const shop::PurchaseLine& line, const shop::BuyingOutlook& outlook);
/// What is bought as a table, a row a belt under a row of column names (docs/commands.md); figures in their
/// exact text form.
std::vector<std::vector<std::string>> purchaseTable(const shop::PurchaseList& list,
                                                    const shop::BuyingOutlook& outlook);
/// "12.5 %"
QString shownShare(double share, int places = 0);

} // namespace riband::ui
