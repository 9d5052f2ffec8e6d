// What must not be lost or misread while a clerk hurries: scans and keys in between, orders set aside, a
// window that closes.
#include "tests/ui/desk_fixture.h"
#include "ui/bench/order_dialog.h"
#include "ui/counter/advice.h"
#include "ui/counter/choice_list.h"
#include "ui/counter/counter_page.h"
#include "ui/counter/customer_dialog.h"
#include "ui/counter/parked_dialog.h"
#include "ui/counter/suggestion_card.h"
#include "ui/counter/understood_strip.h"
#include "ui/desk/who_dialog.h"
#include "ui/look/key_button.h"
#include "ui/window/toast.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>

namespace riband::ui {

namespace {

/// As a scanner does: a character every five milliseconds, wherever the focus is by then.
void scan(const QString& code) {
    ulong struck = 1'000'000;
    for (const QChar letter : code) {
        const int key = letter.unicode();
        QKeyEvent press{QEvent::KeyPress, key, Qt::NoModifier, QString{letter}};
        press.setTimestamp(struck += 5);
        QApplication::sendEvent(QApplication::focusWidget(), &press);
    }
}

QString shownWords(QWidget& at) {
    QStringList all;
    for (const auto* label : at.findChildren<QLabel*>())
        if (label->isVisibleTo(&at)) all << label->text();
    return all.join('\n');
}

template <class Widget>
Widget& part(DeskWindow& desk) {
    auto* found = desk.counter().findChild<Widget*>();
    REQUIRE(found != nullptr);
    return *found;
}

store::Order only(DeskShop& shop, store::OrderState state) {
    const auto orders = shop.orders(state);
    REQUIRE(orders.size() == 1);
    return orders.front();
}

} // namespace

TEST_CASE("While something is open, what else is typed or scanned begins the line anew", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("3 x 8m 1200 30");
    desk.press(Qt::Key_Return);
    REQUIRE(QApplication::focusWidget() == &part<ChoiceList>(desk));
    SECTION("typed") {
        QTest::keyClick(QApplication::focusWidget(), 'T');
        QTest::keyClicks(QApplication::focusWidget(), "10 1250 25");
        desk.settle();
        CHECK(desk.counter().line().text().toUpper() == "T10 1250 25");
    }
    SECTION("a code that is scanned and begins with a digit chooses nothing") {
        scan("1A7-K");
        CHECK(desk.counter().line().text() == "1A7-K");
    }
    SECTION("a lone digit still chooses") {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_1);
        desk.settle();
        CHECK(desk.counter().inquiry().state() == Inquiry::State::Complete);
    }
    SECTION("Backspace goes back to what was typed") {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Backspace);
        CHECK(QApplication::focusWidget() == &desk.counter().line());
        CHECK(desk.counter().line().text() == "3 x 8m 1200 30");
    }
}

TEST_CASE("What was measured of one belt says nothing of the next one that is typed over it", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    MeasuredBelt measured;
    measured.profile = "T10";
    measured.belt = shop.belt("T10 1250");
    measured.probability = 1;
    desk.counter().takeMeasured(measured);
    desk.settle();
    desk.counter().line().selectAll();
    desk.type("H8M 1200 30");
    desk.press(Qt::Key_F9);
    CHECK(only(shop, store::OrderState::Open).lines.front().extent == mm(30));
}

TEST_CASE("A belt without a price is quoted only when the clerk was told", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("S8M 800 20"); // the shop never had one
    desk.press(Qt::Key_F8);
    CHECK(shop.orders(store::OrderState::Quoted).empty());
    CHECK(desk.window().toast().words().contains("no price"));
    CHECK(desk.counter().order().lines().size() == 1);
    desk.press(Qt::Key_F8);
    CHECK(shop.orders(store::OrderState::Quoted).size() == 1);
    CHECK(desk.counter().order().isEmpty());
}

