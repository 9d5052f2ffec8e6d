#include "core/shop/cuttable.h"
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
    const auto stock = shop::cuttable(shop.session().shop(), inquiry.reading()->belt.profile);
    return substituteChoices(*inquiry.reading(), stock, shop.session().tables());
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
    CHECK(first("H8M 1264 85").text == "H8M 1200");  // farther off, but wide enough
    CHECK(first("H8M 1264 465").text == "H8M 1256"); // the next that is made: 470 gives 462.5
    CHECK(first("H8M 1264 465").remark.contains("not here"));
}

TEST_CASE("Where the belt is here but too narrow, other widths are told with their share of the pull",
          "[counter]") {
    DeskShop shop;
    shop.piece("H8M 1280", mm(40), cutting::PieceKind::Remnant);
    const Choices choices = inPlaceOf(shop, "H8M 1280 50");
    REQUIRE(choices.choices.size() > 1);
    CHECK(choices.choices[0].text == "H8M 1200"); // as wide, and carries as much
    const Choice& narrower = choices.choices[1];
    CHECK(narrower.text.contains("30 mm"));
    CHECK(narrower.remark.contains("60 %")); // by width alone: no reference pull of H8M is in the tables
    CHECK(narrower.value.contains("1280"));
}

TEST_CASE("A belt as wide and a little longer comes before a narrower one; what is not here comes last",
          "[counter]") {
    DeskShop shop;
    shop.piece("H8M 1280", mm(40), cutting::PieceKind::Remnant);
    shop.piece("H8M 1304", mm(400));
    const Choices choices = inPlaceOf(shop, "H8M 1280 50");
    REQUIRE(choices.choices.size() > 4);
    CHECK(choices.choices[0].text == "H8M 1304");
    CHECK(choices.choices[0].remark.contains("12.00 mm farther"));
    CHECK(choices.choices[1].text == "H8M 1200"); // 470 mm of it
    CHECK(choices.choices[2].text.contains("30 mm"));
    CHECK(choices.choices.back().does == Choice::Does::Drive);
    shop.piece("H8M 1280", mm(85), cutting::PieceKind::Ready);
    const Choices ready = inPlaceOf(shop, "H8M 1280 50");
    CHECK(ready.choices[0].text.contains("85 mm")); // nothing changes but that it is wider
    CHECK(ready.choices[0].remark.contains("170 %"));
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
