#pragma once

#include <QColor>
#include <QFont>
#include <QString>

class QApplication;

namespace riband::ui {

enum class Shade { Light, Dark };

/// The colours of the program; resources and meaning in docs/look.md. Text pairs reach WCAG 2.2 AA (4.5 : 1).
struct Look {
    QColor ground, card, sunk, tab; ///< surfaces
    QColor ink, ink2, line;         ///< text, secondary text, hairlines
    QColor warm, warmFill;          ///< cost, warning, trim
    QColor cool, coolFill, onFill;  ///< act, gain, belts
    QColor rest, danger, ok;        ///< what stays, destroy, proved

    static const Look& of(Shade shade);
    static const Look& paper(); ///< for print: black on white, hatches carry the meaning
    static const Look& current();
    static Shade currentShade();
    /// Palette, style sheet and fonts of the whole program.
    static void apply(QApplication& app, Shade shade);
    /// Inter with tabular figures where it is installed. `pixels` as in docs/look.md.
    static QFont font(int pixels, QFont::Weight weight = QFont::Normal);
};

} // namespace riband::ui