TEST_CASE("A quote keeps its number when it is taken up, parked and ordered", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("H8M 1200 30");
    desk.press(Qt::Key_F8);
    const store::Order quote = only(shop, store::OrderState::Quoted);
    desk.type("T10 1250 25");
    desk.press(Qt::Key_F7); // another customer, parked after it
    desk.type("XL 414 037");
    desk.press(Qt::Key_F7);
    const auto parked = shop.orders(store::OrderState::Parked);
    REQUIRE(parked.size() == 2);
    SECTION("the list marks the one that was set aside last") {
        desk.answering([&](QDialog& dialog) {
            auto* list = dialog.findChild<QListWidget*>();
            CHECK(list->currentItem()->text().contains(QString::fromStdString(parked.back().code)));
        });
        desk.press(Qt::Key_F7);
    }
    SECTION("scanned it opens, F8 takes it up, F9 orders it") {
        desk.answering([](QDialog& dialog) {
            dialog.activateWindow();
            QApplication::processEvents();
            QTest::keyClick(&dialog, Qt::Key_F8);
        });
        desk.type(QString::fromStdString(quote.code));
        desk.press(Qt::Key_Return);
        REQUIRE(desk.counter().order().lines().size() == 1);
        CHECK(desk.counter().order().insteadCode == quote.code);
        desk.press(Qt::Key_F7);
        CHECK(shop.orders(store::OrderState::Quoted).empty());
        CHECK(store::Orders{shop.connection()}.at(quote.id).state == store::OrderState::Parked);
        emit shop.session().takeUpWanted(quote.id);
        desk.settle();
        desk.press(Qt::Key_F9);
        CHECK(only(shop, store::OrderState::Open).code == quote.code);
        CHECK(shop.orders(store::OrderState::Cancelled).empty());
    }
    SECTION("not while another order is in hand") {
        desk.type("H8M 1200 20");
        desk.press(Qt::Key_Return);
        emit shop.session().takeUpWanted(quote.id);
        CHECK(desk.counter().order().insteadCode.empty());
        CHECK(desk.window().toast().words().contains("Park it first"));
    }
}

TEST_CASE("A line that is looked at again keeps the way that was chosen for it, and why", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    auto* advice = desk.counter().findChild<Advice*>();
    desk.type("H8M 1200 30");
    desk.press(Qt::Key_Down);
    REQUIRE(advice->choseOther());
    const cutting::Plan chosen = advice->way()->plan;
    advice->setWhy({store::OverrideKey::OlderFirst, "the old one"});
    desk.press(Qt::Key_Return);
    desk.press(Qt::Key_F2);
    CHECK(desk.counter().line().text() == "H8M 1200 30");
    REQUIRE(advice->choseOther());
    CHECK(advice->way()->plan.mountings == chosen.mountings);
    REQUIRE(advice->why());
    CHECK(advice->why()->words == "the old one");
    SECTION("another width is another question") {
        desk.type("0");
        CHECK_FALSE(advice->choseOther());
    }
    SECTION("and it is ordered so") {
        const std::string piece = advice->outlook()->problem.pieces[chosen.mountings.front().piece].code;
        desk.press(Qt::Key_F9);
        const auto tickets =
            store::Tickets{shop.connection()}.ofOrder(only(shop, store::OrderState::Open).id);
        CHECK(store::Pieces{shop.connection()}.at(tickets.front().mountings.front().piece).code == piece);
    }
}

TEST_CASE("A window that closes parks what is on the slip", "[counter]") {
    DeskShop shop;
    {
        DeskWindow desk{shop};
        desk.type("H8M 1200 30");
        desk.press(Qt::Key_Return);
        desk.window().close();
    }
    CHECK(only(shop, store::OrderState::Parked).lines.front().extent == mm(30));
}

TEST_CASE("Ctrl+U asks who acts, also while one types", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("H8M 1200 30");
    bool asked = false;
    desk.answering([&](QDialog& dialog) { asked = qobject_cast<WhoDialog*>(&dialog) != nullptr; });
    desk.press(Qt::Key_U, Qt::ControlModifier);
    CHECK(asked);
    CHECK(desk.counter().line().text() == "H8M 1200 30");
}

