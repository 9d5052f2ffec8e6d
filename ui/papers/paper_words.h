#pragma once

#include "ui/look/look.h"

#include <QCoreApplication>
#include <QRectF>
#include <QString>

class QPainter;

namespace riband::ui {

/// The translation context of all papers.
struct PaperWords {
    Q_DECLARE_TR_FUNCTIONS(PaperWords)
};

/// Type on paper, in pixels of 1/96 inch, measured as it prints (no hinting).
QFont paperFont(int pixels, QFont::Weight weight = QFont::Normal);
double textWidth(const QFont& font, const QString& text);
double lineHeight(const QFont& font);

/// One line, shortened by dots at its end if it is too long. Returns the width used.
double paintElided(QPainter& painter, const QRectF& area, Qt::Alignment alignment, const QString& text);
/// One line that must not be shortened: its type is made smaller, down to `least` pixels, then elided.
double paintFitted(QPainter& painter, const QRectF& area, Qt::Alignment alignment, const QString& text,
                   int least = 11);
/// Several lines, broken at words. `paint` must have the height that `wrappedHeight` gave.
double wrappedHeight(const QFont& font, const QString& text, double width);
void paintWrapped(QPainter& painter, const QRectF& area, const QString& text);

/// A box to tick by hand, with its words behind it.
void paintTick(QPainter& painter, const QRectF& area, const QString& words);
/// A triangle with an exclamation mark, `size` high.
void paintWarningSign(QPainter& painter, const QPointF& topLeft, double size);
/// A line to write on, with what belongs there before it.
void paintBlank(QPainter& painter, const QRectF& area, const QString& words);

} // namespace riband::ui
