#include "core/store/measuring.h"
#include "tests/ui/desk_fixture.h"
#include "ui/counter/counter_page.h"
#include "ui/which/sample_form.h"
#include "ui/which/shape_tiles.h"
#include "ui/which/which_dialog.h"
#include "ui/words/identify_words.h"

#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QListView>
#include <QPixmap>
#include <QTest>
#include <QThreadPool>

namespace riband::ui {

namespace {

using belt::identify::Measure;

/// The helper, opened by its key over the Counter.
class Helper {
public:
    explicit Helper(DeskWindow& desk) : desk_{desk}, which_{desk.window().which()} {
        desk.press(Qt::Key_W, Qt::ControlModifier);
        REQUIRE(which_.isVisible());
        QApplication::setActiveWindow(&which_);
        settle();
    }
    WhichDialog& dialog() { return which_; }
    void settle() {
        do {
            QThreadPool::globalInstance()->waitForDone();
            QApplication::processEvents();
        } while (!which_.settled());
    }
    void type(Measure what, const char* figure) {
        QLineEdit& field = which_.form().field(what).figure();
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, QString::fromUtf8(figure));
        settle();
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QWidget* at = QApplication::focusWidget();
        QTest::keyClick(at ? at : &which_, key, modifiers);
        settle();
    }
    std::string best() {
        REQUIRE(which_.answer() != nullptr);
        return nameOf(which_.answer()->found.candidates.front()).toStdString();
    }
    void keepPicture(const QString& name) {
        const QDir folder{QStringLiteral(RIBAND_BINARY_DIR "/scenes")};
        folder.mkpath(".");
        QApplication::processEvents();
        CHECK(which_.grab().save(folder.filePath(name + ".png")));
    }

private:
    DeskWindow& desk_;
    WhichDialog& which_;
};

} // namespace

TEST_CASE("White trapezoids without print: two measures and a count, and the belt is on the line",
          "[which]") {
    DeskShop shop;
    DeskWindow desk{shop};
    Helper helper{desk};
    helper.press(Qt::Key_1, Qt::AltModifier); // trapezoids
    CHECK(helper.dialog().form().shapes().shape() == belt::identify::SeenShape::Trapezoid);
    helper.type(Measure::PitchOver, "100.1");
    CHECK_FALSE(helper.dialog().answer()->found.settled);
    helper.keepPicture("which-open");
    helper.type(Measure::Thickness, "2.7"); // T5 has 2.2, AT5 2.7 (DIN 7721, ISO 17396)
    CHECK(helper.best() == "AT5");
    helper.type(Measure::Teeth, "100");
    CHECK(helper.best() == "AT5 500");
    CHECK(helper.dialog().answer()->found.settled);
    helper.type(Measure::Width, "15.8");
    helper.keepPicture("which-settled");
    helper.press(Qt::Key_Return);
    CHECK_FALSE(helper.dialog().isVisible());
    const auto wanted = desk.counter().inquiry().wanted();
    REQUIRE(wanted);
    CHECK(wanted->belt == shop.belt("AT5 500"));
    CHECK(wanted->extent == mm(16)); // the nearest that is sold
}

TEST_CASE("The next measure is marked, and F3 goes there", "[which]") {
    DeskShop shop;
    DeskWindow desk{shop};
    Helper helper{desk};
    helper.type(Measure::PitchOver, "50.4");
    const auto next = helper.dialog().answer()->found.next;
    REQUIRE(next);
    helper.press(Qt::Key_F3);
    if (next->what == Measure::Shape)
        CHECK(helper.dialog().form().shapes().isAncestorOf(QApplication::focusWidget()));
    else
        CHECK(helper.dialog().form().field(next->what).holdsFocus());
}

TEST_CASE("Escape loses nothing; what was typed is there until it is cleared", "[which]") {
    DeskShop shop;
    DeskWindow desk{shop};
    Helper helper{desk};
    helper.type(Measure::Teeth, "150");
    helper.press(Qt::Key_Escape);
    CHECK_FALSE(helper.dialog().isVisible());
    CHECK(desk.counter().line().text().isEmpty());
    Helper again{desk};
    CHECK(again.dialog().form().field(Measure::Teeth).figure().text() == "150");
    CHECK(again.dialog().answer() != nullptr);
    again.press(Qt::Key_Delete, Qt::ControlModifier);
    CHECK(again.dialog().form().isEmpty());
    CHECK(again.dialog().answer() == nullptr);
    again.press(Qt::Key_Return); // nothing to send
    CHECK(again.dialog().isVisible());
}

