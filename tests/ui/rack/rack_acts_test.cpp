// What is done to pieces that lie there.
#include "core/shop/undo.h"
#include "tests/ui/rack/at_the_rack.h"
#include "ui/rack/rack_page.h"

#include <QDir>
#include <QFile>

#include <algorithm>

namespace riband::ui {

TEST_CASE("A move, a division and a scrap go by keys, and the list leaves as CSV", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);

    SECTION("typing finds, F6 moves what was found and all that is scanned behind it") {
        desk.press(Qt::Key_X);
        desk.press(Qt::Key_L);
        const auto ready = store::Pieces{shop.connection()}.all();
        const auto other = std::find_if(ready.begin(), ready.end(), [](const auto& piece) {
            return piece.kind == cutting::PieceKind::Ready;
        });
        answering(desk, [&](QDialog& dialog) {
            for (const char* scanned : {"A9-9", "A9-9", other->code.c_str(), "A9-8", "A9-8"}) {
                QTest::keyClicks(&field(dialog, "scan"), scanned);
                QTest::keyClick(&field(dialog, "scan"), Qt::Key_Return);
            }
            QTest::keyClick(&dialog, Qt::Key_F9);
        });
        desk.press(Qt::Key_F6);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
        CHECK(store::Pieces{shop.connection()}.ofBelt(belt->id).front().place == "A9-9");
        CHECK(store::Pieces{shop.connection()}.at(other->id).place == "A9-8");
    }
    SECTION("a code without its dash is the piece, and never a new place") {
        const store::StockPiece piece = store::Pieces{shop.connection()}.all().front();
        std::string bare = piece.code;
        bare.erase(bare.find('-'), 1);
        answering(desk, [&](QDialog& dialog) {
            for (const char* scanned : {bare.c_str(), "A9-6", "A9-6", bare.c_str(), bare.c_str()}) {
                QTest::keyClicks(&field(dialog, "scan"), scanned);
                QTest::keyClick(&field(dialog, "scan"), Qt::Key_Return);
            }
            QTest::keyClick(&dialog, Qt::Key_F9);
        });
        desk.press(Qt::Key_F6);
        CHECK(store::Pieces{shop.connection()}.at(piece.id).place == "A9-6");
        const auto places = store::Pieces{shop.connection()}.places();
        CHECK(std::find(places.begin(), places.end(), bare) == places.end());
    }
    SECTION("several pieces in the hand go to one place, and what was only marked on the page stays") {
        const auto pieces = store::Pieces{shop.connection()}.all();
        const store::StockPiece marked = pieces.front(), one = pieces[1], two = pieces[2];
        desk.window().rack().showPiece(marked.id);
        desk.settle();
        answering(desk, [&](QDialog& dialog) {
            for (const char* scanned : {one.code.c_str(), two.code.c_str(), "A9-7", "A9-7"}) {
                QTest::keyClicks(&field(dialog, "scan"), scanned);
                QTest::keyClick(&field(dialog, "scan"), Qt::Key_Return);
            }
            QTest::keyClick(&dialog, Qt::Key_F9);
        });
        desk.press(Qt::Key_F6);
        CHECK(store::Pieces{shop.connection()}.at(one.id).place == "A9-7");
        CHECK(store::Pieces{shop.connection()}.at(two.id).place == "A9-7");
        CHECK(store::Pieces{shop.connection()}.at(marked.id).place == "B3-2");
    }
    SECTION("a piece is divided, and whole again when that is undone") {
        desk.press(Qt::Key_X);
        desk.press(Qt::Key_L);
        answering(desk, [](QDialog& dialog) {
            QTest::keyClick(&field(dialog, "apart"), Qt::Key_Return); // nothing said yet
            CHECK(dialog.isVisible());
            CHECK(saidWrong(dialog).contains("Type the width in mm"));
            QTest::keyClicks(&field(dialog, "apart"), "249.9");
            CHECK(saidWrong(dialog).contains("0.1 mm would be left: under 15 mm it can't be held."));
            field(dialog, "apart").clear();
            QTest::keyClicks(&field(dialog, "apart"), "250"); // all of it
            CHECK(saidWrong(dialog).contains("is only 250 mm: type less than that."));
            QTest::keyClick(&field(dialog, "apart"), Qt::Key_Return);
            CHECK(dialog.isVisible());
            field(dialog, "apart").clear();
            QTest::keyClicks(&field(dialog, "apart"), "100");
            CHECK(saidWrong(dialog).isEmpty());
            QTest::keyClick(&field(dialog, "apart"), Qt::Key_Return);
        });
        desk.press(Qt::Key_T, Qt::ControlModifier);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
        CHECK(store::Pieces{shop.connection()}.ofBelt(belt->id).size() == 2);
        answering(desk, [](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_Z, Qt::ControlModifier);
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(belt->id);
        REQUIRE(pieces.size() == 1);
        CHECK(pieces.front().extent == mm(250));
        CHECK(pieces.front().kind == cutting::PieceKind::Sleeve);
    }
    SECTION("the list is saved as a table") {
        desk.press(Qt::Key_E, Qt::ControlModifier);
        const QStringList files = QDir{shop.papers()}.entryList({"rack-*.csv"});
        REQUIRE(files.size() == 1);
        QFile file{QDir{shop.papers()}.filePath(files.front())};
        REQUIRE(file.open(QIODevice::ReadOnly));
        CHECK(file.readAll().count("\r\n") == 8); // the head and seven pieces
    }
    SECTION("a scrap asks for the reason and books it") {
        desk.press(Qt::Key_X);
        desk.press(Qt::Key_L);
        answering(desk, [](QDialog& dialog) {
            field(dialog, "extent").selectAll();
            CHECK(QApplication::focusWidget() == &field(dialog, "extent"));
            QTest::keyClicks(&field(dialog, "extent"), "251");
            QTest::keyClicks(&field(dialog, "grams"), "heavy");
            CHECK(saidWrong(dialog) == "Width or ribs (of 250 mm): At most 250 mm can be meant here.");
            QTest::keyClick(&dialog, Qt::Key_Return);
            CHECK(dialog.isVisible());
            field(dialog, "extent").selectAll();
            QTest::keyClicks(&field(dialog, "extent"), "50");
            CHECK(saidWrong(dialog).contains("Type a whole number from 1"));
            field(dialog, "grams").clear();
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_Delete, Qt::ControlModifier);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
        CHECK(store::Pieces{shop.connection()}.ofBelt(belt->id).front().extent == mm(200));
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::ui
