#pragma once

#include "core/shop/ageing.h"
#include "core/shop/place_advice.h"
#include "core/shop/places.h"
#include "core/shop/suggest.h"

#include <QString>
#include <QStringList>

namespace riband::ui {

/// "goes best to B3-2 (the same belt lies there), B3-4 (empty, beside the same belt)"; "" for none.
QString saidOf(const std::vector<shop::PlaceAdvice>& places);
QString say(shop::PlaceAdvice::Why why);
QString say(store::PlaceLevel level);
/// A sentence that says what to do instead.
QString say(shop::PlaceFault fault);
/// "offer it as ready belts: 3 x 20 mm", or that it is to be scrapped".
QString saidOf(const shop::Burden& burden);
/// What a piece is kept for: "50 mm", "2 × 30 mm".
QString briefly(const shop::Reason::Kept& kept);
/// "102 d", where there is little room.
QString daysOld(int days);
/// Why an act stays in the book, and what to do instead.
QString whyItStays(store::Act act, const shop::Refusal& why);
/// The typed words as the index knows them: a kind by the word of the screen becomes that of the index.
std::vector<std::string> searchWordsOf(const QString& typed);

} // namespace riband::ui