TEST_CASE("Measures that disagree are named, and no belt is sent", "[which]") {
    DeskShop shop;
    DeskWindow desk{shop};
    Helper helper{desk};
    helper.type(Measure::PitchOver, "160");
    helper.type(Measure::Teeth, "150");
    helper.type(Measure::Flat, "900"); // 150 teeth of 8 mm are 1200
    REQUIRE(helper.dialog().answer()->found.contradictory());
    CHECK_FALSE(helper.dialog().chosen());
    helper.keepPicture("which-contradictory");
    helper.press(Qt::Key_Return);
    CHECK(helper.dialog().isVisible());
    CHECK(desk.counter().line().text().isEmpty());
}

TEST_CASE("What is no figure is marked and not weighed", "[which]") {
    DeskShop shop;
    DeskWindow desk{shop};
    Helper helper{desk};
    helper.type(Measure::Thickness, "thick");
    CHECK(helper.dialog().form().field(Measure::Thickness).isWrong());
    CHECK(helper.dialog().answer() == nullptr);
    helper.type(Measure::Teeth, "33.5");
    CHECK(helper.dialog().form().field(Measure::Teeth).isWrong());
}

TEST_CASE("F2 changes the instrument, and a typed error comes before it", "[which]") {
    DeskShop shop;
    DeskWindow desk{shop};
    Helper helper{desk};
    helper.type(Measure::PitchOver, "100.1");
    MeasureField& field = helper.dialog().form().field(Measure::PitchOver);
    CHECK(field.measurement()->error == Approx(.5)); // rule
    helper.press(Qt::Key_F2);
    CHECK(field.measurement()->error == Approx(2)); // tape
    helper.press(Qt::Key_F2);
    CHECK(field.measurement()->error == Approx(.1)); // calliper
    helper.type(Measure::PitchOver, "100.1 ±0.25");
    CHECK(field.measurement()->error == Approx(.25));
}

TEST_CASE("The errors are the shop's own, and stay", "[which]") {
    DeskShop shop;
    DeskWindow desk{shop};
    Helper helper{desk};
    desk.answering([](QDialog& dialog) {
        auto* rule = dialog.findChild<QLineEdit*>("rule");
        REQUIRE(rule != nullptr);
        rule->setText("much");
        dialog.accept(); // refused
        CHECK(dialog.isVisible());
        rule->setText("0.8");
        dialog.accept();
    });
    helper.press(Qt::Key_F6);
    CHECK(store::readMeasuring(shop.connection()).rule == Approx(.8));
    helper.type(Measure::PitchOver, "100.1");
    CHECK(helper.dialog().form().field(Measure::PitchOver).measurement()->error == Approx(.8));
}

TEST_CASE("What of a candidate is here is told beside it, and ribs are counted", "[which]") {
    DeskShop shop;
    DeskWindow desk{shop};
    Helper helper{desk};
    helper.press(Qt::Key_3, Qt::AltModifier);
    helper.type(Measure::PitchOver, "160");
    helper.type(Measure::Teeth, "150");
    const auto* list = helper.dialog().findChild<QListView*>();
    const QString told = list->model()->index(0, 0).data(Qt::AccessibleTextRole).toString();
    INFO(told.toStdString());
    CHECK(told.contains("H8M 1200"));
    CHECK(told.contains("here")); // 470 less trim and end
    helper.press(Qt::Key_Delete, Qt::ControlModifier);
    helper.press(Qt::Key_7, Qt::AltModifier);
    helper.type(Measure::RibsOver, "9.36");
    helper.type(Measure::RibCount, "6");
    helper.type(Measure::Flat, "1194");
    const auto chosen = helper.dialog().chosen();
    REQUIRE(chosen);
    CHECK(chosen->profile == "PJ");
    CHECK(chosen->width == Extent{Ribs{6}});
    helper.keepPicture("which-ribs");
}

TEST_CASE("In the dark, and small, the helper shows all of its words", "[which]") {
    DeskShop shop;
    DeskWindow desk{shop};
    Helper helper{desk};
    helper.press(Qt::Key_4, Qt::AltModifier);
    helper.type(Measure::PitchOver, "160");
    helper.type(Measure::Teeth, "120");
    Look::apply(*qApp, Shade::Dark);
    helper.keepPicture("which-dark");
    helper.dialog().resize(1880, 1000);
    helper.keepPicture("which-dark-1920");
    Look::apply(*qApp, Shade::Light);
}

} // namespace riband::ui
