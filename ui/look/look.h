#pragma once

#include <QColor>
#include <QFont>
#include <QString>

class QApplication;

namespace riband::ui {

enum class Shade { Light, Dark };

/// The colours of the program; their meaning in docs/look.md. Text pairs reach WCAG 2.2 AA (4.5 : 1).
struct Look {
    QColor ground, card, sunk, tab; ///< surfaces
    QColor ink, ink2, line;         ///< text, secondary text, hairlines
    QColor warm, warmFill;          ///< cost, warning, trim
    QColor cool, coolFill, onFill;  ///< act, gain, belts; `onFill` is text on `coolFill`
    QColor onCool;                  ///< text on `cool`, as on the likely act's button
    QColor rest, danger, ok;        ///< what stays, destroy, proved
    QColor edge;                    ///< lines of hatches and between the strips of a band

    static const Look& of(Shade shade);
    static const Look& paper(); ///< for print: black on white, hatches carry the meaning
    static const Look& current();
    static Shade currentShade();
    /// Style, palette, style sheet and font of the whole program. May be called again to change the shade.
    static void apply(QApplication& app, Shade shade);
    /// Inter where it is installed, else the system's sans. `pixels` as in TextSize.
    static QFont font(int pixels, QFont::Weight weight = QFont::Normal);
    /// The same in points, for paper.
    static QFont paperFont(double points, QFont::Weight weight = QFont::Normal);
};

/// Sizes of type in pixels; nothing is smaller than Least.
struct TextSize {
    static constexpr int Total = 34, Typed = 30, Head = 20, Part = 18, Text = 15, Remark = 13, Small = 12,
                         Least = 11;
};

/// Spacing goes in steps of four pixels; what can be pressed is at least so high.
constexpr int step = 4;
constexpr int pressHeight = 38;

} // namespace riband::ui
