#include "core/store/measuring.h"
#include "tests/ui/which/which_desk.h"
#include "ui/counter/evidence.h"
#include "ui/look/look.h"
#include "ui/which/shape_tiles.h"

#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QTest>

namespace riband::ui {

using belt::identify::Measure;

TEST_CASE("White trapezoids without print: two measures and a count, and the belt is on the line",
          "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.press(Qt::Key_1, Qt::AltModifier); // trapezoids
    CHECK(desk.which().form().shapes().shape() == belt::identify::SeenShape::Trapezoid);
    desk.measure(Measure::PitchOver, "100.1");
    CHECK_FALSE(desk.which().answer()->found.settled);
    keepPicture(desk.which(), "which-open");
    desk.measure(Measure::Thickness, "2.7"); // T5 has 2.2, AT5 2.7 (DIN 7721, ISO 17396)
    CHECK(desk.best() == "AT5");
    desk.measure(Measure::Teeth, "100");
    CHECK(desk.best() == "AT5 500");
    CHECK(desk.which().answer()->found.settled);
    desk.measure(Measure::Width, "15.8");
    keepPicture(desk.which(), "which-settled");
    desk.press(Qt::Key_Return);
    CHECK_FALSE(desk.which().isVisible());
    const auto wanted = desk.counter().inquiry().wanted();
    REQUIRE(wanted);
    CHECK(wanted->belt == desk.belt("AT5 500"));
    CHECK(wanted->extent == mm(16)); // the nearest that is sold
}

TEST_CASE("The next measure is marked, and F3 goes there", "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.measure(Measure::PitchOver, "50.4");
    const auto next = desk.which().answer()->found.next;
    REQUIRE(next);
    desk.press(Qt::Key_F3);
    if (next->what == Measure::Shape)
        CHECK(desk.which().form().shapes().isAncestorOf(QApplication::focusWidget()));
    else
        CHECK(desk.which().form().field(next->what).holdsFocus());
}

TEST_CASE("Escape loses nothing; what was typed is there until it is cleared", "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.measure(Measure::Teeth, "150");
    desk.press(Qt::Key_Escape);
    CHECK_FALSE(desk.which().isVisible());
    CHECK(desk.counter().line().text().isEmpty());
    desk.bring();
    CHECK(desk.which().form().field(Measure::Teeth).figure().text() == "150");
    CHECK(desk.which().answer() != nullptr);
    desk.press(Qt::Key_Delete, Qt::ControlModifier);
    CHECK(desk.which().form().isEmpty());
    CHECK(desk.which().answer() == nullptr);
    desk.press(Qt::Key_Return); // nothing to send
    CHECK(desk.which().isVisible());
}

TEST_CASE("Escape is no statement: the Counter sells what is said; Ctrl+Enter compares it", "[which]") {
    WhichDesk desk;
    desk.say("H8M 960 50");
    desk.bring();
    desk.press(Qt::Key_4, Qt::AltModifier); // round with a flat top
    desk.measure(Measure::PitchOver, "160");
    desk.measure(Measure::Teeth, "120");
    desk.measure(Measure::Thickness, "5.3");
    desk.measure(Measure::ToothHeight, "3.05");
    REQUIRE(desk.best() == "S8M 960");

    SECTION("Escape") {
        desk.press(Qt::Key_Escape);
        desk.press(Qt::Key_Return);
        CHECK(desk.counter().order().lines().size() == 1);
    }
    SECTION("Ctrl+Enter leaves the line, and the sale waits") {
        desk.press(Qt::Key_Return, Qt::ControlModifier);
        CHECK_FALSE(desk.which().isVisible());
        CHECK(desk.counter().line().text() == "H8M 960 50");
        desk.press(Qt::Key_Return);
        CHECK(desk.counter().order().isEmpty());
        desk.press(Qt::Key_1, Qt::AltModifier);
        CHECK(desk.counter().inquiry().wanted()->belt == desk.belt("S8M 960"));
    }
}

TEST_CASE("What is sent before it is settled is said to be in doubt at the Counter", "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.press(Qt::Key_1, Qt::AltModifier);
    desk.measure(Measure::PitchOver, "100.8"); // over 20: between T5, 100, and XL, 101.6
    const auto chosen = desk.which().chosen();
    REQUIRE(chosen);
    CHECK_FALSE(chosen->rival.empty());
    Evidence evidence{desk.session().tables()};
    evidence.setMeasured(*chosen, std::nullopt);
    const auto found = evidence.of(desk.belt(chosen->profile == "XL" ? "XL 414" : "T5 500"));
    REQUIRE(found.size() == 1);
    CHECK(found.front().kind == Evidence::Finding::Kind::Warns);
    CHECK(found.front().words.contains(QString::fromStdString(chosen->rival)));
}

TEST_CASE("An Enter that is quicker than the answer waits for it, and goes on only if it is settled",
          "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.press(Qt::Key_1, Qt::AltModifier);
    desk.measure(Measure::PitchOver, "100.1");
    QLineEdit& thickness = desk.which().form().field(Measure::Thickness).figure();
    thickness.setText("2.7");
    REQUIRE_FALSE(desk.which().settled());
    QTest::keyClick(&thickness, Qt::Key_Return);
    desk.settle();
    CHECK(desk.which().isVisible()); // AT5, but how long?
    QLineEdit& teeth = desk.which().form().field(Measure::Teeth).figure();
    teeth.setText("100");
    QTest::keyClick(&teeth, Qt::Key_Return);
    desk.settle();
    CHECK_FALSE(desk.which().isVisible());
    CHECK(desk.counter().line().text().contains("AT5 500"));
}

TEST_CASE("Measures that disagree are named, and no belt is sent", "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.measure(Measure::PitchOver, "160");
    desk.measure(Measure::Teeth, "150");
    desk.measure(Measure::Flat, "900"); // 150 teeth of 8 mm are 1200
    REQUIRE(desk.which().answer()->found.contradictory());
    CHECK_FALSE(desk.which().chosen());
    keepPicture(desk.which(), "which-contradictory");
    desk.press(Qt::Key_Return);
    CHECK(desk.which().isVisible());
    CHECK(desk.counter().line().text().isEmpty());
}

TEST_CASE("What is no figure is marked and not weighed", "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.measure(Measure::Thickness, "thick");
    CHECK(desk.which().form().field(Measure::Thickness).isWrong());
    CHECK(desk.which().answer() == nullptr);
    desk.measure(Measure::Teeth, "33.5");
    CHECK(desk.which().form().field(Measure::Teeth).isWrong());
}

TEST_CASE("F2 changes the instrument, and a typed error comes before it", "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.measure(Measure::PitchOver, "100.1");
    MeasureField& field = desk.which().form().field(Measure::PitchOver);
    CHECK(field.measurement()->error == Approx(.5)); // rule
    desk.press(Qt::Key_F2);
    CHECK(field.measurement()->error == Approx(2)); // tape
    desk.press(Qt::Key_F2);
    CHECK(field.measurement()->error == Approx(.1)); // calliper
    desk.measure(Measure::PitchOver, "100.1 ±0.25");
    CHECK(field.measurement()->error == Approx(.25));
}

TEST_CASE("The errors are the shop's own, and stay", "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.answering([](QDialog& dialog) {
        auto* rule = dialog.findChild<QLineEdit*>("rule");
        REQUIRE(rule != nullptr);
        rule->setText("much");
        dialog.accept(); // refused
        CHECK(dialog.isVisible());
        rule->setText("0.8");
        dialog.accept();
    });
    desk.press(Qt::Key_F6);
    CHECK(store::readMeasuring(desk.connection()).rule == Approx(.8));
    desk.measure(Measure::PitchOver, "100.1");
    CHECK(desk.which().form().field(Measure::PitchOver).measurement()->error == Approx(.8));
}

