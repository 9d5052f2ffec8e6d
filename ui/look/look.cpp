#include "ui/look/look.h"

#include "ui/look/press_style.h"
#include "ui/look/sheet.h"

#include <QApplication>
#include <QFontDatabase>
#include <QPalette>

namespace riband::ui {
namespace {

Shade shadeNow = Shade::Light;

QColor rgb(unsigned value) { return QColor{static_cast<QRgb>(0xFF000000u | value)}; }

Look light() {
    return {.ground = rgb(0xE9E4DA),
            .card = rgb(0xFBF9F5),
            .sunk = rgb(0xF2EEE6),
            .tab = rgb(0xDDD6C8),
            .ink = rgb(0x22262B),
            .ink2 = rgb(0x565D67),
            .line = rgb(0xD5CEC1),
            .warm = rgb(0x874D08),
            .warmFill = rgb(0xE2A13B),
            .cool = rgb(0x0E6069),
            .coolFill = rgb(0x257C84),
            .onFill = rgb(0xFFFFFF),
            .onCool = rgb(0xFFFFFF),
            .rest = rgb(0xDCD5C7),
            .danger = rgb(0xA3302A),
            .ok = rgb(0x2A6838),
            .edge = rgb(0xFBF9F5)};
}

Look dark() {
    return {.ground = rgb(0x17191C),
            .card = rgb(0x22262B),
            .sunk = rgb(0x1C1F23),
            .tab = rgb(0x2B3036),
            .ink = rgb(0xEEE9DF),
            .ink2 = rgb(0xA9AFB7),
            .line = rgb(0x3A4047),
            .warm = rgb(0xE8AC55),
            .warmFill = rgb(0xB9792A),
            .cool = rgb(0x6CC3CA),
            .coolFill = rgb(0x2A7F87),
            .onFill = rgb(0xFFFFFF),
            .onCool = rgb(0x17191C),
            .rest = rgb(0x3B4046),
            .danger = rgb(0xEE8A80),
            .ok = rgb(0x7CC58B),
            .edge = rgb(0x1C1F23)};
}

Look print() {
    return {.ground = rgb(0xFFFFFF),
            .card = rgb(0xFFFFFF),
            .sunk = rgb(0xFFFFFF),
            .tab = rgb(0xF0F0F0),
            .ink = rgb(0x000000),
            .ink2 = rgb(0x3A3A3A),
            .line = rgb(0x9A9A9A),
            .warm = rgb(0x000000),
            .warmFill = rgb(0xFFFFFF),
            .cool = rgb(0x000000),
            .coolFill = rgb(0xFFFFFF),
            .onFill = rgb(0x000000),
            .onCool = rgb(0xFFFFFF),
            .rest = rgb(0xE6E6E6),
            .danger = rgb(0x000000),
            .ok = rgb(0x000000),
            .edge = rgb(0x000000)};
}

QPalette paletteOf(const Look& look) {
    QPalette palette;
    palette.setColor(QPalette::Window, look.ground);
    palette.setColor(QPalette::Base, look.card);
    palette.setColor(QPalette::AlternateBase, look.sunk);
    palette.setColor(QPalette::Button, look.card);
    palette.setColor(QPalette::ToolTipBase, look.card);
    palette.setColor(QPalette::Highlight, look.cool);
    palette.setColor(QPalette::HighlightedText, look.onCool);
    palette.setColor(QPalette::Link, look.cool);
    palette.setColor(QPalette::PlaceholderText, look.ink2);
    for (auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText})
        palette.setColor(role, look.ink);
    for (auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, look.ink2);
    palette.setColor(QPalette::Light, look.card);
    palette.setColor(QPalette::Mid, look.line);
    palette.setColor(QPalette::Dark, look.line);
    return palette;
}

/// Inter if this machine has it (Debian: fonts-inter), else what the system calls its sans.
QString family() {
    static const QString found = QFontDatabase::hasFamily("Inter") ? QString{"Inter"} : QString{"Sans Serif"};
    return found;
}

} // namespace

const Look& Look::of(Shade shade) {
    static const Look lightLook = light();
    static const Look darkLook = dark();
    return shade == Shade::Dark ? darkLook : lightLook;
}

const Look& Look::paper() {
    static const Look look = print();
    return look;
}

const Look& Look::current() { return of(shadeNow); }

Shade Look::currentShade() { return shadeNow; }

void Look::apply(QApplication& app, Shade shade) {
    shadeNow = shade;
    if (dynamic_cast<PressStyle*>(QApplication::style()) == nullptr) QApplication::setStyle(new PressStyle);
    // Each of these goes through every widget of every page: what stays as it was is not said again.
    if (const QFont words = font(TextSize::Text); QApplication::font() != words) QApplication::setFont(words);
    QApplication::setPalette(paletteOf(of(shade)));
    app.setStyleSheet(styleSheet(of(shade)));
}

QFont Look::font(int pixels, QFont::Weight weight) {
    QFont font{family()};
    font.setPixelSize(pixels);
    font.setWeight(weight);
    return font;
}

QFont Look::paperFont(double points, QFont::Weight weight) {
    QFont font{family()};
    font.setPointSizeF(points);
    font.setWeight(weight);
    return font;
}

} // namespace riband::ui
