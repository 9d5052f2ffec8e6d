#include "tests/ui/desk_fixture.h"
#include "ui/desk/page.h"
#include "ui/desk/who_dialog.h"
#include "ui/look/card_tabs.h"

#include <QLineEdit>
#include <QListWidget>
#include <QTest>

namespace riband::ui {

namespace {

using store::Role;

store::PersonId addPerson(DeskShop& shop, const char* initials, Role role, const std::string& number = {}) {
    store::People people{shop.connection()};
    const auto id = people.add(initials, initials, role);
    people.lock(id, number);
    return id;
}

QStringList cards(DeskWindow& desk) {
    const auto* tabs = desk.window().findChild<CardTabBar*>();
    QStringList shown;
    for (int i = 0; i < tabs->count(); ++i)
        if (tabs->isTabVisible(i)) shown << tabs->tabText(i);
    return shown;
}

void becomes(DeskWindow& desk, const QString& initials, const QString& number = {}) {
    desk.answering([&](QDialog& dialog) {
        auto* list = dialog.findChild<QListWidget*>("people");
        list->setFocus();
        QTest::keyClicks(list, initials);
        QTest::keyClicks(dialog.findChild<QLineEdit*>("number"), number);
        QTest::keyClick(&dialog, Qt::Key_Return);
    });
    desk.press(Qt::Key_U, Qt::ControlModifier);
}

} // namespace

TEST_CASE("A clerk's cards are the Counter, the Bench and the Rack", "[window][who]") {
    DeskShop shop;
    addPerson(shop, "CL", Role::Clerk);
    DeskWindow desk{shop};
    CHECK(cards(desk).last() == "Shop");
    desk.press(Qt::Key_6, Qt::ControlModifier);
    CHECK(desk.window().current()->title() == "Shop");

    becomes(desk, "CL");
    CHECK(shop.session().person().initials == "CL");
    CHECK(cards(desk) == QStringList{"Counter", "Bench", "Rack"});
    CHECK(desk.window().current()->title() == "Counter"); // not left on a card that is put away
    desk.press(Qt::Key_6, Qt::ControlModifier);
    CHECK(desk.window().current()->title() == "Counter");
    becomes(desk, "JT");
    CHECK(cards(desk).last() == "Shop");
}

TEST_CASE("Who is locked acts only with the number", "[window][who]") {
    DeskShop shop;
    const auto owner = addPerson(shop, "OW", Role::Owner, "4711");
    DeskWindow desk{shop};
    const auto before = shop.session().person().id;
    becomes(desk, "OW", "1234");
    CHECK(shop.session().person().id == before);
    becomes(desk, "OW");
    CHECK(shop.session().person().id == before);
    becomes(desk, "OW", "4711");
    CHECK(shop.session().person().id == owner);
}

TEST_CASE("What is done carries the name of who acts", "[window][who]") {
    DeskShop shop;
    const auto clerk = addPerson(shop, "CL", Role::Clerk);
    DeskWindow desk{shop};
    becomes(desk, "CL");
    desk.type("1 x H8M 1200 30");
    desk.press(Qt::Key_F9);
    CHECK(shop.orders(store::OrderState::Open).front().person == clerk);
}

} // namespace riband::ui
