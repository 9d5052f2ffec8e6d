// What comes in without a cost is said and marked; where it lies is proposed.
#include "core/shop/places.h"
#include "tests/ui/rack/at_the_rack.h"

#include <QComboBox>
#include <QTableView>

namespace riband::ui {

namespace {

QString wordsOf(QDialog& dialog, const char* name) {
    const auto* words = dialog.findChild<QLabel*>(QString::fromLatin1(name));
    REQUIRE(words != nullptr);
    return words->isVisible() ? words->text() : QString{};
}

QString cell(QDialog& dialog, int row, int column) {
    return dialog.findChild<QTableView*>()->model()->index(row, column).data().toString();
}

constexpr int CostColumn = 4, PlaceColumn = 5;

} // namespace

TEST_CASE("A belt whose cost nobody knows is said to be in no margin, before it is booked", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);
    answering(desk, [](QDialog& dialog) {
        QTest::keyClicks(&field(dialog, "belt"), "S8M 960");
        QApplication::processEvents();
        CHECK(wordsOf(dialog, "costless").contains("in no margin"));
        QTest::keyClicks(&field(dialog, "cost"), "61.50");
        CHECK(wordsOf(dialog, "costless").isEmpty());
        field(dialog, "cost").selectAll();
        QTest::keyClicks(&field(dialog, "cost"), "0"); // nothing is not what it cost
        CHECK(wordsOf(dialog, "costless").contains("in no margin"));
        QTest::keyClick(&field(dialog, "cost"), Qt::Key_Return);
        CHECK(cell(dialog, 0, CostColumn) == "unknown");
        CHECK(wordsOf(dialog, "costlessLines").startsWith("Without a cost: 1."));
        QTest::keyClicks(&field(dialog, "freight"), "5");
        CHECK(cell(dialog, 0, CostColumn) == "unknown, freight 5.00");
        auto* lines = dialog.findChild<QTableView*>();
        lines->selectRow(0);
        QTest::keyClick(&dialog, Qt::Key_F2);
        CHECK(field(dialog, "cost").text().isEmpty());
        QTest::keyClicks(&field(dialog, "cost"), "61.50");
        QTest::keyClick(&field(dialog, "cost"), Qt::Key_Return);
        CHECK(wordsOf(dialog, "costlessLines").isEmpty());
        QTest::keyClick(&dialog, Qt::Key_F9);
        dialog.reject();
    });
    desk.press(Qt::Key_F8);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Two belts of a delivery get two empty places, and two lines of one belt the same", "[rack]") {
    DeskShop shop;
    store::Places places{shop.connection()};
    store::Transaction transaction{shop.connection()};
    for (const char* name : {"D1", "D2"})
        places.named(name);
    transaction.commit();
    DeskWindow desk{shop};
    goToTheRack(desk);
    answering(desk, [](QDialog& dialog) {
        for (const char* belt : {"S8M 960", "T5 500", "S8M 960"}) {
            QTest::keyClicks(&field(dialog, "belt"), belt);
            QTest::keyClick(&field(dialog, "belt"), Qt::Key_Return);
        }
        CHECK(cell(dialog, 0, PlaceColumn) == "D1");
        CHECK(cell(dialog, 1, PlaceColumn) == "D2");
        CHECK(cell(dialog, 2, PlaceColumn) == "D1");
        QTest::keyClick(&dialog, Qt::Key_F9);
        dialog.reject();
    });
    desk.press(Qt::Key_F8);
}

} // namespace riband::ui
