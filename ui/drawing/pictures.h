#pragma once

#include "core/cutting/plan.h"
#include "core/shop/queries.h"
#include "ui/drawing/band.h"

#include <vector>

namespace riband::ui {

/// The piece of a planned mounting as a band: trim, belts in the order of cutting, the rest.
BandPicture pictureOf(const cutting::Problem& problem, const cutting::Mounting& mounting);
/// The same of a mounting on a ticket; belts for no order line are for the shelf.
BandPicture pictureOf(const shop::BenchMounting& mounting);
/// A piece as it lies on the rack.
BandPicture pictureOf(const store::StockPiece& piece);

} // namespace riband::ui
