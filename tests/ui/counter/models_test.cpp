#include "tests/ui/desk_fixture.h"
#include "ui/counter/choices.h"
#include "ui/counter/lengths_model.h"
#include "ui/counter/price_lines.h"
#include "ui/counter/profiles_model.h"
#include "ui/counter/slip_model.h"
#include "ui/counter/way_words.h"
#include "ui/counter/ways_model.h"

#include <QAbstractItemModelTester>

namespace riband::ui {

namespace {

constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

Inquiry inquiry(DeskShop& shop, const QString& words) {
    Inquiry made{shop.session().tables()};
    made.say(words);
    return made;
}

} // namespace

TEST_CASE("A reading's words read back to it alone", "[counter]") {
    DeskShop shop;
    for (const char* said :
         {"3 x H8M 1200 30", "322L075", "T10 1250 27", "6PJ1194", "H8M 1200", "2 x XL 414 037"}) {
        INFO(said);
        const Inquiry first = inquiry(shop, QString::fromLatin1(said));
        REQUIRE(first.reading() != nullptr);
        const auto words = wordsFor(*first.reading(), shop.session().tables());
        REQUIRE(words);
        const Inquiry again = inquiry(shop, *words);
        CHECK(again.open().empty());
        CHECK(again.reading()->belt == first.reading()->belt);
        CHECK(again.reading()->width == first.reading()->width);
        CHECK(again.reading()->quantity == first.reading()->quantity);
    }
}

TEST_CASE("What is open is offered to be picked", "[counter]") {
    DeskShop shop;
    SECTION("which tooth") {
        const Choices choices = choicesFor(inquiry(shop, "3 x 8m 1200 30"), shop.session().shop());
        REQUIRE(choices.choices.size() >= 2);
        CHECK(choices.choices.front().value == "3 x H8M 1200 30");
        CHECK_FALSE(choices.wrong);
    }
    SECTION("which width: those that the shop usually sells") {
        const Choices choices = choicesFor(inquiry(shop, "H8M 1200"), shop.session().shop());
        REQUIRE_FALSE(choices.choices.empty());
        CHECK(choices.choices.front().value == "H8M 1200 20");
    }
    SECTION("the nearest lengths that are made, with the width that was said") {
        const Choices choices = choicesFor(inquiry(shop, "H8M 1203 30"), shop.session().shop());
        CHECK(choices.wrong);
        REQUIRE_FALSE(choices.choices.empty());
        CHECK(choices.choices.front().value == "H8M 1200 30");
    }
    SECTION("a customer who is known") {
        store::Transaction transaction{shop.connection()};
        store::Orders{shop.connection()}.customerNamed("Weirside Mill", "0123");
        transaction.commit();
        const Choices choices = choicesFor(inquiry(shop, "weirs"), shop.session().shop());
        REQUIRE(choices.choices.size() == 1);
        CHECK(choices.choices.front().does == Choice::Does::Customer);
        CHECK(choices.choices.front().value == "Weirside Mill");
    }
    SECTION("nothing, where all is clear") {
        CHECK(choicesFor(inquiry(shop, "H8M 1200 30"), shop.session().shop()).choices.empty());
    }
}

TEST_CASE("The other ways stand with what each leaves and costs more", "[counter]") {
    DeskShop shop;
    const auto outlook = shop::lookAt(shop.session().shop(), shop.belt("H8M 1200"), {{mm(30), 3}});
    const auto suggestion = shop::suggest(outlook);
    REQUIRE(suggestion.others.size() == 2);
    WaysModel model;
    QAbstractItemModelTester tester{&model, Strict};
    model.setWays(outlook, suggestion.others, shop.session().currency());
    REQUIRE(model.rowCount() == 2);
    CHECK_FALSE(model.index(0, 0).data(WaysModel::NameRole).toString().isEmpty());
    // The remnant of 101 leaves 101 - 2.5 - 90 = 8.5 mm, too narrow for the next customer.
    CHECK(model.index(1, 0).data(WaysModel::LeavesRole).toString() == "leaves a dead 8.5 mm");
    CHECK(model.index(1, 0).data(WaysModel::ExtraRole).toString() == "+ 8.5 mm");
    model.clear();
    CHECK(model.rowCount() == 0);
}

TEST_CASE("The slip shows the lines and the one being typed", "[counter]") {
    DeskShop shop;
    const auto belt = shop::keep(shop.session().shop(), shop.belt("T10 1250"));
    const SlipLine line{{belt.belt, mm(25), 2, "2 x T10 1250 25", {}, {}},
                        belt,
                        shop::priceOf(shop.session().settings().prices, belt.price, mm(25), 2),
                        {}};
    OrderInHand hand;
    hand.put(line);
    SlipModel model;
    QAbstractItemModelTester tester{&model, Strict};
    model.setLines(hand, line, Currency{"EUR", 2});
    REQUIRE(model.rowCount() == 2);
    CHECK_FALSE(model.isPending(0));
    CHECK(model.isPending(1));
    CHECK(model.index(0, 0).data(SlipModel::TitleRole).toString() == "T10 1250, 25 mm");
    hand.edit(0);
    model.setLines(hand, line, Currency{"EUR", 2});
    CHECK(model.rowCount() == 1); // the typed line stands in the place of the one it changes
    hand.clear();
    model.setLines(hand, std::nullopt, Currency{"EUR", 2});
    CHECK(model.rowCount() == 0);
}

TEST_CASE("The form's lists hold what exists and mark what is here", "[counter]") {
    DeskShop shop;
    ProfilesModel profiles;
    QAbstractItemModelTester first{&profiles, Strict};
    profiles.setProfiles(shop.session().tables().profiles(), {"H8M"});
    CHECK(profiles.profile(0).name == "H8M"); // what the shop keeps comes first
    CHECK(profiles.rowOf("no such") == -1);
    LengthsModel lengths;
    QAbstractItemModelTester second{&lengths, Strict};
    const auto* h8m = shop.session().tables().profile("H8M");
    REQUIRE(h8m != nullptr);
    lengths.setLengths(*h8m, shop.session().tables().lengths("H8M"), {{"H8M 1200", mm(470)}});
    const int row = lengths.rowOf(shop.belt("H8M 1200"));
    REQUIRE(row >= 0);
    CHECK(lengths.index(row, 0).data(LengthsModel::InStockRole).toBool());
    CHECK(lengths.index(row, 0).data().toString().contains("470 mm"));
    CHECK(lengths.rowOfText("1200") == row);
    CHECK(lengths.rowOfText("150") == row); // teeth
    lengths.clear();
    CHECK(lengths.rowCount() == 0);
}

TEST_CASE("A price is shown part by part: 90 mm at 0.51 and three cuts at 3.60", "[counter]") {
    store::PriceRules rules;
    rules.cuttingCharge = Money::minor(360);
    const auto price = shop::priceOf(rules, WidthPrice::thousandths(51'000), mm(30), 3);
    const auto lines = priceLines(price, WidthPrice::thousandths(51'000), mm(30), 3, rules);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].what == "90 mm at 0.51");
    CHECK(lines[0].amount == "45.90");
    CHECK(lines[1].amount == "10.80");
}

} // namespace riband::ui
