// What comes onto the rack: expected, delivered, taken over.
#include "core/shop/receive.h"
#include "tests/ui/rack/at_the_rack.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QFile>
#include <QMessageBox>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QTableWidget>

namespace riband::ui {

TEST_CASE("A delivery is expected, changed, booked in part and dropped by keys", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);
    const auto retype = [](QDialog& dialog, const char* name, const char* words) {
        field(dialog, name).selectAll();
        QTest::keyClicks(&field(dialog, name), words);
    };
    const auto expected = [&] { return store::Goods{shop.connection()}.expected(); };
    const auto inTheList = [&](Qt::Key key, Qt::KeyboardModifiers modifiers,
                               const std::function<void(QDialog&)>& answer) {
        answering(desk, [&](QDialog& list) {
            answering(desk, answer);
            QTest::keyClick(&list, key, modifiers);
            QTest::keyClick(&list, Qt::Key_Escape);
        });
        desk.press(Qt::Key_F8, Qt::ShiftModifier);
    };

    inTheList(Qt::Key_F8, Qt::NoModifier, [&](QDialog& form) {
        QTest::keyClicks(&field(form, "belt"), "S8M 960");
        retype(form, "width", "400");
        QTest::keyClicks(&field(form, "cost"), "61.50");
        QTest::keyClick(&field(form, "cost"), Qt::Key_Return);
        QTest::keyClicks(&field(form, "belt"), "T10 1250");
        retype(form, "width", "470");
        QTest::keyClicks(&field(form, "supplier"), "Mill Supply");
        QTest::keyClicks(&field(form, "reference"), "P-17");
        QTest::keyClicks(&field(form, "due"), "31.2.2026"); // no such day
        QTest::keyClick(&form, Qt::Key_F9);
        CHECK(form.isVisible());
        retype(form, "due", "2026-03-09");
        QTest::keyClick(&form, Qt::Key_F9); // the line that is typed belongs to it
    });
    REQUIRE(expected().size() == 1);
    CHECK(expected().front().supplier == "Mill Supply");
    CHECK(expected().front().due == readDate("2026-03-09"));
    REQUIRE(expected().front().lines.size() == 2);
    CHECK(expected().front().lines[0].costEach == Money::minor(6150));
    CHECK(expected().front().lines[1].extent == mm(470));

    inTheList(Qt::Key_F2, Qt::NoModifier, [&](QDialog& form) {
        auto* count = form.findChild<QSpinBox*>(QStringLiteral("count"));
        REQUIRE(count != nullptr);
        QTest::keyClick(&form, Qt::Key_F2); // the first line into the form
        count->selectAll();
        QTest::keyClicks(count, "3");
        QTest::keyClick(count, Qt::Key_Return);
        auto* lines = form.findChild<QTableWidget*>();
        lines->setFocus();
        QTest::keyClick(lines, Qt::Key_Down);
        QTest::keyClick(lines, Qt::Key_Delete, Qt::ControlModifier);
        QTest::keyClick(&form, Qt::Key_F9);
    });
    REQUIRE(expected().front().lines.size() == 1);
    CHECK(expected().front().lines[0].sleeves == 3);