TEST_CASE("What of a candidate is here is told beside it, and ribs are counted", "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.press(Qt::Key_3, Qt::AltModifier);
    desk.measure(Measure::PitchOver, "160");
    desk.measure(Measure::Teeth, "150");
    const QListView* candidates = nullptr;
    for (const auto* list : desk.which().findChildren<QListView*>())
        if (list->accessibleName().startsWith("What it may be")) candidates = list;
    REQUIRE(candidates != nullptr);
    const QString told = candidates->model()->index(0, 0).data(Qt::AccessibleTextRole).toString();
    INFO(told.toStdString());
    CHECK(told.contains("H8M 1200"));
    CHECK(told.contains("here")); // 470 less trim and end
    desk.press(Qt::Key_Delete, Qt::ControlModifier);
    desk.press(Qt::Key_7, Qt::AltModifier);
    desk.measure(Measure::RibsOver, "9.36");
    desk.measure(Measure::RibCount, "6");
    desk.measure(Measure::Flat, "1194");
    const auto chosen = desk.which().chosen();
    REQUIRE(chosen);
    CHECK(chosen->profile == "PJ");
    CHECK(chosen->width == Extent{Ribs{6}});
    keepPicture(desk.which(), "which-ribs");
}

TEST_CASE("In the dark, and small, the helper shows all of its words", "[which]") {
    WhichDesk desk;
    desk.bring();
    desk.press(Qt::Key_4, Qt::AltModifier);
    desk.measure(Measure::PitchOver, "160");
    desk.measure(Measure::Teeth, "120");
    Look::apply(*qApp, Shade::Dark);
    keepPicture(desk.which(), "which-dark");
    desk.which().resize(1880, 1000);
    keepPicture(desk.which(), "which-dark-1920");
    Look::apply(*qApp, Shade::Light);
}

} // namespace riband::ui
