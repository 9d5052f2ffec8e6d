#include "tests/ui/desk_fixture.h"
#include "ui/counter/advice.h"
#include "ui/counter/counter_page.h"
#include "ui/counter/slip_model.h"
#include "ui/window/toast.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QTest>

namespace riband::ui {

namespace {

/// The one open order, which a test has just made.
store::Order theOrder(DeskShop& shop) {
    const auto orders = shop.orders(store::OrderState::Open);
    REQUIRE(orders.size() == 1);
    return orders.front();
}

} // namespace

TEST_CASE("A plain sale is the code, Enter and F9: order, ticket and reservation are there", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_Return);
    CHECK(desk.counter().order().lines().size() == 1);
    CHECK(desk.counter().line().text().isEmpty());
    desk.press(Qt::Key_F9);

    const store::Order order = theOrder(shop);
    REQUIRE(order.lines.size() == 1);
    CHECK(order.lines.front().quantity == 3);
    CHECK(order.lines.front().extent == mm(30));
    const auto tickets = store::Tickets{shop.connection()}.ofOrder(order.id);
    REQUIRE(tickets.size() == 1);
    REQUIRE(tickets.front().mountings.size() == 1);
    const auto piece = store::Pieces{shop.connection()}.at(tickets.front().mountings.front().piece);
    CHECK(piece.reserved == um(92'500)); // trim 2.5 and three belts of 30
    const QString ticket = QString::fromStdString(tickets.front().code);
    CHECK(QDir{shop.papers()}.exists("ticket-" + ticket + ".pdf"));
    INFO(desk.window().toast().words().toStdString());
    CHECK(desk.window().toast().words().contains(ticket));
    CHECK(desk.counter().order().isEmpty());
    CHECK(shop.disagreements().empty());
}

TEST_CASE("F9 takes what is typed along, so a plain sale needs no Enter", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("H8M 1200 30");
    desk.press(Qt::Key_F9);
    CHECK(theOrder(shop).lines.size() == 1);
}

TEST_CASE("Another thread looks at the shop, and one who is quicker than it loses no key", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    auto* advice = desk.counter().findChild<Advice*>();
    REQUIRE(advice != nullptr);
    QTest::keyClicks(&desk.counter().line(), "3 x H8M 1200 30"); // nobody has told the window anything yet
    CHECK_FALSE(desk.counter().settled());
    CHECK(advice->outlook() == nullptr);
    SECTION("in time") {
        desk.settle();
        REQUIRE(advice->outlook() != nullptr);
        CHECK(advice->outlook()->pieces.size() == 3);
    }
    SECTION("F9 at once") {
        QTest::keyClick(&desk.counter().line(), Qt::Key_F9);
        CHECK(theOrder(shop).lines.front().quantity == 3);
        desk.settle();
        CHECK(desk.counter().order().isEmpty());
        CHECK(advice->outlook() == nullptr); // what the thread found is not wanted any more
    }
    SECTION("an ambiguous belt, and Alt with the digit at once") {
        desk.counter().line().clear();
        QTest::keyClicks(&desk.counter().line(), "3 x 8m 1200 30");
        QTest::keyClick(&desk.counter().line(), Qt::Key_1, Qt::AltModifier);
        CHECK(desk.counter().inquiry().state() == Inquiry::State::Complete);
    }
    SECTION("F9 at once for what is not here: nothing is ordered, nothing lost") {
        desk.counter().line().clear();
        QTest::keyClicks(&desk.counter().line(), "H8M 960 50");
        QTest::keyClick(&desk.counter().line(), Qt::Key_F9);
        CHECK(shop.orders(store::OrderState::Open).empty());
        CHECK(desk.counter().line().text() == "H8M 960 50");
    }
}

TEST_CASE("A shop that can't be read any more is said, and what was typed stays", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    REQUIRE(QFile::rename(shop.file(), shop.file() + ".away"));
    desk.type("3 x H8M 1200 30");
    CHECK(desk.window().toast().words().contains("shop.riband"));
    CHECK(desk.counter().line().text() == "3 x H8M 1200 30");
    CHECK(desk.counter().findChild<Advice*>()->outlook() == nullptr);
}

TEST_CASE("An ambiguous belt is asked about; Enter and a digit choose, and F9 sells it", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("3 x 8m 1200 30");
    CHECK(desk.counter().inquiry().state() == Inquiry::State::Asks);
    SECTION("three keys after the code") {
        desk.press(Qt::Key_Return);
        desk.press(Qt::Key_1);
        CHECK(desk.counter().inquiry().state() == Inquiry::State::Complete);
        desk.press(Qt::Key_F9);
        const store::Order order = theOrder(shop);
        CHECK(store::Catalogue{shop.connection()}.at(order.lines.front().belt).designation == "H8M 1200");
        CHECK(order.lines.front().quantity == 3);
    }
    SECTION("before it is chosen F9 orders nothing and loses nothing") {
        desk.press(Qt::Key_F9);
        CHECK(shop.orders(store::OrderState::Open).empty());
        CHECK(desk.counter().line().text() == "3 x 8m 1200 30");
    }
}

TEST_CASE("A belt without width is not ordered: the width is asked for", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("H8M 1200");
    CHECK(desk.counter().inquiry().question() == belt::Question::HowWide);
    desk.press(Qt::Key_F9);
    CHECK(shop.orders(store::OrderState::Open).empty());
    desk.counter().line().setFocus();
    desk.type(" 30");
    desk.press(Qt::Key_F9);
    CHECK(theOrder(shop).lines.front().extent == mm(30));
}

TEST_CASE("A ready belt is sold without a ticket: there is nothing to cut", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    std::optional<store::StockPiece> belt;
    for (const auto& piece : store::Pieces{shop.connection()}.all())
        if (piece.kind == cutting::PieceKind::Ready) belt = piece;
    desk.type("PJ 1194 6");
    desk.press(Qt::Key_F9);
    const auto ready = shop.orders(store::OrderState::Ready);
    REQUIRE(ready.size() == 1);
    CHECK(ready.front().lines.front().extent == Extent{Ribs{6}});
    const QString told = desk.window().toast().words();
    REQUIRE(belt);
    CHECK(told.contains(QString::fromStdString(belt->code + " (" + belt->place + ")"))); // to be fetched
}

TEST_CASE("What is not here is not ordered, but can be quoted", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("H8M 960 50");
    desk.press(Qt::Key_F9);
    CHECK(shop.orders(store::OrderState::Open).empty());
    CHECK(desk.counter().line().text() == "H8M 960 50"); // nothing is lost
    desk.press(Qt::Key_F8);
    desk.press(Qt::Key_F8); // it has no price, and the clerk was told
    CHECK(shop.orders(store::OrderState::Quoted).size() == 1);
    CHECK(desk.counter().order().isEmpty());
}

TEST_CASE("What is not here is offered in the nearest length that is, by one key", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("2 x XL 416 037");
    desk.press(Qt::Key_1, Qt::AltModifier);
    REQUIRE(desk.counter().inquiry().wanted());
    CHECK(desk.counter().inquiry().wanted()->belt == shop.belt("XL 414"));
    CHECK(desk.counter().inquiry().wanted()->quantity == 2);
    desk.press(Qt::Key_F9);
    CHECK(theOrder(shop).lines.front().quantity == 2);
}

TEST_CASE("An interrupted sale is parked, another served, and it is taken up again", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("2 x T10 1250 25");
    desk.press(Qt::Key_F7);
    CHECK(shop.orders(store::OrderState::Parked).size() == 1);
    desk.type("PJ 1194 6");
    desk.press(Qt::Key_F9);
    desk.answering([](QDialog& dialog) { dialog.accept(); });
    desk.press(Qt::Key_F7);
    REQUIRE(desk.counter().order().lines().size() == 1);
    CHECK(desk.counter().order().lines().front().line.quantity == 2);
    desk.press(Qt::Key_F9);
    INFO(desk.window().toast().words().toStdString());
    CHECK(theOrder(shop).lines.front().quantity == 2);
    CHECK(shop.orders(store::OrderState::Parked).empty());
}

TEST_CASE("The arrows choose another way, and the order is cut that way", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_Down);
    desk.press(Qt::Key_Return);
    REQUIRE(desk.counter().order().lines().size() == 1);
    const auto& line = desk.counter().order().lines().front().line;
    REQUIRE(line.way);
    const std::string chosen = line.wayPieces.at(line.way->mountings.front().piece);
    desk.press(Qt::Key_F9);
    const auto ticket = store::Tickets{shop.connection()}.ofOrder(theOrder(shop).id).front();
    CHECK(store::Pieces{shop.connection()}.at(ticket.mountings.front().piece).code == chosen);
}

TEST_CASE("A line is changed in its place, and removed", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("2 x T10 1250 25");
    desk.press(Qt::Key_Return);
    desk.type("H8M 1200 30");
    desk.press(Qt::Key_Return);
    REQUIRE(desk.counter().order().lines().size() == 2);
    desk.press(Qt::Key_F2);
    CHECK(desk.counter().line().text() == "H8M 1200 30");
    desk.type("4 x H8M 1200 30");
    desk.press(Qt::Key_Return);
    REQUIRE(desk.counter().order().lines().size() == 2);
    CHECK(desk.counter().order().lines()[1].line.quantity == 4);
    desk.press(Qt::Key_Delete, Qt::ControlModifier);
    REQUIRE(desk.counter().order().lines().size() == 1);
    CHECK(desk.counter().order().lines()[0].line.quantity == 2);
}

TEST_CASE("Ctrl+Z brings no line back that stands on the slip or is ordered", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("2 x T10 1250 25");
    desk.press(Qt::Key_Return);
    desk.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(desk.counter().line().text().isEmpty());
    desk.type("H8M 1200 30");
    desk.press(Qt::Key_F9);
    desk.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(desk.counter().line().text().isEmpty());
    CHECK(shop.orders(store::OrderState::Open).size() == 1);
}

TEST_CASE("Lines of a belt say where all of them are cut from now, not where the first would have been",
          "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    const auto source = [&](std::size_t line) { return desk.counter().order().lines()[line].source; };
    desk.type("H8M 1200 85");
    desk.press(Qt::Key_Return);
    const std::string alone = source(0);
    CHECK(alone.find("remnant") != std::string::npos); // of 101 or 128.5
    desk.type("3 x H8M 1200 85");
    desk.press(Qt::Key_Return);
    CHECK(source(0) != alone); // four of them: no remnant gives that
    CHECK(source(0) == source(1));
    desk.press(Qt::Key_Delete, Qt::ControlModifier);
    CHECK(source(0).empty());
}

TEST_CASE("While a line of a belt is looked at again, its other line comes from what the card says",
          "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    for (const char* line : {"H8M 1200 30", "H8M 1200 50"}) {
        desk.type(QString::fromLatin1(line));
        desk.press(Qt::Key_Return);
    }
    const auto* slip = desk.counter().findChild<SlipModel*>();
    const auto* advice = desk.counter().findChild<Advice*>();
    const auto from = [&](int row) { return slip->index(row).data(SlipModel::RemarkRole).toString(); };
    const auto onCard = [&] {
        const auto& plan = advice->way()->plan;
        return QString::fromStdString(advice->outlook()->problem.pieces[plan.mountings.front().piece].code);
    };
    desk.press(Qt::Key_F2); // the second
    desk.settle();
    CHECK(from(0).contains(onCard()));
    desk.type("3 x H8M 1200 85"); // no remnant gives that and 30
    CHECK(from(0).contains(onCard()));
    SECTION("no way of one's own for a line that is planned with others") {
        desk.counter().line().selectAll();
        desk.type("H8M 1200 55"); // with 30 also 101 or 128.5 would give it
        REQUIRE(advice->suggestion());
        REQUIRE_FALSE(advice->suggestion()->others.empty());
        desk.press(Qt::Key_Down);
        CHECK_FALSE(advice->choseOther());
        CHECK(desk.window().toast().words().contains("together"));
    }
    SECTION("what the card says is what is ordered") {
        const QString card = onCard();
        desk.press(Qt::Key_F9);
        const auto ticket = store::Tickets{shop.connection()}.ofOrder(theOrder(shop).id).front();
        CHECK(QString::fromStdString(
                  store::Pieces{shop.connection()}.at(ticket.mountings.front().piece).code) == card);
    }
    SECTION("declined belts for the shelf are declined for both") {
        desk.press(Qt::Key_Escape);
        desk.type("H8M 1200 20");
        const bool fills = advice->withShelf()->fillsShelf();
        if (fills) desk.press(Qt::Key_F6);
        desk.press(Qt::Key_Return);
        for (const SlipLine& line : desk.counter().order().lines())
            CHECK(line.line.noShelf == fills);
    }
}

