// A belt that is found by its measures goes to where the helper was called from.
#include "tests/ui/desk_fixture.h"
#include "ui/counter/counter_page.h"
#include "ui/rack/rack_page.h"
#include "ui/tally/tally_page.h"
#include "ui/which/sample_form.h"
#include "ui/which/which_dialog.h"

#include <QApplication>
#include <QLineEdit>
#include <QTest>
#include <QThreadPool>

namespace riband::ui {

namespace {

using belt::identify::Measure;

void settle(WhichDialog& which) {
    do {
        QThreadPool::globalInstance()->waitForDone();
        QApplication::processEvents();
    } while (!which.settled());
}

/// An AT5 500: white trapezoids, 100.1 mm over 20 teeth, 2.7 mm thick (ISO 17396), 100 teeth.
void measureAt5(WhichDialog& which) {
    REQUIRE(which.isVisible());
    QTest::keyClick(&which, Qt::Key_1, Qt::AltModifier);
    const auto measure = [&](Measure what, const char* figure) {
        QLineEdit& field = which.form().field(what).figure();
        field.setFocus();
        QTest::keyClicks(&field, figure);
    };
    measure(Measure::PitchOver, "100.1");
    measure(Measure::Thickness, "2.7");
    measure(Measure::Teeth, "100");
    settle(which);
}

void enter(WhichDialog& which, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QTest::keyClick(&which, Qt::Key_Return, modifiers);
    QApplication::processEvents();
    CHECK_FALSE(which.isVisible());
}

QLineEdit& tallyLine(DeskWindow& desk) { return dynamic_cast<QLineEdit&>(desk.window().tally().line()); }

void countPlace(DeskWindow& desk) {
    desk.press(Qt::Key_4, Qt::ControlModifier);
    QTest::keyClicks(&tallyLine(desk), "B3-2");
    desk.press(Qt::Key_Return);
    REQUIRE(desk.window().tally().tally().count());
}

} // namespace

TEST_CASE("A piece without label, measured while counting, is counted; nothing is sold", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    countPlace(desk);
    desk.press(Qt::Key_W, Qt::ControlModifier);
    measureAt5(desk.window().which());
    enter(desk.window().which());
    CHECK(desk.window().current() == &desk.window().tally());
    CHECK(tallyLine(desk).text() == "AT5 500");
    CHECK(desk.counter().line().text().isEmpty());
    desk.press(Qt::Key_Return);
    CHECK(desk.window().tally().tally().step() == Tally::Step::Width);
}

TEST_CASE("Where no belt is asked for, or by Ctrl+Enter, it goes to the Counter", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    SECTION("no place is counted yet") {
        desk.press(Qt::Key_4, Qt::ControlModifier);
        desk.press(Qt::Key_W, Qt::ControlModifier);
        measureAt5(desk.window().which());
        enter(desk.window().which());
    }
    SECTION("while counting, for a customer") {
        countPlace(desk);
        desk.press(Qt::Key_W, Qt::ControlModifier);
        measureAt5(desk.window().which());
        enter(desk.window().which(), Qt::ControlModifier);
    }
    CHECK(desk.window().current() == &desk.counter());
    CHECK(desk.counter().line().text().contains("AT5 500"));
    CHECK(tallyLine(desk).text().isEmpty());
}

TEST_CASE("On the Rack it is what is looked for", "[window]") {
    DeskShop shop;
    shop.piece("AT5 500", mm(380));
    DeskWindow desk{shop};
    desk.press(Qt::Key_3, Qt::ControlModifier);
    desk.press(Qt::Key_W, Qt::ControlModifier);
    measureAt5(desk.window().which());
    enter(desk.window().which());
    CHECK(desk.window().current() == &desk.window().rack());
    CHECK(desk.window().rack().findChild<QLineEdit*>()->text() == "AT5 500");
}

TEST_CASE("A sleeve that came without a label is measured in Goods in", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.press(Qt::Key_3, Qt::ControlModifier);
    desk.answering([](QDialog& goods) {
        auto& belt = *goods.findChild<QLineEdit*>("belt");
        goods.activateWindow(); // off screen nobody else does
        QApplication::processEvents();
        QTest::keyClick(&belt, Qt::Key_W, Qt::ControlModifier);
        auto* which = goods.findChild<WhichDialog*>();
        REQUIRE(which != nullptr);
        measureAt5(*which);
        enter(*which);
        CHECK(belt.text() == "AT5 500");
        CHECK(goods.findChild<QLineEdit*>("width")->text() == "380"); // the usual sleeve
        belt.clear();
    });
    desk.press(Qt::Key_F8);
    CHECK(desk.counter().line().text().isEmpty());
}

} // namespace riband::ui
