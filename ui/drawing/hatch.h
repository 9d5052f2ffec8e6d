#pragma once

#include "ui/drawing/band.h"

class QPainter;

namespace riband::ui {

/// Fills a strip with the hatch of its part, drawn line by line so that it prints as it shows.
void paintHatch(QPainter& painter, const QRectF& strip, BandPicture::Part part, const Look& look);
/// The ground of the hatch, on which text may stand.
QColor hatchGround(BandPicture::Part part, const Look& look);
/// Text on that ground.
QColor hatchInk(BandPicture::Part part, const Look& look);

} // namespace riband::ui