    answering(desk, [&](QDialog& dialog) {
        auto* choice = dialog.findChild<QComboBox*>(QStringLiteral("expected"));
        REQUIRE(choice != nullptr);
        choice->setFocus();
        QTest::keyClick(choice, Qt::Key_Down);
        QTest::keyClick(&dialog, Qt::Key_F9);
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    desk.press(Qt::Key_F8);
    CHECK(expected().empty()); // all three came
    const auto kept = store::Catalogue{shop.connection()}.find(shop.belt("S8M 960"));
    REQUIRE(kept);
    CHECK(store::Pieces{shop.connection()}.ofBelt(kept->id).size() == 3);

    inTheList(Qt::Key_F8, Qt::NoModifier, [&](QDialog& form) {
        QTest::keyClicks(&field(form, "belt"), "XL 414");
        QTest::keyClick(&form, Qt::Key_F9);
    });
    REQUIRE(expected().size() == 1);
    inTheList(Qt::Key_Delete, Qt::ControlModifier,
              [](QDialog& question) { QTest::keyClick(&question, Qt::Key_Return); });
    CHECK(expected().empty());
    CHECK(shop.disagreements().empty());
}

namespace {

/// What a person types where the keys are.
void typeHere(const QString& words) {
    REQUIRE(QApplication::focusWidget() != nullptr);
    QTest::keyClicks(QApplication::focusWidget(), words);
}

} // namespace

TEST_CASE("What is typed first goes into the first field", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);
    SECTION("of Goods in, when it opens and when it has booked") {
        answering(desk, [](QDialog& dialog) {
            typeHere("S8M 960");
            CHECK(field(dialog, "belt").text() == "S8M 960");
            QTest::keyClick(&dialog, Qt::Key_F9);
            typeHere("T10 1250");
            CHECK(field(dialog, "belt").text() == "T10 1250");
            field(dialog, "belt").clear();
        });
        desk.press(Qt::Key_F8);
    }
    SECTION("of what is expected") {
        answering(desk, [&](QDialog& list) {
            answering(desk, [](QDialog& form) {
                typeHere("S8M 960");
                CHECK(field(form, "belt").text() == "S8M 960");
            });
            QTest::keyClick(&list, Qt::Key_F8);
        });
        desk.press(Qt::Key_F8, Qt::ShiftModifier);
    }
    SECTION("of a move, a division and a take-over") {
        const auto opens = [&](Qt::Key key, Qt::KeyboardModifiers modifiers, const char* name) {
            answering(desk, [name](QDialog& dialog) {
                typeHere("7");
                CHECK(field(dialog, name).text() == "7");
            });
            desk.press(key, modifiers);
        };
        opens(Qt::Key_F6, Qt::NoModifier, "scan");
        opens(Qt::Key_T, Qt::ControlModifier, "apart");
        opens(Qt::Key_O, Qt::ControlModifier, "path");
    }
}

TEST_CASE("A line that was entered goes back into the form by F2", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);
    answering(desk, [](QDialog& dialog) {
        QTest::keyClicks(&field(dialog, "belt"), "XL 414");
        field(dialog, "cost").selectAll();
        QTest::keyClicks(&field(dialog, "cost"), "61.50");
        QTest::keyClick(&field(dialog, "cost"), Qt::Key_Return);
        QTest::keyClicks(&field(dialog, "belt"), "T10 1250");
        field(dialog, "cost").selectAll();
        QTest::keyClicks(&field(dialog, "cost"), "1");
        QTest::keyClick(&field(dialog, "cost"), Qt::Key_Return);
        auto* lines = dialog.findChild<QTableView*>();
        REQUIRE(lines->model()->rowCount() == 2);
        lines->selectRow(0);
        QTest::keyClick(&dialog, Qt::Key_F2);
        CHECK(field(dialog, "belt").text() == "XL 414");
        CHECK(field(dialog, "cost").text() == "61.50");
        QTest::keyClicks(&field(dialog, "batch"), "L-9");
        QTest::keyClicks(&field(dialog, "made"), "2026-01-31");
        QTest::keyClick(&field(dialog, "batch"), Qt::Key_Return);
        CHECK(lines->model()->rowCount() == 2);
        QTest::keyClick(&dialog, Qt::Key_F9);
        dialog.reject();
    });
    desk.press(Qt::Key_F8);
    const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
    const auto pieces = store::Pieces{shop.connection()}.ofBelt(belt->id);
    REQUIRE(pieces.size() == 2);
    const auto& came = pieces[0].batch == "L-9" ? pieces[0] : pieces[1];
    CHECK(came.batch == "L-9");
    CHECK(came.made == readDate("2026-01-31"));
    CHECK(came.place == "B3-2"); // where the same belt lies
}

