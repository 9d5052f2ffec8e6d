#include "core/shop/order.h"
#include "core/shop/shelf_ticket.h"
#include "tests/ui/bench/at_the_bench.h"
#include "ui/bench/bench_page.h"
#include "ui/desk/paper_tray.h"
#include "ui/window/toast.h"

#include <QCheckBox>
#include <QDir>
#include <QLabel>
#include <QListView>
#include <QSpinBox>

namespace riband::ui {

TEST_CASE("A cut is recorded by keys, and the ledger balances", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    REQUIRE(desk.window().bench().waiting() == 1);
    const std::int64_t before = onRack(shop);

    SECTION("as planned: Enter, and Enter again") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_F9);
        const auto ready = shop.orders(store::OrderState::Ready);
        REQUIRE(ready.size() == 1);
        CHECK(ready.front().lines.front().cut == 3);
        CHECK(desk.window().bench().waiting() == 0);
        CHECK(shop.disagreements().empty());
    }
    SECTION("one millimetre less was left: the difference is booked") {
        desk.answering([](QDialog& dialog) {
            type(dialog, "rest", "35");
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F9);
        CHECK(onRack(shop) == before - 128'500 + 35'000);
        CHECK(shop.disagreements().empty());
    }
    SECTION("labels are made for what goes back and for the belts") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_F9);
        CHECK(QDir{shop.papers()}.entryList({"label-*.pdf"}).size() == 1);
        CHECK(QDir{shop.papers()}.entryList({"belt-*.pdf"}).size() == 1);
    }
    SECTION("leaving the dialog books nothing") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Escape); });
        desk.press(Qt::Key_F9);
        CHECK(onRack(shop) == before);
        CHECK(desk.window().bench().waiting() == 1);
    }
}

TEST_CASE("Enter pressed once too often records no cut that nobody has made", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    shop::order(shop.session().shop(), {.lines = {{shop.belt("T10 1250"), mm(25), 1, "", std::nullopt, {}}},
                                        .customer = "",
                                        .phone = "",
                                        .due = std::nullopt,
                                        .note = ""});
    shop.session().touch();
    REQUIRE(desk.window().bench().waiting() == 2);
    auto* list = desk.window().bench().findChild<QListView*>();
    list->setFocus();
    desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    desk.press(Qt::Key_Return);
    REQUIRE(desk.window().bench().waiting() == 1);
    list->setFocus();
    bool opened = false;
    desk.answering([&](QDialog& dialog) {
        opened = true;
        dialog.reject();
    });
    desk.press(Qt::Key_Return); // the third
    CHECK_FALSE(opened);
    CHECK(desk.window().bench().waiting() == 1);
    CHECK(desk.window().toast().words().contains("F9"));
    desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    desk.press(Qt::Key_F9);
    CHECK(desk.window().bench().waiting() == 0);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A miscut is scrapped, planned again, and the order still stands", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    desk.answering([](QDialog& dialog) {
        dialog.findChild<QSpinBox*>("good1")->setValue(1);
        type(dialog, "spoiled", "28.6");
        const auto* difference = dialog.findChild<QLabel*>("difference");
        CHECK(difference->text().isEmpty()); // 128.5 less trim, one belt and the spoiled one: 67.4
        type(dialog, "left", "60");
        CHECK(difference->text().contains("7.4 mm less"));
        type(dialog, "left", "67.4");
        CHECK(difference->text().isEmpty());
        QTest::keyClick(&dialog, Qt::Key_Return);
    });
    desk.press(Qt::Key_F6);
    const auto open = shop.orders(store::OrderState::Open);
    REQUIRE(open.size() == 1);
    CHECK(open.front().lines.front().cut == 1);
    CHECK(desk.window().bench().waiting() == 1); // the two that are missing, on a new ticket
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A figure that can't have been measured is refused in words, and nothing is booked", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    const std::int64_t before = onRack(shop);
    const auto refused = [&](Qt::Key key, const char* field, const char* typed, const char* why) {
        INFO(field << " " << typed);
        bool stayed = false;
        QString words;
        desk.answering([&](QDialog& dialog) {
            type(dialog, field, typed);
            QTest::keyClick(&dialog, Qt::Key_Return);
            stayed = dialog.isVisible();
            words = dialog.findChild<QLabel*>("fieldWords")->text();
        });
        desk.press(key);
        CHECK(stayed);
        CHECK(words.contains(QString::fromUtf8(why)));
    };
    refused(Qt::Key_F9, "rest", "abc", "Rest as measured: Type the width in mm");
    refused(Qt::Key_F9, "rest", "900", "At most 128.5 mm can be meant here.");
    refused(Qt::Key_F6, "spoiled", "0", "Spoiled belt, its width: This must be more than nothing.");
    refused(Qt::Key_F6, "spoiled", "", "Spoiled belt, its width: Type the width in mm");
    CHECK(onRack(shop) == before);
    CHECK(desk.window().bench().waiting() == 1);
}