TEST_CASE("What stock costs is told to the owner alone", "[counter]") {
    DeskShop shop;
    store::StockedBelt belt = *store::Catalogue{shop.connection()}.find(shop.belt("H8M 1200"));
    belt.sleeveCost = Money::minor(4'700);
    {
        store::Transaction transaction{shop.connection()};
        store::Catalogue{shop.connection()}.change(belt);
        transaction.commit();
    }
    DeskWindow desk{shop};
    desk.type("H8M 1200 30");
    CHECK(shownWords(part<SuggestionCard>(desk)).contains("EUR"));
    store::PersonId clerk{0};
    {
        store::Transaction transaction{shop.connection()};
        clerk = store::People{shop.connection()}.add("CL", "Cleo", store::Role::Clerk);
        transaction.commit();
    }
    shop.session().actAs(clerk);
    desk.counter().line().clear();
    desk.type("H8M 1200 30");
    const QString words = shownWords(part<SuggestionCard>(desk));
    CHECK(words.contains("of worth"));
    CHECK_FALSE(words.contains("EUR"));
}

TEST_CASE("A cord that the cutter is not made for is said before anything is ordered", "[counter]") {
    DeskShop shop;
    shop.piece("AT5 500", mm(380));
    DeskWindow desk{shop};
    store::ShopSettings settings = shop.session().settings();
    settings.cutters.front().cutter.cutsSteelCord = false;
    shop.session().save(settings);
    desk.type("AT5 500 25");
    CHECK(shownWords(part<UnderstoodStrip>(desk)).contains("Steel cord"));
    settings.cutters.push_back(settings.cutters.front()); // a second one that is made for it
    settings.cutters.back().id = store::CutterId{0};
    settings.cutters.back().cutter.name = "Second";
    settings.cutters.back().cutter.cutsSteelCord = settings.cutters.back().cutter.cutsPolyurethane = true;
    shop.session().save(settings);
    desk.counter().line().clear();
    desk.type("AT5 500 25");
    CHECK_FALSE(shownWords(part<UnderstoodStrip>(desk)).contains("Do not cut"));
}

TEST_CASE("What must not be cut here is quoted by the large key, and ordered only by one who was told",
          "[counter]") {
    DeskShop shop;
    shop.piece("AT5 500", mm(380));
    DeskWindow desk{shop};
    store::ShopSettings settings = shop.session().settings();
    settings.cutters.front().cutter.cutsSteelCord = false;
    shop.session().save(settings);
    desk.type("AT5 500 25");
    CHECK(shownWords(part<SuggestionCard>(desk)).contains("from the belt's maker"));
    const auto key = [&](Qt::Key wanted) {
        for (auto* button : desk.counter().findChildren<KeyButton*>())
            if (button->shownKey() == QKeySequence{wanted}) return button;
        FAIL("no such key");
        return static_cast<KeyButton*>(nullptr);
    };
    QApplication::processEvents();
    CHECK(key(Qt::Key_F8)->height() > key(Qt::Key_F9)->height());
    desk.press(Qt::Key_F9);
    CHECK(shop.orders(store::OrderState::Open).empty());
    CHECK(desk.window().toast().words().contains("F8 quotes"));
    SECTION("the same key again") {
        desk.press(Qt::Key_F9);
        CHECK(shop.orders(store::OrderState::Open).size() == 1);
    }
    SECTION("what lies ready is not cut: nothing is asked") {
        desk.press(Qt::Key_Delete, Qt::ControlModifier);
        shop.piece("AT5 500", mm(25), cutting::PieceKind::Ready);
        desk.type("AT5 500 25");
        QApplication::processEvents();
        CHECK(key(Qt::Key_F9)->height() > key(Qt::Key_F8)->height());
        desk.press(Qt::Key_F9);
        CHECK(shop.orders(store::OrderState::Ready).size() == 1);
    }
}

TEST_CASE("A known customer is offered below the name, and Enter still goes on", "[counter]") {
    DeskShop shop;
    store::Orders{shop.connection()}.customerNamed("Weirside Mill", "0123");
    OrderInHand hand;
    CustomerDialog dialog{shop.session(), hand};
    dialog.show();
    QLineEdit* name = nullptr;
    for (auto* field : dialog.findChildren<QLineEdit*>())
        if (field->accessibleName() == "Name") name = field;
    REQUIRE(name != nullptr);
    dialog.activateWindow();
    name->setFocus();
    QApplication::processEvents();
    QWidget* list = name->completer()->popup();
    SECTION("who typed it all presses Enter once") {
        QTest::keyClicks(name, "weirside mill");
        REQUIRE(list->isVisible());
        QTest::keyClick(list, Qt::Key_Return); // the list has the keys
        CHECK(dialog.result() == QDialog::Accepted);
        dialog.writeTo(hand);
        CHECK(hand.phone == "0123");
    }
    SECTION("who chose from the list goes on in the form") {
        QTest::keyClicks(name, "weir");
        QTest::keyClick(list, Qt::Key_Down);
        QTest::keyClick(list, Qt::Key_Return);
        CHECK(dialog.isVisible());
        CHECK(name->text() == "Weirside Mill");
        dialog.writeTo(hand);
        CHECK(hand.phone == "0123");
    }
}

TEST_CASE("An order can be wanted by a day, by a time of today, or both", "[counter]") {
    DeskShop shop;
    OrderInHand hand;
    CustomerDialog dialog{shop.session(), hand};
    QLineEdit* due = nullptr;
    for (auto* field : dialog.findChildren<QLineEdit*>())
        if (field->accessibleName() == "Wanted by") due = field;
    REQUIRE(due != nullptr);
    const auto local = [&] {
        dialog.writeTo(hand);
        REQUIRE(hand.due);
        return QDateTime::fromMSecsSinceEpoch(hand.due->time_since_epoch().count())
            .toString("yyyy-MM-dd HH:mm");
    };
    due->setText("16:00");
    CHECK(local() == "2026-03-02 16:00");
    due->setText("2026-03-05");
    CHECK(local() == "2026-03-05 17:00");
    due->setText("5.3.2026 9:30");
    CHECK(local() == "2026-03-05 09:30");
    for (const char* wrong : {"2026-13-40", "25:00", "tomorrow", "16:00 17:00", "2026-03-05 2026-03-06"}) {
        due->setText(wrong);
        dialog.writeTo(hand);
        CHECK_FALSE(hand.due);
        CHECK(shownWords(dialog).contains("16:00")); // what is expected, in words
    }
}

} // namespace riband::ui
