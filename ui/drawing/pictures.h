#pragma once

#include "core/cutting/plan.h"
#include "core/shop/queries.h"
#include "core/shop/suggest.h"
#include "ui/drawing/band.h"

#include <vector>

namespace riband::ui {

/// The piece of a mounting of the way as a band: trim, belts in the order of cutting, those for the shelf
/// among them, the rest.
BandPicture pictureOf(const cutting::Problem& problem, const shop::Way& way, std::size_t mounting);
/// The same of a mounting on a ticket; belts for no order line are for the shelf.
BandPicture pictureOf(const shop::BenchMounting& mounting);
/// A piece as it lies on the rack.
BandPicture pictureOf(const store::StockPiece& piece);

} // namespace riband::ui
