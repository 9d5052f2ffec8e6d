// What the clerk is advised at the Counter, declines, overrides and is told of worth tables.
#include "core/store/advices.h"
#include "core/store/worth_tables.h"
#include "tests/ui/desk_fixture.h"
#include "ui/counter/counter_page.h"
#include "ui/counter/suggestion_card.h"
#include "ui/counter/why_dialog.h"
#include "ui/desk/learner.h"

#include <QApplication>
#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>

namespace riband::ui {

namespace {

SuggestionCard& card(DeskWindow& desk) {
    auto* card = desk.counter().findChild<SuggestionCard*>();
    REQUIRE(card != nullptr);
    return *card;
}

QString words(DeskWindow& desk) {
    QStringList all;
    for (const auto* label : card(desk).findChildren<QLabel*>())
        if (label->isVisible()) all << label->text();
    return all.join('\n');
}

QCheckBox& shelfTick(DeskWindow& desk) {
    auto* tick = card(desk).findChild<QCheckBox*>();
    REQUIRE(tick != nullptr);
    return *tick;
}

store::Advice theAdvice(DeskShop& shop) {
    const auto orders = shop.orders(store::OrderState::Open);
    REQUIRE(orders.size() == 1);
    const auto advices = store::Advices{shop.connection()}.ofOrder(orders.front().id);
    REQUIRE(advices.size() == 1);
    return advices.front();
}

std::size_t cutsOnTicket(DeskShop& shop) {
    const auto order = shop.orders(store::OrderState::Open).front();
    return store::Tickets{shop.connection()}.ofOrder(order.id).front().mountings.front().cuts.size();
}

} // namespace

TEST_CASE("A dead end is offered for the shelf, and comes onto the ticket", "[counter]") {
    DeskShop shop;
    shop.piece("H8M 960", mm(59), cutting::PieceKind::Remnant); // 2.5 + 30 leave a dead 26.5
    DeskWindow desk{shop};
    desk.type("H8M 960 30");
    REQUIRE(shelfTick(desk).isVisible());
    CHECK(shelfTick(desk).isChecked());
    CHECK(words(desk).contains("20 mm"));
    SECTION("taken") {
        desk.press(Qt::Key_F9);
        CHECK(cutsOnTicket(shop) == 2);
        CHECK_FALSE(theAdvice(shop).shelfDeclined);
    }
    SECTION("declined by a key") {
        desk.press(Qt::Key_F6);
        CHECK_FALSE(shelfTick(desk).isChecked());
        desk.press(Qt::Key_F9);
        CHECK(cutsOnTicket(shop) == 1);
        CHECK(theAdvice(shop).shelfDeclined);
    }
    SECTION("declined, and wanted again") {
        desk.press(Qt::Key_F6);
        desk.press(Qt::Key_F6);
        CHECK(shelfTick(desk).isChecked());
        desk.press(Qt::Key_F9);
        CHECK(cutsOnTicket(shop) == 2);
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Another way is taken by an arrow, and a digit says why", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_Down);
    CHECK(words(desk).contains("F3"));
    SECTION("the digit alone") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(dialog.findChild<QListWidget*>(), Qt::Key_2); });
        desk.press(Qt::Key_F3);
        CHECK(words(desk).contains("nearer to hand"));
        desk.press(Qt::Key_F9);
        const auto advice = theAdvice(shop);
        CHECK(advice.overridden);
        CHECK(advice.overrideKey == store::OverrideKey::NearerToHand);
        CHECK(advice.overrideWords.empty());
    }
    SECTION("in one's own words") {
        desk.answering([](QDialog& dialog) {
            QTest::keyClicks(dialog.findChild<QLineEdit*>(), "it lies on the bench");
            dialog.accept();
        });
        desk.press(Qt::Key_F3);
        desk.press(Qt::Key_F9);
        CHECK(theAdvice(shop).overrideKey == store::OverrideKey::Other);
        CHECK(theAdvice(shop).overrideWords == "it lies on the bench");
    }
    SECTION("without any reason it is kept, too") {
        desk.press(Qt::Key_F9);
        CHECK(theAdvice(shop).overridden);
        CHECK_FALSE(theAdvice(shop).overrideKey);
    }
    SECTION("back to the suggested way, nothing is overridden") {
        desk.press(Qt::Key_Up);
        desk.press(Qt::Key_F9);
        CHECK_FALSE(theAdvice(shop).overridden);
    }
}

TEST_CASE("The counter says what the suggestion rests on, and asks again when a table is learned",
          "[counter]") {
    DeskShop shop;
    Learner learner{shop.session()};
    DeskWindow desk{shop};
    desk.type("3 x H8M 1200 30");
    const store::BeltId belt = store::Catalogue{shop.connection()}.find(shop.belt("H8M 1200"))->id;
    CHECK(QTest::qWaitFor([&] { return !learner.busy() && store::WorthTables{shop.connection()}.of(belt); },
                          60'000));
    desk.settle();
    REQUIRE(store::WorthTables{shop.connection()}.of(belt));
    CHECK(words(desk).contains("by worth table 1"));
    desk.press(Qt::Key_F9);
    CHECK(theAdvice(shop).basis == store::AdviceBasis::LookAhead);
    CHECK(theAdvice(shop).worthVersion == 1);
    CHECK_FALSE(theAdvice(shop).overridden);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("When a shop is opened the tables of what is ordered most are made, before anybody asks",
          "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    const auto idOf = [&](const char* designation) {
        return store::Catalogue{shop.connection()}.find(shop.belt(designation))->id;
    };
    for (const char* line : {"H8M 1200 30", "T10 1250 25"}) {
        desk.type(QString::fromLatin1(line));
        desk.press(Qt::Key_F9);
    }
    Learner learner{shop.session()};
    learner.wantMostOrdered();
    const store::WorthTables tables{shop.connection()};
    CHECK(QTest::qWaitFor(
        [&] { return !learner.busy() && tables.of(idOf("H8M 1200")) && tables.of(idOf("T10 1250")); },
        60'000));
    CHECK_FALSE(tables.of(idOf("XL 414"))); // nobody ordered it
    desk.type("H8M 1200 30");
    CHECK(words(desk).contains("by worth table 1"));
}

TEST_CASE("A half-fitted table is not kept when the window closes", "[counter]") {
    DeskShop shop;
    const store::BeltId belt = store::Catalogue{shop.connection()}.find(shop.belt("H8M 1200"))->id;
    {
        Learner learner{shop.session()};
        learner.want(belt);
        CHECK(learner.busy());
    }
    QApplication::processEvents();
    CHECK_FALSE(store::WorthTables{shop.connection()}.of(belt));
}

} // namespace riband::ui
