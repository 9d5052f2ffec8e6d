#pragma once

#include <QString>

#include <optional>

class QScreen;

namespace riband::ui {

/// How many pixels of a screen are a millimetre: kept for each screen once a person has held a bank card
/// against it.
namespace screenScale {

/// A bank card, ID-1 of ISO/IEC 7810: 85.60 x 53.98 mm, corners 3.18 mm round (from memory).
constexpr double cardWidth = 85.60, cardHeight = 53.98, cardCorner = 3.18;

/// The key under which a screen is kept: its maker, model and serial number, and its pixels.
QString keyOf(const QScreen& screen);
/// Nothing until it was set on this screen.
std::optional<double> kept(const QScreen& screen);
void keep(const QScreen& screen, double pixelsPerMillimetre);
/// What the screen says of itself; it is often wrong.
double told(const QScreen& screen);

/// Scales that a screen may have.
constexpr double least = 1, most = 40;

} // namespace screenScale

} // namespace riband::ui