TEST_CASE("The line that is changed or removed next is marked, and chosen by keys from the line",
          "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    const auto marked = [&] {
        std::vector<int> rows;
        const auto* slip = desk.counter().findChild<SlipModel*>();
        for (int row = 0; row < slip->rowCount(); ++row)
            if (slip->index(row).data(SlipModel::ChosenRole).toBool()) rows.push_back(row);
        return rows;
    };
    desk.type("2 x T10 1250 25");
    desk.press(Qt::Key_Return);
    CHECK(marked().empty()); // there is only one
    desk.type("H8M 1200 30");
    CHECK(marked() == std::vector{0}); // the second is not added yet
    desk.press(Qt::Key_Return);
    CHECK(marked() == std::vector{1});
    desk.press(Qt::Key_Up, Qt::ControlModifier);
    CHECK(marked() == std::vector{0});
    CHECK(desk.counter().line().hasFocus());
    desk.press(Qt::Key_Up, Qt::ControlModifier);
    CHECK(marked() == std::vector{0});
    desk.press(Qt::Key_F2);
    CHECK(desk.counter().line().text() == "2 x T10 1250 25");
    desk.press(Qt::Key_Escape);
    desk.press(Qt::Key_Delete, Qt::ControlModifier);
    REQUIRE(desk.counter().order().lines().size() == 1);
    CHECK(desk.counter().order().lines().front().line.said == "H8M 1200 30");
}

