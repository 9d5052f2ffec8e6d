#pragma once

#include "core/belt/tables.h"

#include <QPageSize>
#include <QPointF>
#include <QSizeF>

#include <vector>

class QPagedPaintDevice;
class QPainter;

namespace riband::ui {

/// The gauge card: the true tooth and rib forms of all families at 1:1, each with a rule that marks every
/// tooth, the tenth and the twentieth, and a check line of 100 mm on every page. Lies across the paper.
/// Measures in mm from the upper left corner of the page.

/// One profile on the card.
struct GaugeRow {
    const belt::Profile* profile;
    int pitches;         ///< drawn: 20, or fewer where so many are wider than the paper
    int page;            ///< from 0
    QPointF topLeft;     ///< of the caption
    bool beginsFamily;   ///< the family's name stands above
    double left() const; ///< where the teeth and the rule begin
    double rule() const; ///< how low the rule's line lies; its marks hang from it
    double span() const; ///< length of the rule
    double height() const;
};

struct GaugeCard {
    QSizeF size; ///< of the page, wider than high
    std::vector<GaugeRow> rows;
    int pages;
    QPointF checkLine; ///< its left end, on every page
    static constexpr double checkLength = 100;
};

/// Double-sided profiles have the tooth of their single-sided one and are left out.
GaugeCard layOutGaugeCard(const belt::Tables& tables, const QSizeF& paper);
/// Turns the device's paper across and paints; returns the pages.
int paintGaugeCard(QPagedPaintDevice& device, const belt::Tables& tables);

/// Paints the teeth and the rule of one row with its caption, `scale` pixels a mm: on a screen that knows its
/// scale as well. `topLeft` in pixels.
void paintGaugeRow(QPainter& painter, const QPointF& topLeft, const belt::Profile& profile, int pitches,
                   double scale);
/// mm that a row needs.
double gaugeRowHeight(const belt::Profile& profile);
/// 20, 10 or 5 pitches, or 2, whatever is not wider than `width` mm.
int gaugePitches(const belt::Profile& profile, double width);

} // namespace riband::ui
