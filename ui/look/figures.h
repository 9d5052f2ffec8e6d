#pragma once

#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;

namespace riband::ui {

/// The width of a text when every digit has the room of the widest: columns of figures then stand under each
/// other. (Fonts have this as a feature, which this Qt can't switch on.)
double figuresWidth(const QFont& font, const QString& text);
/// Paints it so with the painter's font and pen, aligned within `area`; returns the width.
double paintFigures(QPainter& painter, const QRectF& area, Qt::Alignment alignment, const QString& text);

} // namespace riband::ui