TEST_CASE("The order's lines, the other ways and what is parked leave as CSV", "[counter]") {
    DeskShop shop;
    DeskWindow desk{shop};
    const auto saved = [&](const char* name) {
        QFile file{
            QDir{shop.papers()}.filePath(QStringLiteral("%1-2026-03-02.csv").arg(QLatin1String(name)))};
        REQUIRE(file.open(QIODevice::ReadOnly));
        return QString::fromUtf8(file.readAll()).split("\r\n", Qt::SkipEmptyParts);
    };
    desk.press(Qt::Key_E, Qt::ControlModifier); // nothing yet: it says so, and makes no file
    CHECK_FALSE(QDir{shop.papers()}.exists("order-lines-2026-03-02.csv"));
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(saved("ways").size() > 1);
    desk.press(Qt::Key_Return);
    desk.press(Qt::Key_E, Qt::ControlModifier);
    const QStringList lines = saved("order-lines");
    REQUIRE(lines.size() == 2);
    CHECK(lines[1].startsWith("3,H8M 1200,30,3 x H8M 1200 30,"));
    desk.press(Qt::Key_F7); // parked
    desk.answering([](QDialog& dialog) {
        dialog.activateWindow();
        QApplication::processEvents();
        QTest::keyClick(&dialog, Qt::Key_E, Qt::ControlModifier);
        dialog.reject();
    });
    desk.press(Qt::Key_F7, Qt::ShiftModifier);
    CHECK(saved("parked").size() == 2);
}

} // namespace riband::ui
