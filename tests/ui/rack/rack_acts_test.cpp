// What is done to pieces that lie there.
#include "core/shop/stock.h"
#include "core/shop/undo.h"
#include "tests/ui/rack/at_the_rack.h"
#include "ui/rack/rack_model.h"
#include "ui/rack/rack_page.h"

#include <QDir>
#include <QFile>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>

#include <algorithm>

namespace riband::ui {

TEST_CASE("A move, a division and a scrap go by keys, and the list leaves as CSV", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);

    SECTION(
        "typing finds, F6 moves what was found, taken in the hand by F6, and all that is scanned behind it") {
        desk.press(Qt::Key_X);
        desk.press(Qt::Key_L);
        const auto ready = store::Pieces{shop.connection()}.all();
        const auto other = std::find_if(ready.begin(), ready.end(), [](const auto& piece) {
            return piece.kind == cutting::PieceKind::Ready;
        });
        answering(desk, [&](QDialog& dialog) {
            QTest::keyClick(&dialog, Qt::Key_F6); // in the hand
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
    SECTION("a place that is scanned first moves nothing that was only marked") {
        const auto pieces = store::Pieces{shop.connection()}.all();
        const store::StockPiece marked = pieces.front(), one = pieces[1];
        desk.window().rack().showPiece(marked.id);
        desk.settle();
        answering(desk, [&](QDialog& dialog) {
            for (const char* scanned : {"A9-6", "A9-6", one.code.c_str()}) {
                QTest::keyClicks(&field(dialog, "scan"), scanned);
                QTest::keyClick(&field(dialog, "scan"), Qt::Key_Return);
            }
            QTest::keyClick(&dialog, Qt::Key_F9);
        });
        desk.press(Qt::Key_F6);
        CHECK(store::Pieces{shop.connection()}.at(one.id).place == "A9-6");
        CHECK(store::Pieces{shop.connection()}.at(marked.id).place == marked.place);
    }
    SECTION("what is wrong in a division lies over no field") {
        desk.window().rack().showPiece(store::Pieces{shop.connection()}.all().front().id);
        desk.settle();
        answering(desk, [](QDialog& dialog) {
            QTest::keyClicks(&field(dialog, "apart"), "4000");
            QTest::keyClick(&field(dialog, "apart"), Qt::Key_Return);
            QApplication::processEvents();
            CHECK(field(dialog, "place").height() >= field(dialog, "place").minimumSizeHint().height());
            const auto over = [&](const QWidget& widget) {
                return QRect{widget.mapTo(&dialog, QPoint{}), widget.size()};
            };
            const auto* words = dialog.findChild<QLabel*>("fieldWords");
            CHECK_FALSE(over(*words).intersects(over(field(dialog, "place"))));
            CHECK_FALSE(over(field(dialog, "apart")).intersects(over(field(dialog, "place"))));
            dialog.reject();
        });
        desk.press(Qt::Key_T, Qt::ControlModifier);
    }
    SECTION("Ctrl+P asks on which printer, and the label is kept as well") {
        desk.window().rack().showPiece(store::Pieces{shop.connection()}.all().front().id);
        desk.settle();
        answering(desk, [](QDialog& dialog) {
            CHECK(dialog.inherits("QPrintDialog"));
            dialog.reject();
        });
        desk.press(Qt::Key_P, Qt::ControlModifier);
        CHECK(QDir{shop.papers()}.entryList({"label-*.pdf"}).size() == 1);
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
        const QByteArray table = file.readAll();
        CHECK(table.count("\r\n") == 8);                               // the head and seven pieces
        CHECK(table.startsWith("Code,Belt,Width (mm),Width (ribs),")); // figures are plain numbers
        CHECK(table.contains(",128.5,,"));
        CHECK_FALSE(table.contains("128.5 mm"));
        desk.press(Qt::Key_E, Qt::ControlModifier); // the first one stays
        CHECK(QDir{shop.papers()}.entryList({"rack-*.csv"}).size() == 2);
        desk.press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
        CHECK(QDir{shop.papers()}.entryList({"life-*.csv"}).size() == 1);
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

TEST_CASE("A piece that is gone is found by its code, and what made it go is undone there", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);
    const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
    const store::StockPiece piece = store::Pieces{shop.connection()}.ofBelt(belt->id).front();
    desk.window().rack().showPiece(piece.id);
    desk.settle();
    answering(desk, [](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    desk.press(Qt::Key_Delete, Qt::ControlModifier); // all of it
    desk.settle();
    REQUIRE(store::Pieces{shop.connection()}.at(piece.id).gone());

    auto& words = *desk.window().rack().findChild<QLineEdit*>();
    words.setFocus();
    QTest::keyClicks(&words, QString::fromStdString(piece.code).remove('-').toLower());
    desk.settle();
    auto& list = *desk.window().rack().findChild<QTableView*>("pieces");
    REQUIRE(list.model()->rowCount() == 1);
    CHECK(list.model()->index(0, RackModel::KindColumn).data().toString() == "gone");
    answering(desk, [](QDialog& dialog) {
        CHECK_FALSE(dialog.findChildren<QLabel*>().isEmpty()); // its life is drawn
        dialog.reject();
    });
    desk.press(Qt::Key_F9);
    answering(desk, [](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    desk.press(Qt::Key_Z, Qt::ControlModifier); // of the act, not of what was typed
    desk.settle();
    CHECK(store::Pieces{shop.connection()}.at(piece.id).extent == mm(250));
    CHECK_FALSE(words.text().isEmpty());
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Ctrl+Z in the search undoes no typing, whatever is chosen", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);
    auto& words = *desk.window().rack().findChild<QLineEdit*>();
    words.setFocus();
    QTest::keyClicks(&words, "nothing like it");
    desk.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(words.text() == "nothing like it");
}

TEST_CASE("A long family scrolls by keys, and its sum is always to be seen", "[rack]") {
    DeskShop shop;
    const auto piece = shop.piece("T5 500", mm(300));
    for (int i = 0; i < 20; ++i)
        shop::scrap(shop.session().shop(), piece, mm(1), store::ScrapReason::Damaged, "");
    DeskWindow desk{shop};
    goToTheRack(desk);
    desk.window().rack().showPiece(piece);
    desk.settle();
    answering(desk, [](QDialog& dialog) {
        auto& bar = *dialog.findChild<QScrollArea*>()->verticalScrollBar();
        CHECK(bar.maximum() > 0);
        const auto press = [&](Qt::Key key) {
            QTest::keyClick(QApplication::focusWidget(), key);
            return bar.value();
        };
        CHECK(press(Qt::Key_End) == bar.maximum());
        CHECK(press(Qt::Key_Home) == 0);
        const int line = press(Qt::Key_Down);
        CHECK(line > 0);
        CHECK(press(Qt::Key_PageDown) > 2 * line);
        auto& sum = *dialog.findChild<QLabel*>("sum");
        CHECK(sum.text().contains("300 mm came in"));
        CHECK(dialog.rect().contains(QRect{sum.mapTo(&dialog, QPoint{}), sum.size()}));
        dialog.reject();
    });
    desk.press(Qt::Key_F9);
}

} // namespace riband::ui
