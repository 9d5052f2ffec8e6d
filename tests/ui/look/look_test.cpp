#include "tests/catch.h"

#include "ui/look/look.h"
#include "ui/look/sheet.h"

#include <QApplication>
#include <QLineEdit>
#include <QPalette>
#include <QRegularExpression>

#include <cmath>
#include <string>
#include <vector>

using namespace riband::ui;

namespace {

// Relative luminance and contrast as WCAG 2.2 defines them.
double channel(double value) {
    return value <= .04045 ? value / 12.92 : std::pow((value + .055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
    return .2126 * channel(c.redF()) + .7152 * channel(c.greenF()) + .0722 * channel(c.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a), lb = luminance(b);
    return (std::max(la, lb) + .05) / (std::min(la, lb) + .05);
}

struct Pair {
    std::string name;
    QColor text, ground;
};

std::vector<Pair> textPairs(const Look& look) {
    std::vector<Pair> pairs;
    const std::vector<std::pair<std::string, QColor>> grounds{
        {"ground", look.ground}, {"card", look.card}, {"sunk", look.sunk}, {"tab", look.tab}};
    const std::vector<std::pair<std::string, QColor>> texts{{"ink", look.ink},       {"ink2", look.ink2},
                                                            {"warm", look.warm},     {"cool", look.cool},
                                                            {"danger", look.danger}, {"ok", look.ok}};
    for (const auto& [text, colour] : texts)
        for (const auto& [ground, under] : grounds)
            pairs.push_back({text + " on " + ground, colour, under});
    pairs.push_back({"onFill on coolFill", look.onFill, look.coolFill});
    pairs.push_back({"onCool on cool", look.onCool, look.cool});
    pairs.push_back({"ink on rest", look.ink, look.rest});
    pairs.push_back({"ink2 on rest", look.ink2, look.rest});
    return pairs;
}

} // namespace

TEST_CASE("The contrast formula gives the figures that WCAG prints", "[look]") {
    CHECK(contrast(Qt::black, Qt::white) == Approx(21.0));
    CHECK(contrast(QColor{"#767676"}, Qt::white) == Approx(4.54).margin(.01)); // the least grey on white
}

TEST_CASE("Every text reads 4.5 to 1 on every surface, light, dark and on paper", "[look]") {
    for (const auto* look : {&Look::of(Shade::Light), &Look::of(Shade::Dark), &Look::paper()})
        for (const Pair& pair : textPairs(*look)) {
            INFO(pair.name << " " << pair.text.name().toStdString() << " "
                           << pair.ground.name().toStdString());
            CHECK(contrast(pair.text, pair.ground) >= 4.5);
        }
}

TEST_CASE("A focus outline stands out 3 to 1 against what is beside it", "[look]") {
    for (const auto* look : {&Look::of(Shade::Light), &Look::of(Shade::Dark)})
        for (const QColor& beside : {look->card, look->sunk, look->ground, look->line, look->rest})
            CHECK(contrast(look->cool, beside) >= 3.0);
}

TEST_CASE("The sheet leaves no token unfilled and writes nothing under 11 pixels", "[look]") {
    for (Shade shade : {Shade::Light, Shade::Dark}) {
        const QString sheet = styleSheet(Look::of(shade));
        CHECK_FALSE(sheet.contains('@'));
        auto sizes = QRegularExpression{"font-size: (\\d+)px"}.globalMatch(sheet);
        int seen = 0;
        for (; sizes.hasNext(); ++seen)
            CHECK(sizes.next().captured(1).toInt() >= TextSize::Least);
        CHECK(seen > 5);
    }
}

TEST_CASE("Changing the shade changes the colours of the whole program at once", "[look]") {
    auto& app = *qobject_cast<QApplication*>(QCoreApplication::instance());
    Look::apply(app, Shade::Dark);
    CHECK(Look::currentShade() == Shade::Dark);
    CHECK(QApplication::palette().color(QPalette::Window) == Look::of(Shade::Dark).ground);
    CHECK(app.styleSheet().contains(Look::of(Shade::Dark).cool.name()));
    Look::apply(app, Shade::Light);
    CHECK(QApplication::palette().color(QPalette::Window) == Look::of(Shade::Light).ground);
    CHECK_FALSE(app.styleSheet().contains(Look::of(Shade::Dark).cool.name()));
}

TEST_CASE("What an empty line shows keeps its contrast", "[look]") {
    for (Shade shade : {Shade::Light, Shade::Dark}) {
        Look::apply(*qobject_cast<QApplication*>(QCoreApplication::instance()), shade);
        QLineEdit line;
        line.setProperty("use", "main");
        line.ensurePolished();
        const QColor shown = line.palette().color(QPalette::PlaceholderText);
        CHECK(shown.alpha() == 255);
        CHECK(contrast(shown, Look::of(shade).sunk) >= 4.5);
    }
    Look::apply(*qobject_cast<QApplication*>(QCoreApplication::instance()), Shade::Light);
}
