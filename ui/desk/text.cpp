#include "ui/desk/text.h"

#include "ui/look/look.h"

#include <QEvent>

namespace riband::ui {

namespace {

QColor colourOf(Tone tone, const Look& look) {
    switch (tone) {
    case Tone::Quiet:
        return look.ink2;
    case Tone::Warm:
        return look.warm;
    case Tone::Cool:
        return look.cool;
    case Tone::Danger:
        return look.danger;
    case Tone::Ok:
        return look.ok;
    case Tone::Ink:
        break;
    }
    return look.ink;
}

} // namespace

Text::Text(int pixels, Tone tone, QFont::Weight weight, QWidget* parent)
    : QLabel{parent}, pixels_{pixels}, tone_{tone}, weight_{weight} {
    setTextFormat(Qt::PlainText);
    colour();
}

void Text::setTone(Tone tone) {
    if (tone == tone_) return;
    tone_ = tone;
    colour();
}

void Text::colour() {
    // A widget's own sheet wins over that of the program, for font and colour alike.
    setFont(Look::font(pixels_, weight_));
    setStyleSheet(QStringLiteral("color: %1; font-size: %2px; font-weight: %3; background: transparent;")
                      .arg(colourOf(tone_, Look::current()).name())
                      .arg(pixels_)
                      .arg(static_cast<int>(weight_)));
}

void Text::changeEvent(QEvent* event) {
    if (event->type() == QEvent::ApplicationPaletteChange) colour();
    QLabel::changeEvent(event);
}

} // namespace riband::ui