TEST_CASE("What a sleeve cost last is proposed, and that it was cleared is said once", "[rack]") {
    DeskShop shop;
    {
        store::Transaction transaction{shop.connection()};
        store::StockedBelt belt = store::Catalogue{shop.connection()}.find(shop.belt("T10 1250")).value();
        belt.sleeveCost = Money::minor(8'000);
        belt.newSleeve = mm(400);
        store::Catalogue{shop.connection()}.change(belt);
        transaction.commit();
    }
    DeskWindow desk{shop};
    goToTheRack(desk);
    answering(desk, [](QDialog& dialog) {
        QTest::keyClicks(&field(dialog, "belt"), "T10 1250");
        field(dialog, "width").selectAll();
        QTest::keyClicks(&field(dialog, "width"), "200");
        CHECK(field(dialog, "cost").text() == "40.00"); // half a sleeve
        auto* lines = dialog.findChild<QTableView*>();
        field(dialog, "cost").setFocus();
        field(dialog, "cost").selectAll();
        QTest::keyClick(&field(dialog, "cost"), Qt::Key_Delete);
        QTest::keyClick(&field(dialog, "cost"), Qt::Key_Return);
        CHECK(lines->model()->rowCount() == 0);
        CHECK(saidWrong(dialog).startsWith("Cost of each: No cost is typed"));
        QTest::keyClick(&field(dialog, "cost"), Qt::Key_Return);
        CHECK(lines->model()->rowCount() == 1);
        QTest::keyClick(&dialog, Qt::Key_F9);
        dialog.reject();
    });
    desk.press(Qt::Key_F8);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Goods in says what a wrong field wants, and books nothing of it", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);
    const std::size_t before = store::Pieces{shop.connection()}.all().size();
    answering(desk, [](QDialog& dialog) {
        QTest::keyClicks(&field(dialog, "belt"), "T10 1250");
        const auto wrong = [&](const char* name, const char* typed, const char* expected) {
            INFO(name << " " << typed);
            const QString right = field(dialog, name).text();
            field(dialog, name).selectAll();
            QTest::keyClicks(&field(dialog, name), typed);
            CHECK(saidWrong(dialog).contains(QString::fromLatin1(expected)));
            QTest::keyClick(&field(dialog, name), Qt::Key_Return);
            QTest::keyClick(&dialog, Qt::Key_F9);
            CHECK(field(dialog, "belt").text() == "T10 1250"); // the line is still here
            CHECK(QApplication::focusWidget() == &field(dialog, name));
            field(dialog, name).setText(right);
            CHECK(saidWrong(dialog).isEmpty());
        };
        wrong("cost", "-30", "Cost of each: This must not be negative. Type an amount");
        wrong("cost", "abc", "Cost of each: Type an amount, for example 38.50.");
        wrong("made", "1.2.2099", "Made on: This day is still to come: today is");
        wrong("cost", "-5t", "Cost of each: Type an amount, for example 38.50.");
        wrong("width", "-5", "This must not be negative.");
        wrong("width", "6000", "At most 5000 mm can be meant here.");
        wrong("labelled", "x", "Label says: Type the width in mm");
        QTest::keyClicks(&field(dialog, "freight"), "-1");
        CHECK(saidWrong(dialog).contains("This must not be negative."));
        QTest::keyClick(&dialog, Qt::Key_F9);
    });
    desk.press(Qt::Key_F8);
    CHECK(store::Pieces{shop.connection()}.all().size() == before);
}

TEST_CASE("Lines that were entered are not lost by Escape", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);
    const auto enterAndLeave = [&](QDialog& dialog, const char* question) {
        QTest::keyClicks(&field(dialog, "belt"), "T10 1250");
        QTest::keyClick(&field(dialog, "belt"), Qt::Key_Return);
        CHECK(field(dialog, "belt").text().isEmpty());
        answering(desk, [question](QDialog& ask) {
            CHECK(qobject_cast<QMessageBox*>(&ask)->text() == question);
            QTest::keyClick(&ask, Qt::Key_Escape); // goes on
        });
        QTest::keyClick(&dialog, Qt::Key_Escape);
        CHECK(dialog.isVisible());
        answering(desk, [](QDialog& ask) {
            for (auto* button : ask.findChildren<QPushButton*>())
                if (button->text() == "&Throw away") button->click();
        });
        QTest::keyClick(&dialog, Qt::Key_Escape);
        CHECK_FALSE(dialog.isVisible());
    };
    SECTION("in Goods in") {
        answering(desk, [&](QDialog& d) { enterAndLeave(d, "Lines entered and not booked yet: 1."); });
        desk.press(Qt::Key_F8);
    }
    SECTION("in what is expected") {
        answering(desk, [&](QDialog& list) {
            answering(desk, [&](QDialog& form) { enterAndLeave(form, "What you entered is not kept yet."); });
            QTest::keyClick(&list, Qt::Key_F8);
        });
        desk.press(Qt::Key_F8, Qt::ShiftModifier);
        CHECK(store::Goods{shop.connection()}.expected().empty());
    }
}

