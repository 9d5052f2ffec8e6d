#include "tests/catch.h"

#include "ui/drawing/band.h"
#include "ui/drawing/band_layout.h"
#include "ui/drawing/hatch.h"

#include <QImage>
#include <QPainter>

#include <random>

using namespace riband;
using namespace riband::ui;
using Part = BandPicture::Part;

namespace {

BandPicture threeThirties() {
    const Extent thirty = Width::millimetres(30);
    return {Width::micrometres(128'500),
            {{Part::Trim, Width::micrometres(2500), "2.5", ""},
             {Part::Belt, thirty, "30", "first cut"},
             {Part::Belt, thirty, "30", "second cut"},
             {Part::Belt, thirty, "30", "third cut"},
             {Part::Lost, Width::millimetres(36), "36", "lost"}},
            0};
}

bool says(const BandLayout& layout, const QString& text) {
    for (const auto& words : layout.words)
        if (words.text == text) return true;
    return false;
}

/// Nothing written may touch another thing written or leave the area.
void checkWords(const BandLayout& layout, const QRectF& area) {
    for (std::size_t i = 0; i < layout.words.size(); ++i) {
        INFO(layout.words[i].text.toStdString());
        CHECK(area.adjusted(-1, -1, 1, 1).contains(layout.words[i].box));
        for (std::size_t k = i + 1; k < layout.words.size(); ++k)
            CHECK_FALSE(layout.words[i].box.intersects(layout.words[k].box));
    }
}

/// A piece with belts of random widths, as far as it reaches.
BandPicture randomPicture(std::mt19937& dice) {
    const auto upTo = [&](int most) { return std::uniform_int_distribution<int>{1, most}(dice); };
    const std::int64_t all = upTo(500) * 1000;
    BandPicture picture{Width::micrometres(all),
                        {{Part::Trim, Width::micrometres(std::min<std::int64_t>(2500, all)), "2.5", ""}},
                        0};
    std::int64_t left = all - picture.strips[0].extent.count();
    for (int kinds = upTo(5); kinds > 0; --kinds) {
        const std::int64_t each = upTo(80'000);
        for (int belts = upTo(30); belts > 0 && each <= left; --belts, left -= each)
            picture.strips.push_back({kinds % 2 ? Part::Belt : Part::ShelfBelt, Width::micrometres(each),
                                      QString::number(static_cast<double>(each) / 1000),
                                      "cut 12 of the order"});
    }
    if (left > 0) picture.strips.push_back({Part::Kept, Width::micrometres(left), "stays", ""});
    return picture;
}

} // namespace

TEST_CASE("The blade is at the right, and each strip is as wide as its share of the piece", "[band]") {
    const QRectF area{10, 20, 1285, 120}; // 10 pixels a millimetre
    const BandLayout layout = layOut(threeThirties(), area, BandSize::Large);
    REQUIRE(layout.strips.size() == 5);
    CHECK(layout.strips[0].box.right() == Approx(area.right()));
    CHECK(layout.strips[0].box.width() == Approx(25));
    CHECK(layout.strips[1].box.width() == Approx(300));
    CHECK(layout.strips[1].box.right() == Approx(area.right() - 25));
    CHECK(layout.strips[4].box.left() == Approx(area.left()));
}

TEST_CASE("The rule counts from the trimmed edge, where the display is zeroed", "[band]") {
    const QRectF area{0, 0, 1285, 120};
    const BandLayout layout = layOut(threeThirties(), area, BandSize::Large);
    const auto at = [&](const QString& number) {
        for (const auto& words : layout.words)
            if (words.text == number && words.box.top() > layout.band.bottom()) return words.box.center().x();
        FAIL("the rule has no " << number.toStdString());
        return 0.0;
    };
    CHECK(at("0") == Approx(1260));
    CHECK(at("90") == Approx(1260 - 900)); // the far edge of the third belt
    CHECK(layout.ticks.front().x == Approx(1260));
}

TEST_CASE("Without trim the rule counts from the edge, and its zero is written within the drawing",
          "[band]") {
    const BandPicture picture{Width::millimetres(100), {{Part::Kept, Width::millimetres(100), "100", ""}}, 0};
    const BandLayout layout = layOut(picture, {0, 0, 1000, 120}, BandSize::Large);
    CHECK(says(layout, "0"));
    CHECK(layout.ticks.front().x == Approx(1000));
}

TEST_CASE("A drawing in a list keeps the scale of the list", "[band]") {
    BandPicture picture = threeThirties();
    picture.fullScale = 257'000; // twice the piece
    const BandLayout layout = layOut(picture, {0, 0, 257, 20}, BandSize::Small);
    CHECK(layout.band.width() == Approx(128.5));
    CHECK(layout.band.left() == 0);
    CHECK(layout.words.empty());
}

TEST_CASE("Ribs are counted in ribs, and never in parts of one", "[band]") {
    const BandPicture picture{
        Ribs{12},
        {{Part::Trim, Ribs{1}, "1", ""}, {Part::Belt, Ribs{6}, "6", ""}, {Part::Kept, Ribs{5}, "5", ""}},
        0};
    const BandLayout layout = layOut(picture, {0, 0, 1200, 120}, BandSize::Large);
    CHECK(says(layout, "ribs"));
    CHECK(layout.ticks.size() == 12); // 0 to 11 from the trimmed edge
    CHECK(layout.ticks[1].x == Approx(layout.ticks[0].x - 100));
}

TEST_CASE("Belts too narrow for their figure share one", "[band]") {
    BandPicture picture{Width::millimetres(470), {{Part::Trim, Width::micrometres(2500), "2.5", ""}}, 0};
    for (int i = 0; i < 24; ++i)
        picture.strips.push_back({Part::Belt, Width::micrometres(6400), "6.4", "cut"});
    const BandLayout layout = layOut(picture, {0, 0, 800, 120}, BandSize::Large);
    CHECK(says(layout, "24 × 6.4"));
    CHECK_FALSE(says(layout, "6.4"));
}

TEST_CASE("No word of a band runs into another or out of it, however it is cut", "[band]") {
    std::mt19937 dice{20261125};
    for (int round = 0; round < 300; ++round) {
        const double wide = std::uniform_real_distribution<>{60, 1400}(dice);
        const double high = std::uniform_real_distribution<>{20, 160}(dice);
        const QRectF area{0, 0, wide, high};
        INFO("round " << round << ", " << wide << " x " << high);
        checkWords(layOut(randomPicture(dice), area, BandSize::Large), area);
    }
}

TEST_CASE("More strips than the piece is wide stay within the piece", "[band]") {
    const BandPicture picture{
        Width::millimetres(50),
        {{Part::Belt, Width::millimetres(40), "40", ""}, {Part::Belt, Width::millimetres(40), "40", ""}},
        0};
    const BandLayout layout = layOut(picture, {0, 0, 500, 120}, BandSize::Large);
    CHECK(layout.strips[1].box.width() == Approx(100));
    CHECK(layout.strips[1].box.left() == Approx(0));
}

TEST_CASE("A picture of nothing paints nothing and does not fail", "[band]") {
    QImage image{100, 40, QImage::Format_RGB32};
    image.fill(Qt::white);
    QPainter painter{&image};
    paintBand(painter, {0, 0, 100, 40}, {Width::millimetres(0), {}, 0}, Look::paper(), BandSize::Large);
    painter.end();
    CHECK(image.pixelColor(50, 20) == QColor{Qt::white});
}

TEST_CASE("On paper the five parts differ without any colour", "[band]") {
    std::vector<QImage> hatches;
    for (Part part : {Part::Trim, Part::Belt, Part::ShelfBelt, Part::Kept, Part::Lost}) {
        QImage image{40, 40, QImage::Format_RGB32};
        image.fill(Qt::white);
        QPainter painter{&image};
        paintHatch(painter, {0, 0, 40, 40}, part, Look::paper());
        painter.end();
        for (int x = 0; x < 40; ++x) {
            const QColor c = image.pixelColor(x, 17);
            CHECK((c.red() == c.green() && c.green() == c.blue()));
        }
        hatches.push_back(image);
    }
    for (std::size_t i = 0; i < hatches.size(); ++i)
        for (std::size_t k = i + 1; k < hatches.size(); ++k)
            CHECK(hatches[i] != hatches[k]);
}

TEST_CASE("A band is told in words for those who can't see it", "[band]") {
    const QString words = describe(threeThirties());
    CHECK(words.contains("128.5 mm"));
    CHECK(words.contains("trim 2.5 mm"));
    CHECK(words.contains("3 × 30 mm"));
    CHECK(words.contains("36 mm is lost"));
    BandWidget widget{BandSize::Large};
    widget.show(threeThirties());
    CHECK(widget.accessibleDescription() == words);
    widget.clear();
    CHECK(widget.accessibleDescription().isEmpty());
}
