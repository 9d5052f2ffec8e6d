// Differences are settled and taken back by keys.
#include "core/shop/counting/findings.h"
#include "core/shop/order.h"
#include "tests/ui/tally/at_the_tally.h"

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTableView>
#include <QTest>

namespace riband::ui {

TEST_CASE("An unrecorded cut is proposed first, and a digit marks another line", "[tally]") {
    DeskShop shop;
    shop::order(shop.session().shop(),
                {{{shop.belt("T10 1250"), mm(25), 1, "T10 1250 25", std::nullopt, {}}}, "", "", {}, ""});
    TallyDesk desk{shop};
    const store::StockPiece sleeve = desk.piece("T10 1250");
    desk.scan("B3-2");
    desk.measure(sleeve, "352.5"); // 380 - 2.5 - 25
    desk.scan("352.5");
    desk.press(Qt::Key_F4);
    CHECK(desk.words().contains("was cut and not recorded"));
    desk.press(Qt::Key_2);
    auto* proposals = desk.page().findChildren<QListWidget*>().back();
    CHECK(proposals->currentRow() == 1);
    desk.press(Qt::Key_1);
    CHECK(proposals->currentRow() == 0);
    desk.press(Qt::Key_F9);
    CHECK(shop.orders(store::OrderState::Ready).size() == 1);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Beyond the limit the owner approves there and then, with initials and number", "[tally]") {
    DeskShop shop;
    store::People people{shop.connection()};
    const store::PersonId owner = shop.session().person().id;
    people.lock(owner, "4711");
    const store::PersonId manager = people.add("SM", "S. Mercer", store::Role::StockManager);
    store::ShopSettings settings = shop.session().settings();
    settings.counting.approveOver = Money::minor(20);
    shop.session().save(settings);
    shop.session().actAs(manager);
    TallyDesk desk{shop};
    desk.scan("B3-2");
    const store::StockPiece sleeve = desk.piece("T10 1250");
    desk.measure(sleeve, "170.3");
    desk.scan("170.3");
    desk.press(Qt::Key_F4);
    CHECK(desk.words().contains("the owner approves it"));
    const auto answer = [&](const QString& number) {
        desk.answering([number](QDialog& dialog) {
            auto* list = dialog.findChild<QListWidget*>("people");
            CHECK(list->count() == 1); // owners only
            QTest::keyClicks(list, "JT");
            QTest::keyClicks(dialog.findChild<QLineEdit*>("number"), number);
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F9);
    };
    answer("1234");
    CHECK(desk.piece("T10 1250").extent == mm(380));
    answer("4711");
    CHECK(desk.piece("T10 1250").extent == um(170'300));
    const auto settled = store::Counts{shop.connection()}.settlements();
    REQUIRE(settled.size() == 1);
    CHECK(settled.front().person == manager);
    CHECK(settled.front().approved == owner);
    CHECK(shop.session().person().id == manager); // who acted goes on acting
}

TEST_CASE("What was settled can be taken back another day, and it says why something can't", "[tally]") {
    DeskShop shop;
    {
        TallyDesk desk{shop};
        desk.scan("B3-2");
        desk.measure(desk.piece("T10 1250"), "371.7");
        desk.scan("371.7");
        desk.measure(desk.piece("XL 414"), "244.1");
        desk.scan("244.1");
        desk.press(Qt::Key_F4);
        desk.press(Qt::Key_F9);
        desk.press(Qt::Key_F9);
        CHECK(shop::findings(shop.session().shop()).empty());
    }
    TallyDesk desk{shop};
    desk.press(Qt::Key_F4);
    QStringList states, reasons;
    desk.answering([&](QDialog& dialog) {
        auto* table = dialog.findChild<QTableView*>();
        REQUIRE(table->model()->rowCount() == 2);
        QTest::keyClick(table, Qt::Key_Down); // the older one
        QTest::keyClick(&dialog, Qt::Key_F6);
        for (int row = 0; row < 2; ++row)
            states << table->model()->index(row, table->model()->columnCount() - 1).data().toString();
        for (const auto* label : dialog.findChildren<QLabel*>())
            reasons << label->text();
        QTest::keyClick(&dialog, Qt::Key_F6); // grey
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    desk.press(Qt::Key_F6);
    REQUIRE(states.size() == 2);
    CHECK(states[0] == "stands");
    CHECK(states[1].startsWith("taken back"));
    CHECK(reasons.join(' ').contains("It is taken back already."));
    CHECK(shop::findings(shop.session().shop()).size() == 1);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Where nothing is open nothing is asked for, and it is said what one can do", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.press(Qt::Key_F4);
    CHECK(desk.words().contains("Nothing is open: every difference is settled."));
    CHECK(desk.words().contains("There is nothing to book. F4 counts on"));
    CHECK_FALSE(desk.words().contains("F9 books"));
    CHECK_FALSE(desk.words().contains("What may have happened"));
    CHECK_FALSE(desk.words().contains("Scan a piece to choose"));
    desk.press(Qt::Key_F4);
    desk.scan("B3-2");
    desk.measure(desk.piece("T10 1250"), "371.7");
    desk.scan("371.7");
    desk.press(Qt::Key_F4);
    CHECK(desk.words().contains("F9 books the marked line."));
    CHECK(desk.words().contains("Scan a piece to choose"));
    desk.press(Qt::Key_F9);
    CHECK_FALSE(desk.words().contains("F9 books"));
}

TEST_CASE("Taking a settlement back names the ticket that stays void", "[tally]") {
    DeskShop shop;
    const auto ordered = shop::order(
        shop.session().shop(), {{{shop.belt("T10 1250"), mm(300), 1, "", std::nullopt, {}}}, "", "", {}, ""});
    const std::string ticket = store::Tickets{shop.connection()}.at(*ordered.ticket).code;
    TallyDesk desk{shop};
    desk.scan("B3-2");
    desk.measure(desk.piece("T10 1250"), "171.7");
    desk.scan("171.7");
    desk.press(Qt::Key_F4);
    desk.press(Qt::Key_F9);
    QString said;
    desk.answering([&](QDialog& dialog) {
        QTest::keyClick(&dialog, Qt::Key_F6);
        for (const auto* label : dialog.findChildren<QLabel*>())
            if (label->isVisible()) said += label->text();
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    desk.press(Qt::Key_F6);
    CHECK(said.contains(QString::fromStdString(ticket) + " stays void"));
    CHECK(said.contains("plan them again"));
    CHECK(desk.piece("T10 1250").extent == mm(380));
}

TEST_CASE("On the Settle page a scan chooses its difference, or it is said that none waits", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.scan("B3-2");
    const QString first = QString::fromStdString(desk.piece("T10 1250").code),
                  second = QString::fromStdString(desk.piece("XL 414").code),
                  agrees = QString::fromStdString(desk.piece("H8M 1200").code);
    desk.measure(desk.piece("T10 1250"), "371.7");
    desk.scan("371.7");
    desk.measure(desk.piece("XL 414"), "244.1");
    desk.scan("244.1");
    desk.press(Qt::Key_F4);
    for (const QString& code : {second, first, second}) {
        desk.scan(code);
        CHECK(desk.words().contains(code + " · B3-2"));
        CHECK(desk.typed().isEmpty());
    }
    desk.scan(agrees);
    CHECK(desk.words().contains("Nothing of " + agrees + " waits to be settled."));
    desk.scan(first); // over what was refused
    CHECK(desk.words().contains(first + " · B3-2"));
    desk.press(Qt::Key_F9);
    CHECK(desk.piece("T10 1250").extent == um(371'700));
    CHECK(desk.piece("XL 414").extent == mm(250));
}

TEST_CASE("The page's own key leads from settling back to counting", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.press(Qt::Key_F4);
    desk.press(Qt::Key_3, Qt::ControlModifier);
    desk.press(Qt::Key_4, Qt::ControlModifier); // from elsewhere: as it was left
    desk.scan("Z9");
    CHECK_FALSE(desk.words().contains("No place is called"));
    desk.press(Qt::Key_4, Qt::ControlModifier);
    desk.scan("Z9");
    CHECK(desk.words().contains("No place is called"));
}

} // namespace riband::ui
