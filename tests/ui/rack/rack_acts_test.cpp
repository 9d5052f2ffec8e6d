// What is done to pieces that lie there.
#include "core/shop/undo.h"
#include "tests/ui/rack/at_the_rack.h"

#include <QDir>
#include <QFile>

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
            for (const char* scanned : {"A9-9", other->code.c_str(), "A9-8"}) {
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
    SECTION("a piece is divided, and whole again when that is undone") {
        desk.press(Qt::Key_X);
        desk.press(Qt::Key_L);
        answering(desk, [](QDialog& dialog) {
            QTest::keyClicks(&field(dialog, "apart"), "100");
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
            QTest::keyClicks(&field(dialog, "extent"), "50");
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_Delete, Qt::ControlModifier);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
        CHECK(store::Pieces{shop.connection()}.ofBelt(belt->id).front().extent == mm(200));
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::ui
