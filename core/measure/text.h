#pragma once

#include "core/measure/extent.h"
#include "core/measure/length.h"
#include "core/measure/money.h"
#include "core/measure/outcome.h"

#include <string>
#include <string_view>

namespace riband {

/// Why a text is not the quantity that was asked for. No words here: the screen finds them.
enum class TextFault {
    Empty,
    NotANumber,
    Negative,
    TooFine,  ///< more decimals than the unit has (finer than 1 um, half a rib, a tenth of a cent)
    TooLarge, ///< over 100 m of width, 10 000 m of length, 10^12 minor units, 100 000 ribs
    UnknownUnit,
};
template <class T>
using Read = Outcome<T, TextFault>;

/// All reading is exact, without floating point. A comma or a point is the decimal sign, spaces round the
/// text and before the unit are ignored, no thousands separators. Halves of a micrometre are rounded up only
/// for inches.

/// "30", "19,05 mm", "3.2cm", "3/4\"", "1 1/2 in", "0.75 inch". A bare number is millimetres.
Read<Width> readWidth(std::string_view text);
/// "6", "6 ribs", "6 rib".
Read<Ribs> readRibs(std::string_view text);
/// As readWidth for `Unit::Micrometre`, as readRibs for `Unit::Rib`.
Read<Extent> readExtent(std::string_view text, Unit unit);
/// "1200", "1.2 m", "47 in", "47\"". A bare number is millimetres; down to the nanometre.
Read<Length> readLength(std::string_view text);
/// "105.54", "105,5", "-3"; no currency sign.
Read<Money> readMoney(std::string_view text, const Currency& currency);
/// "0.51" of the major unit for a millimetre or rib; down to a thousandth of the minor unit.
Read<WidthPrice> readWidthPrice(std::string_view text, const Currency& currency);
/// "20", "2.5", "2,5 %".
Read<Permille> readPercent(std::string_view text);

/// Shortest exact decimal, point as decimal sign: "30", "19.05", "0.001". The screen puts the local sign in.
std::string printMillimetres(Width width);
std::string printMillimetres(Length length);
/// A signed count of micrometres as millimetres: "-30.5".
std::string printMillimetres(std::int64_t micrometres);
/// "30" mm or "6" ribs without the unit.
std::string printCount(Extent extent);
/// All decimals of the currency: "105.54", "-0.05", "7" if it has none.
std::string printMoney(Money money, const Currency& currency);
/// "0.51", "0.0855": the major unit for a millimetre or rib, shortest exact form with at least the currency's
/// decimals.
std::string printWidthPrice(WidthPrice price, const Currency& currency);
/// "20", "2.5".
std::string printPercent(Permille share);

} // namespace riband