TEST_CASE("Belts for the shelf that were not cut stay with the rest", "[bench]") {
    DeskShop shop;
    const auto piece = shop.piece("H8M 960", mm(59), cutting::PieceKind::Remnant); // 2.5 + 30 leave 26.5
    DeskWindow desk{shop};
    desk.type("H8M 960 30");
    desk.press(Qt::Key_F9);
    desk.press(Qt::Key_2, Qt::ControlModifier);
    SECTION("cut as planned") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_F9);
        CHECK(store::Pieces{shop.connection()}.at(piece).gone());
    }
    SECTION("left out before it is cut: the ticket says so, and is made anew") {
        REQUIRE(shop::bench(shop.session().shop()).front().forShelf().size() == 1);
        desk.press(Qt::Key_Delete, Qt::ControlModifier);
        const auto row = shop::bench(shop.session().shop()).front();
        CHECK(row.forShelf().empty());
        CHECK(row.mounting.left == um(26'500));
        desk.answering([](QDialog& dialog) {
            auto* keep = dialog.findChild<QCheckBox*>("keep");
            CHECK_FALSE(keep->isChecked()); // the narrowest listed, 20, would need 27.5
            keep->setChecked(true);
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F9);
        CHECK(store::Pieces{shop.connection()}.at(piece).extent == um(26'500));
    }
    SECTION("not cut") {
        desk.answering([](QDialog& dialog) {
            dialog.findChild<QSpinBox*>("ofShelf1")->setValue(0);
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F9);
        CHECK(store::Pieces{shop.connection()}.at(piece).extent == um(26'500));
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A remnant is cut for the shelf from the Bench, or given up, and the list leaves as CSV",
          "[bench]") {
    DeskShop shop;
    const store::PieceId piece = shop.piece("XL 414", mm(60), cutting::PieceKind::Remnant);
    shop::cutForShelf(shop.session().shop(), piece, mm(20), 2);
    DeskWindow desk{shop};
    desk.press(Qt::Key_2, Qt::ControlModifier);
    REQUIRE(desk.window().bench().waiting() == 1);
    desk.press(Qt::Key_E, Qt::ControlModifier);
    QFile csv{QDir{shop.papers()}.filePath("bench-2026-03-02.csv")};
    REQUIRE(csv.open(QIODevice::ReadOnly));
    const QStringList lines = QString::fromUtf8(csv.readAll()).split("\r\n", Qt::SkipEmptyParts);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0] == "Ticket,Order,Customer,Belt,Piece,Place,Width (mm),Cuts,Wanted by");
    CHECK(lines[1].contains(",,,XL 414,"));

    SECTION("cut: two belts lie on the shelf with their labels") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_F9);
        CHECK(desk.window().bench().waiting() == 0);
        const auto kept = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(kept->id);
        CHECK(std::count_if(pieces.begin(), pieces.end(), [](const store::StockPiece& each) {
                  return each.kind == cutting::PieceKind::Ready && each.extent == mm(20);
              }) == 2);
    }
    SECTION("given up: the remnant is free again") {
        desk.press(Qt::Key_Delete, Qt::ControlModifier);
        CHECK(desk.window().bench().waiting() == 0);
        CHECK(store::Pieces{shop.connection()}.at(piece).reserved.isNone());
    }
    SECTION("its ticket says whom it is for") {
        const auto ticket = store::Tickets{shop.connection()}.inState(store::TicketState::Open).front();
        CHECK(QFile::exists(PaperTray{shop.session()}.ticket(ticket.id)));
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::ui
