#include "tests/ui/which/which_desk.h"
#include "ui/counter/evidence.h"
#include "ui/counter/evidence_strip.h"

#include <QLineEdit>

namespace riband::ui {

namespace {

constexpr double tape = 2;

std::string wordsOf(const std::vector<Evidence::Finding>& findings) {
    std::string all;
    for (const auto& each : findings)
        all += each.words.toStdString() + "\n";
    return all;
}

} // namespace

TEST_CASE("A pulley of another profile stops the sale, and the right belt is one key away", "[counter]") {
    WhichDesk desk;
    desk.say("H8M 960 50");
    desk.press(Qt::Key_F5);
    desk.into(desk.counter(), "pulley", "s8m");
    keepPicture(desk.counter(), "pulley-disagrees");
    desk.press(Qt::Key_Return); // back to the line

    SECTION("Enter does not put it on the slip, F9 orders nothing") {
        desk.press(Qt::Key_Return);
        CHECK(desk.counter().order().isEmpty());
        desk.press(Qt::Key_F9);
        CHECK(desk.openOrders() == 0);
        CHECK(desk.counter().line().text() == "H8M 960 50"); // nothing is lost
    }
    SECTION("the first choice is the belt of the pulley, as wide as was said") {
        desk.press(Qt::Key_1, Qt::AltModifier);
        const auto wanted = desk.counter().inquiry().wanted();
        REQUIRE(wanted);
        CHECK(wanted->belt == desk.belt("S8M 960"));
        CHECK(wanted->extent == mm(50));
        desk.press(Qt::Key_F9);
        CHECK(desk.openOrders() == 1);
    }
    SECTION("the last sells it as said, once the clerk has been told") {
        desk.press(Qt::Key_2, Qt::AltModifier);
        desk.press(Qt::Key_Return);
        CHECK(desk.counter().order().lines().size() == 1);
    }
}

TEST_CASE("A pulley of the belt's own profile is no hindrance, and one that is unknown is said so",
          "[counter]") {
    WhichDesk desk;
    const belt::Tables& tables = desk.session().tables();
    Evidence evidence{tables, tape};
    evidence.setPulley("h8m");
    CHECK_FALSE(evidence.stops(desk.belt("H8M 1200")));
    CHECK(evidence.of(desk.belt("H8M 1200")).front().kind == Evidence::Finding::Kind::Fits);
    evidence.setPulley("T5");
    CHECK(evidence.stops(desk.belt("XL 414"))); // nearly the same pitch
    evidence.setPulley("5M");                   // of which tooth?
    CHECK_FALSE(evidence.pulleyIsKnown());
    CHECK(evidence.pulleyFault().contains("H5M, R5M, S5M, G5M"));
    evidence.setPulley("K9");
    CHECK_FALSE(evidence.pulleyIsKnown());
    CHECK(evidence.pulleyFault().contains("no such profile"));
    CHECK(evidence.of(desk.belt("XL 414")).empty());
}

TEST_CASE("A pulley offers the made lengths around one that its profile has not", "[counter]") {
    WhichDesk desk;
    const belt::Tables& tables = desk.session().tables();
    const belt::Profile* round = tables.profile("R8M");
    REQUIRE(round != nullptr);
    for (const char* made : {"H8M 1200", "H8M 424"})
        for (const belt::Belt& belt : ofProfile(*round, desk.belt(made).length, tables)) {
            CHECK(belt.profile == "R8M");
            CHECK(tables.made("R8M", belt.length) != nullptr);
        }
}

TEST_CASE("A tape that says 818 fits 322L, and the program says so", "[counter]") {
    WhichDesk desk;
    desk.say("322L075");
    desk.press(Qt::Key_F5);
    desk.into(desk.counter(), "tape", "818");
    Evidence evidence{desk.session().tables(), tape};
    evidence.setTape("818");
    const auto found = evidence.of(desk.belt("L 322"));
    REQUIRE(found.size() == 1);
    INFO(wordsOf(found));
    CHECK(found.front().kind == Evidence::Finding::Kind::Fits);
    CHECK(found.front().words.startsWith("818 mm by tape fits: L 322 is 819.15 mm long."));
    keepPicture(desk.counter(), "tape-fits");
    desk.press(Qt::Key_Return);
    desk.press(Qt::Key_Return);
    CHECK(desk.counter().order().lines().size() == 1);
}

TEST_CASE("A tape that can't have measured the belt stops the sale and names what it fits", "[counter]") {
    WhichDesk desk;
    Evidence evidence{desk.session().tables(), tape};
    evidence.setTape("1120");
    const auto found = evidence.of(desk.belt("H8M 1200"));
    REQUIRE(found.size() == 1);
    INFO(wordsOf(found));
    CHECK(found.front().kind == Evidence::Finding::Kind::Stops);
    REQUIRE_FALSE(found.front().rather.empty());
    CHECK(found.front().rather.front() == desk.belt("H8M 1120"));
    evidence.setTape("long");
    CHECK_FALSE(evidence.tapeIsFigure());
    CHECK(evidence.of(desk.belt("H8M 1200")).empty());
}

TEST_CASE("What was said and what was measured disagree: both are named, and the sale waits", "[counter]") {
    WhichDesk desk;
    const MeasuredBelt measured{"S8M", desk.belt("S8M 960"), std::nullopt, .97};

    SECTION("the line stays, and is compared") {
        desk.say("H8M 960 50");
        desk.counter().noteMeasured(measured);
        desk.settle();
        desk.press(Qt::Key_Return);
        CHECK(desk.counter().order().isEmpty());
        keepPicture(desk.counter(), "measured-disagrees");
        desk.press(Qt::Key_1, Qt::AltModifier);
        CHECK(desk.counter().inquiry().wanted()->belt == desk.belt("S8M 960"));
    }
    SECTION("the measured belt takes the place of the said one, with its width and number") {
        desk.say("3 x H8M 960 50");
        desk.counter().takeMeasured(measured);
        desk.settle();
        const auto wanted = desk.counter().inquiry().wanted();
        REQUIRE(wanted);
        CHECK(wanted->belt == desk.belt("S8M 960"));
        CHECK(wanted->extent == mm(50));
        CHECK(wanted->quantity == 3);
        keepPicture(desk.counter(), "measured-taken");
    }
    SECTION("another sale knows nothing of it") {
        desk.counter().noteMeasured(measured);
        desk.say("H8M 960 50");
        CHECK_FALSE(desk.counter().line().text().isEmpty());
        desk.press(Qt::Key_Escape);
        desk.say("H8M 1200 30");
        desk.press(Qt::Key_Return);
        CHECK(desk.counter().order().lines().size() == 1);
    }
}

TEST_CASE("Teeth on both sides were measured, on one side were said: the sale waits", "[counter]") {
    WhichDesk desk;
    Evidence evidence{desk.session().tables(), tape};
    evidence.setMeasured({"DH8M", std::nullopt, std::nullopt, .99}, std::nullopt); // no length yet
    CHECK(evidence.stops(desk.belt("H8M 1200")));
    CHECK_FALSE(evidence.stops(desk.belt("DH8M 1200")));
    evidence.clear();
    evidence.setPulley("H8M"); // but either side runs on its pulleys
    CHECK_FALSE(evidence.stops(desk.belt("DH8M 1200")));
}

TEST_CASE("An open-ended belt is declared out of what a sleeve gives", "[counter]") {
    WhichDesk desk;
    desk.counter().takeMeasured({"T5", std::nullopt, mm(16), .99, true});
    desk.settle();
    CHECK(desk.counter().inquiry().state() == Inquiry::State::Fault);
    REQUIRE(desk.counter().inquiry().understanding().fault);
    CHECK(desk.counter().inquiry().understanding().fault->kind == belt::ReadFault::Kind::OpenEnded);
}

TEST_CASE("Two standards state one belt: no warning", "[counter]") {
    WhichDesk desk;
    Evidence evidence{desk.session().tables(), tape};
    evidence.setMeasured({"L", desk.belt("L 322"), std::nullopt, .99}, std::nullopt);
    CHECK_FALSE(evidence.stops(desk.belt("L 322")));
    evidence.setMeasured({"H8M", desk.belt("H8M 1208"), std::nullopt, .95}, std::nullopt);
    CHECK(evidence.stops(desk.belt("H8M 1200"))); // one tooth, another length
    evidence.overrule();
    CHECK_FALSE(evidence.stops(desk.belt("H8M 1200")));
}

} // namespace riband::ui
