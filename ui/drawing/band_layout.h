#pragma once

#include "ui/drawing/band.h"

#include <QRectF>

#include <vector>

namespace riband::ui {

/// Where everything of a band stands, before it is painted, so that a test can see that no text runs into
/// another.
struct BandLayout {
    struct Placed {
        BandPicture::Part part;
        QRectF box;
    };
    struct Words {
        enum class Tone { OnStrip, Quiet, Warm };
        QRectF box;
        QString text;
        QFont font;
        Tone tone;
        BandPicture::Part on = BandPicture::Part::Kept; ///< of OnStrip
        bool plate = false;                             ///< lines or hatches run behind it
    };
    struct Tick {
        double x, height;
    };
    QRectF band; ///< the piece
    std::vector<Placed> strips;
    std::vector<Words> words;
    std::vector<Tick> ticks; ///< down from the lower edge of the band
};

BandLayout layOut(const BandPicture& picture, const QRectF& area, BandSize size);

} // namespace riband::ui
