#include "core/shop/cuttable.h"
#include "tests/ui/desk_fixture.h"
#include "ui/drive/answer.h"

#include <numbers>

namespace riband::ui {

namespace {

class Counter {
public:
    Counter() { shop_.piece("H5M 750", mm(200)); }
    template <class Question>
    DriveAnswer answer(const Question& question) {
        return answerTo(question, shop_.session().tables(), [this](const std::string& profile) {
            stock_ = shop::cuttable(shop_.session().shop(), profile);
            return isRead ? &stock_ : nullptr;
        });
    }
    bool isRead = true;

private:
    std::vector<belt::drive::Stocked> stock_;
    DeskShop shop_;
};

TwoQuestion twentyTwoToFortyFour() {
    TwoQuestion question;
    question.profile = "H5M";
    question.first = "22";
    question.second = "44";
    question.centre = "300";
    question.range = "10";
    return question;
}

bool has(const QStringList& lines, const QString& words) { return lines.join(' ').contains(words); }

} // namespace

TEST_CASE("22 and 44 teeth of 5 mm, about 300 apart: what is here comes first, then the nearest", "[drive]") {
    Counter counter;
    const DriveAnswer answer = counter.answer(twentyTwoToFortyFour());
    CHECK(answer.open.isEmpty());
    CHECK(answer.exact.contains("766.02 mm")); // docs/drive.md
    REQUIRE(answer.belts.size() > 4);
    CHECK(answer.belts[0].cells[0] == "H5M 750");
    CHECK(answer.belts[0].inStock);
    CHECK(answer.belts[0].cells[2] == "291.97 mm");
    CHECK(answer.belts[1].cells[0] == "H5M 770");
    CHECK(answer.belts[1].cells[1] == "154");
    CHECK(answer.belts[1].cells[2] == "301.99 mm");
    CHECK(answer.belts[1].cells[3] == "1.99 mm farther");
    CHECK(answer.belts[1].cells[6] == "2:1");
    CHECK_FALSE(answer.belts.back().reachable); // 745 or 790
    CHECK(answer.belts[1].picture.layout.stations[1].centre.x == Approx(301.99).margin(0.005));
}

TEST_CASE("Until it is known what is here, the answer says so and the nearest comes first", "[drive]") {
    Counter counter;
    counter.isRead = false;
    const DriveAnswer answer = counter.answer(twentyTwoToFortyFour());
    CHECK_FALSE(answer.stockRead);
    CHECK(answer.belts[0].cells[0] == "H5M 770");
    CHECK(has(answer.notes, "still being looked up"));
    counter.isRead = true;
    CHECK(counter.answer(twentyTwoToFortyFour()).stockRead);
}

TEST_CASE("A belt too wide for what is here is not here", "[drive]") {
    Counter counter;
    TwoQuestion question = twentyTwoToFortyFour();
    question.width = "250";
    const DriveAnswer answer = counter.answer(question);
    REQUIRE_FALSE(answer.belts.empty());
    CHECK_FALSE(answer.belts.front().inStock);
    CHECK(answer.width == mm(250));
}

TEST_CASE("What is missing is asked for, in the field where it goes", "[drive]") {
    Counter counter;
    TwoQuestion question;
    CHECK(counter.answer(question).field == DriveField::First);
    CHECK_FALSE(counter.answer(question).wrong);
    question.profile = "5m";
    DriveAnswer answer = counter.answer(question);
    CHECK(answer.wrong);
    CHECK(answer.field == DriveField::Profile);
    CHECK(answer.open.contains("S5M")); // never guessed
    question.profile = "h5m";
    question.first = "22";
    CHECK(counter.answer(question).field == DriveField::Second);
    question.second = "44";
    CHECK(counter.answer(question).field == DriveField::Centre);
    question.centre = "far";
    answer = counter.answer(question);
    CHECK(answer.wrong);
    CHECK(answer.belts.empty());
}

TEST_CASE("An impossible drive says the least that works", "[drive]") {
    Counter counter;
    TwoQuestion question = twentyTwoToFortyFour();
    question.centre = "50";
    DriveAnswer answer = counter.answer(question);
    CHECK(answer.wrong);
    CHECK(answer.field == DriveField::Centre);
    CHECK(answer.open.contains("52.53 mm")); // (35.014 + 70.028) / 2, rounded up
    question.centre.clear();
    question.belt = "225";
    answer = counter.answer(question);
    CHECK(answer.wrong);
    CHECK(answer.field == DriveField::Belt);
    CHECK(answer.open.contains("too short"));
    question.belt.clear();
    question.centre = "9000";
    CHECK(has(counter.answer(question).warnings, "greatest centre distance"));
}

TEST_CASE("A belt that is known gives its distance, and the ones beside it", "[drive]") {
    Counter counter;
    TwoQuestion question = twentyTwoToFortyFour();
    question.centre.clear();
    for (const char* belt : {"770", "154 teeth"}) {
        question.belt = belt;
        const DriveAnswer answer = counter.answer(question);
        INFO(belt << ": " << answer.open.toStdString());
        CHECK(answer.exact.contains("301.99 mm"));
    }
    question.centre = "300";
    CHECK(has(counter.answer(question).notes, "1.99 mm farther"));
}

TEST_CASE("Ribbed belts go by effective diameters, plain pulleys by theirs", "[drive]") {
    Counter counter;
    TwoQuestion question;
    question.profile = "PJ";
    question.first = "60";
    question.second = "120";
    question.centre = "450";
    question.width = "6";
    DriveAnswer answer = counter.answer(question);
    REQUIRE_FALSE(answer.belts.empty());
    CHECK(answer.width == Extent{Ribs{6}});
    CHECK(answer.belts.front().cells[4] == "–"); // no teeth are in mesh
    question.first = "22 teeth";
    CHECK(counter.answer(question).open.contains("no teeth"));
    question.profile.clear();
    question.first = "100";
    question.second = "100";
    question.width.clear();
    answer = counter.answer(question);
    // Two equal circles: 2 C + pi d.
    CHECK(answer.exact.contains(QString::number(900 + 100 * std::numbers::pi, 'f', 2)));
    CHECK(answer.belts.empty());
    CHECK(answer.picture.has_value());
}

TEST_CASE("What a width carries is told only where the tables hold figures, and defers to the maker",
          "[drive]") {
    Counter counter;
    TwoQuestion question = twentyTwoToFortyFour();
    question.power = "1.5";
    CHECK(counter.answer(question).field == DriveField::Speed);
    question.speed = "1450";
    question.width = "15";
    DriveAnswer answer = counter.answer(question);
    CHECK(has(answer.notes, "told by the belt maker's data alone")); // H5M
    question.profile = "L";
    question.centre = "400";
    answer = counter.answer(question);
    CHECK(has(answer.notes, "The width carries about"));
    CHECK(has(answer.notes, "from memory"));
}

TEST_CASE("More than two pulleys: the route, the belts, and how far the one that can be set moves",
          "[drive]") {
    Counter counter;
    ManyQuestion question;
    question.profile = "H5M";
    question.rows = {{"0", "0", "22"}, {"300", "0", "44"}, {"150", "35", "30 mm", true}, {}};
    DriveAnswer answer = counter.answer(question);
    INFO(answer.open.toStdString());
    CHECK(answer.open.isEmpty());
    REQUIRE_FALSE(answer.belts.empty());
    CHECK(has(answer.notes, "Mark the pulley"));
    question.mover = 1;
    CHECK(counter.answer(question).field == DriveField::Reach);
    question.reach = "20";
    answer = counter.answer(question);
    REQUIRE(answer.belts.front().reachable);
    // The drawing of a belt has the pulley where this belt needs it: the route there is as long as the belt.
    const auto route = belt::drive::routeOf(answer.belts.front().picture.layout);
    REQUIRE(route);
    CHECK(route->length == Approx(answer.belts.front().belt.length.inMillimetres()).margin(1e-6));
    question.rows[2].y = "900";
    answer = counter.answer(question);
    CHECK(answer.wrong);
    CHECK(answer.picture.has_value()); // what is wrong is drawn
    question.rows[2].x = "here";
    CHECK(counter.answer(question).row == 2);
}

} // namespace riband::ui