TEST_CASE("Goods in and a stock that is taken over go by keys", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);

    SECTION("goods in: two sleeves of a belt that is new to the shop, one of another, with freight") {
        answering(desk, [](QDialog& dialog) {
            QTest::keyClicks(&field(dialog, "belt"), "S8M 960");
            field(dialog, "width").selectAll();
            QTest::keyClicks(&field(dialog, "width"), "400");
            QTest::keyClicks(&field(dialog, "cost"), "61.50");
            field(dialog, "place").selectAll();
            QTest::keyClicks(&field(dialog, "place"), "C1-1");
            QTest::keyClick(&field(dialog, "place"), Qt::Key_Return);
            QTest::keyClicks(&field(dialog, "belt"), "T10 1250");
            field(dialog, "width").selectAll();
            QTest::keyClicks(&field(dialog, "width"), "463");
            QTest::keyClicks(&field(dialog, "labelled"), "470");
            QTest::keyClicks(&field(dialog, "cost"), "38.50");
            QTest::keyClicks(&field(dialog, "freight"), "5");
            QTest::keyClick(&dialog, Qt::Key_F9); // the line that is typed belongs to it
            QTest::keyClick(&dialog, Qt::Key_Escape);
        });
        desk.press(Qt::Key_F8);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("S8M 960"));
        REQUIRE(belt);
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(belt->id);
        REQUIRE(pieces.size() == 1);
        CHECK(pieces.front().extent == mm(400));
        CHECK(pieces.front().cost == Money::minor(6458)); // 5.00 over 61.50 and 38.50: 3.08 and 1.92
        CHECK(pieces.front().place == "C1-1");
        const auto other = store::Catalogue{shop.connection()}.find(shop.belt("T10 1250"));
        const auto come = store::Pieces{shop.connection()}.ofBelt(other->id);
        REQUIRE(come.size() == 2);
        CHECK(come.back().extent == mm(463));
        CHECK(come.back().place == "B3-2"); // where the same belt lies: nobody said otherwise
        const auto deliveries = store::Goods{shop.connection()}.deliveries(1);
        CHECK(shop::mislabelled(shop.session().shop(), deliveries.front().id).size() == 1);
    }
    SECTION("a code that was scanned is tied to the belt that is said next, and known then") {
        const auto scan = [](QDialog& dialog) {
            QTest::keyClicks(&field(dialog, "belt"), "4006381333931");
            QTest::keyClick(&field(dialog, "belt"), Qt::Key_Return);
        };
        answering(desk, [&](QDialog& dialog) {
            scan(dialog);
            QTest::keyClicks(&field(dialog, "belt"), "T10 1250");
            field(dialog, "width").selectAll();
            QTest::keyClicks(&field(dialog, "width"), "450");
            QTest::keyClick(&dialog, Qt::Key_F9);
            scan(dialog); // now it says all
            QTest::keyClick(&dialog, Qt::Key_F9);
            QTest::keyClick(&dialog, Qt::Key_Escape);
        });
        desk.press(Qt::Key_F8);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("T10 1250"));
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(belt->id);
        REQUIRE(pieces.size() == 3);
        CHECK(pieces[1].extent == mm(450));
        CHECK(pieces[2].extent == mm(450));
    }
    SECTION("a stock is taken over from a file") {
        const QString path = shop.papers() + "-stock.csv";
        QFile file{path};
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write("Bezeichnung;Breite;Fach;made;cost\nT10 1250;47,5;L\xfc 1;3.2.2026;12,5\nXL 414;30;;;\n");
        file.close(); // Latin-1
        answering(desk, [&](QDialog& dialog) {
            QTest::keyClicks(&field(dialog, "path"), path);
            QTest::keyClick(&field(dialog, "path"), Qt::Key_Return);
            const auto* rows = dialog.findChildren<QTableWidget*>().back();
            REQUIRE(rows->rowCount() == 2);
            CHECK(rows->item(0, 2)->text() == QString::fromUtf8("L\xc3\xbc 1"));
            CHECK(rows->item(0, 3)->text() == shown(Date{std::chrono::year{2026} / 2 / 3}));
            CHECK(rows->item(0, 4)->text() == "12.50");
            CHECK(rows->item(1, 4)->text().isEmpty()); // nobody said
            QTest::keyClick(&dialog, Qt::Key_F9);
            QTRY_VERIFY(!dialog.isVisible());
        });
        desk.press(Qt::Key_O, Qt::ControlModifier);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("T10 1250"));
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(belt->id);
        REQUIRE(pieces.size() == 2); // the oldest first: what was taken over was made in February
        CHECK(pieces.front().extent == um(47'500));
        CHECK(pieces.front().place == "L\xc3\xbc 1");
        const auto came = store::Ledger{shop.connection()}.historyOf(pieces.front().id).front().movement;
        CHECK(came.postings().front().account == store::Account::Found); // it was there
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::ui
