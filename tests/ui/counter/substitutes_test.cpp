#include "tests/ui/desk_fixture.h"
#include "ui/counter/counter_page.h"
#include "ui/counter/substitutes.h"
#include "ui/drive/drive_dialog.h"

#include <QLineEdit>

namespace riband::ui {

namespace {

Choices inPlaceOf(DeskShop& shop, const QString& words) {
    Inquiry inquiry{shop.session().tables()};
    inquiry.say(words);
    REQUIRE(inquiry.reading() != nullptr);
    return substituteChoices(*inquiry.reading(), shop.session());
}

} // namespace

TEST_CASE("In place of a length that is not here: the one that is, with what the pulleys must do",
          "[counter]") {
    DeskShop shop;
    const Choices choices = inPlaceOf(shop, "2 x XL 416 037");
    REQUIRE(choices.choices.size() >= 3);
    const Choice& first = choices.choices.front();
    CHECK(first.text == "XL 414");
    CHECK(first.remark.contains("here"));
    CHECK(first.remark.contains("2.54 mm nearer")); // one tooth of 5.08 less
    for (const Choice& choice : choices.choices)
        if (choice.does == Choice::Does::Say) CHECK(choice.text.startsWith("XL ")); // never another profile
    CHECK(choices.choices.back().does == Choice::Does::Drive);
    CHECK(choices.choices.size() <= 9); // a digit each
}

TEST_CASE("A length that is here too narrow is not offered for a wide belt", "[counter]") {
    DeskShop shop;
    shop.piece("H8M 1280", mm(60), cutting::PieceKind::Remnant);
    const auto first = [&](const QString& words) { return inPlaceOf(shop, words).choices.front(); };
    CHECK(first("H8M 1264 30").remark.startsWith("here"));
    CHECK(first("H8M 1264 30").text == "H8M 1280");
    CHECK(first("H8M 1264 85").text == "H8M 1256"); // the next that is made
    CHECK(first("H8M 1264 85").remark.contains("not here"));
}

TEST_CASE("Where the belt is here but too narrow, other widths are told with their share of the pull",
          "[counter]") {
    DeskShop shop;
    shop.piece("H8M 1280", mm(40), cutting::PieceKind::Remnant);
    const Choices choices = inPlaceOf(shop, "H8M 1280 50");
    REQUIRE_FALSE(choices.choices.empty());
    const Choice& first = choices.choices.front();
    CHECK(first.text.contains("30 mm"));
    CHECK(first.remark.contains("60 %")); // by width alone: no reference pull of H8M is in the tables
    CHECK(first.value.contains("1280"));
}

TEST_CASE("The drive opens from there, filled in", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("2 x XL 416 037");
    const auto choices = inPlaceOf(shop, "2 x XL 416 037").choices.size();
    desk.press(static_cast<Qt::Key>(Qt::Key_0 + static_cast<int>(choices)), Qt::AltModifier);
    CHECK(desk.window().drive().isVisible());
    bool filled = false;
    for (const auto* edit : desk.window().drive().findChildren<QLineEdit*>())
        filled = filled || edit->text() == "416";
    CHECK(filled);
    CHECK(desk.counter().line().text() == "2 x XL 416 037");
}

} // namespace riband::ui
