#include "tests/ui/which/which_desk.h"
#include "ui/which/card_outline.h"
#include "ui/which/gauge_dialog.h"
#include "ui/which/gauge_view.h"
#include "ui/which/screen_scale.h"

#include <QApplication>
#include <QPixmap>
#include <QScreen>
#include <QSettings>
#include <QTest>

namespace riband::ui {

namespace {

/// A screen on which nothing was calibrated yet, before and after.
struct FreshScreen {
    FreshScreen() { forget(); }
    ~FreshScreen() { forget(); }
    static void forget() { QSettings{}.remove(screenScale::keyOf(*QApplication::primaryScreen())); }
};

/// The longest dark line across in these rows of pixels.
int longestLine(const QImage& image, int top, int bottom) {
    int longest = 0;
    for (int y = top; y < bottom; ++y)
        for (int x = 0, run = 0; x < image.width(); ++x) {
            run = qGray(image.pixel(x, y)) < 200 ? run + 1 : 0;
            longest = std::max(longest, run);
        }
    return longest;
}

} // namespace

TEST_CASE("A bank card sets the scale of the screen by the arrows, and it is kept", "[which]") {
    FreshScreen fresh;
    WhichDesk desk;
    GaugeDialog dialog{desk.session().tables(), {}};
    dialog.show();
    QApplication::setActiveWindow(&dialog);
    REQUIRE(dialog.calibrating());
    keepPicture(dialog, "gauge-card");
    // A card that is 428 pixels wide on this screen: 428 / 85.60 = 5 pixels a millimetre.
    dialog.outline().setScale(423 / 85.6);
    QTest::keyClick(&dialog.outline(), Qt::Key_Right, Qt::ControlModifier);
    QTest::keyClick(&dialog.outline(), Qt::Key_Right);
    QTest::keyClick(&dialog.outline(), Qt::Key_Left, Qt::ShiftModifier);
    QTest::keyClick(&dialog.outline(), Qt::Key_Left, Qt::ShiftModifier);
    QTest::keyClick(&dialog.outline(), Qt::Key_Return);
    CHECK_FALSE(dialog.calibrating());
    CHECK(screenScale::kept(*dialog.screen()) == Approx(5));
    CHECK(dialog.view().scale() == Approx(5));

    GaugeDialog later{desk.session().tables(), {"H8M"}};
    later.show();
    QApplication::setActiveWindow(&later);
    CHECK_FALSE(later.calibrating());
    QTest::keyClick(&later, Qt::Key_F6);
    CHECK(later.calibrating());
}

TEST_CASE("On the screen twenty teeth of 5 mm are 100 mm long", "[which]") {
    FreshScreen fresh;
    screenScale::keep(*QApplication::primaryScreen(), 5);
    WhichDesk desk;
    GaugeDialog dialog{desk.session().tables(), {"T5", "H8M"}};
    dialog.resize(1240, 690);
    dialog.show();
    QApplication::processEvents();
    const QImage image = dialog.view().grab().toImage();
    const double top = dialog.view().topOf("T5"), next = dialog.view().topOf("H8M");
    CHECK(top < next); // what is likely stands first
    const int line = longestLine(image, static_cast<int>(top), static_cast<int>(next));
    // 500 pixels from mark to mark, and half the stroke of the first and of the last mark.
    CHECK(std::abs(line / image.devicePixelRatio() - 20 * 5 * 5 - 1) <= 1);
    keepPicture(dialog, "gauge-screen");
}

} // namespace riband::ui
