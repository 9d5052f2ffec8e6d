#include "tests/ui/desk_fixture.h"
#include "ui/counter/counter_page.h"
#include "ui/drive/drive_dialog.h"
#include "ui/look/key_button.h"

#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTest>

namespace riband::ui {

namespace {

/// A drive on the screen, worked by keys.
class AtTheDrive {
public:
    AtTheDrive() : desk{shop} { shop.piece("H5M 750", mm(200)); }
    DriveDialog& dialog() { return desk.window().drive(); }
    void bring() {
        desk.window().activateWindow(); // off screen nobody gives it back its focus
        QApplication::processEvents();
        desk.counter().line().setFocus();
        desk.press(Qt::Key_D, Qt::ControlModifier);
        REQUIRE(dialog().isVisible());
        dialog().activateWindow();
        QApplication::processEvents();
    }
    QWidget* at() {
        QWidget* focus = dialog().focusWidget();
        REQUIRE(focus != nullptr);
        return focus;
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(at(), key, modifiers);
        desk.settle();
    }
    /// Words and a step to the next field.
    void fill(const QString& words) {
        QTest::keyClicks(at(), words);
        key(Qt::Key_Tab);
    }
    QLineEdit* field(const QString& name) {
        for (auto* edit : dialog().findChildren<QLineEdit*>())
            if (edit->accessibleName() == name) return edit;
        FAIL("no such field");
        return nullptr;
    }
    QTableView* belts() {
        for (auto* table : dialog().findChildren<QTableView*>())
            if (table->accessibleName() == "Belts that exist") return table;
        FAIL("no table of belts");
        return nullptr;
    }
    void keepPicture(const QString& name) {
        desk.settle();
        const QDir folder{QStringLiteral(RIBAND_BINARY_DIR "/scenes")};
        folder.mkpath(".");
        CHECK(dialog().grab().save(folder.filePath(name + ".png")));
        for (const auto* button : dialog().findChildren<KeyButton*>()) {
            INFO(button->text().toStdString());
            CHECK(button->width() >= button->sizeHint().width());
        }
    }

    DeskShop shop;
    DeskWindow desk;
};

} // namespace

TEST_CASE("Two pulleys by keys alone: Ctrl+D, the fields, Enter, and the belt is on the Counter's line",
          "[drive]") {
    AtTheDrive drive;
    drive.bring();
    drive.fill("H5M");
    drive.fill("20");
    drive.fill("22");
    drive.fill("44");
    drive.fill("300");
    QTest::keyClicks(drive.at(), "10");
    CHECK(drive.dialog().answer().belts.front().cells[0] == "H5M 750");
    drive.keepPicture("drive-two");
    drive.key(Qt::Key_Return);
    CHECK_FALSE(drive.dialog().isVisible());
    REQUIRE(drive.desk.counter().inquiry().wanted());
    CHECK(drive.desk.counter().inquiry().wanted()->belt == drive.shop.belt("H5M 750"));
    CHECK(drive.desk.counter().inquiry().wanted()->extent == mm(20));
}

TEST_CASE("The window never waits for the stock; an Enter in between waits, and takes what is here",
          "[drive]") {
    AtTheDrive drive;
    drive.bring();
    for (const char* words : {"H5M", "20", "22", "44", "300"})
        drive.fill(words);
    drive.shop.session().touch();
    CHECK_FALSE(drive.dialog().settled()); // another thread reads
    CHECK(drive.dialog().answer().belts.front().cells[0] == "H5M 770");
    QTest::keyClick(drive.at(), Qt::Key_Return);
    CHECK(drive.dialog().isVisible());
    drive.desk.settle();
    CHECK_FALSE(drive.dialog().isVisible());
    REQUIRE(drive.desk.counter().inquiry().wanted());
    CHECK(drive.desk.counter().inquiry().wanted()->belt == drive.shop.belt("H5M 750"));
}

TEST_CASE("What nobody chose gives way to what is better as one types on", "[drive]") {
    AtTheDrive drive;
    drive.bring();
    for (const char* words : {"H5M", "20", "22", "44", "30"})
        drive.fill(words);
    drive.field("Distance of the centres")->setText("330"); // 750 mm is too far off
    CHECK(drive.belts()->currentIndex().row() == 0);
    drive.field("Distance of the centres")->setText("300");
    CHECK(drive.belts()->currentIndex().row() == 0);
    CHECK(drive.dialog().answer().belts.front().cells[0] == "H5M 750");
}

TEST_CASE("The arrows choose another belt from any field", "[drive]") {
    AtTheDrive drive;
    drive.bring();
    for (const char* words : {"H5M", "20", "22", "44", "300"})
        drive.fill(words);
    drive.key(Qt::Key_Down);
    CHECK(drive.belts()->currentIndex().row() == 1);
    drive.key(Qt::Key_Return);
    REQUIRE(drive.desk.counter().inquiry().wanted());
    CHECK(drive.desk.counter().inquiry().wanted()->belt == drive.shop.belt("H5M 770"));
}

TEST_CASE("Escape closes without loss, on the line and in the drive", "[drive]") {
    AtTheDrive drive;
    drive.desk.type("3 x H8M 1200 30");
    drive.bring();
    // The belt on the line is the one that is known.
    CHECK(drive.field("Profile")->text() == "H8M");
    CHECK(drive.field("Or a belt that is known")->text() == "1200");
    CHECK(drive.field("Width or ribs")->text() == "30");
    drive.field("First pulley, drives")->setFocus();
    drive.fill("30");
    drive.key(Qt::Key_Escape);
    CHECK_FALSE(drive.dialog().isVisible());
    CHECK(drive.desk.counter().line().text() == "3 x H8M 1200 30");
    drive.desk.counter().line().setFocus();
    drive.bring();
    CHECK(drive.field("First pulley, drives")->text() == "30");
}

TEST_CASE("Enter goes to what is still missing or wrong, and sends nothing", "[drive]") {
    AtTheDrive drive;
    drive.bring();
    QTest::keyClicks(drive.at(), "5M");
    drive.key(Qt::Key_Return);
    drive.key(Qt::Key_Return);
    CHECK(drive.dialog().isVisible());
    CHECK(drive.at() == drive.field("Profile"));
    drive.field("Profile")->setText("H5M");
    drive.key(Qt::Key_Return);
    CHECK(drive.at() == drive.field("First pulley, drives"));
    drive.keepPicture("drive-missing");
}

TEST_CASE("What was on the line comes back by Ctrl+Z, and its number stays", "[drive]") {
    AtTheDrive drive;
    drive.desk.type("3 x H8M 1200 30");
    drive.bring();
    drive.field("First pulley, drives")->setText("30");
    drive.field("Second pulley")->setText("60");
    REQUIRE_FALSE(drive.dialog().answer().belts.empty());
    drive.key(Qt::Key_Return);
    REQUIRE(drive.desk.counter().inquiry().wanted());
    CHECK(drive.desk.counter().inquiry().wanted()->quantity == 3);
    drive.desk.counter().line().undo();
    CHECK(drive.desk.counter().line().text() == "3 x H8M 1200 30");
}

TEST_CASE("More than two pulleys are typed into a table, and one of them is set", "[drive]") {
    AtTheDrive drive;
    drive.bring();
    for (const char* words : {"H5M", "20", "22", "44", "300"})
        drive.fill(words);
    drive.key(Qt::Key_F4);
    auto* table = [&] {
        for (auto* each : drive.dialog().findChildren<QTableView*>())
            if (each->accessibleName().startsWith("Pulleys")) return each;
        return static_cast<QTableView*>(nullptr);
    }();
    REQUIRE(table != nullptr);
    REQUIRE(table->model()->rowCount() == 3); // the two are there already, and an empty one waits
    const char* third[] = {"150", "35", "30 mm"};
    for (int column = 0; column < 3; ++column)
        CHECK(table->model()->setData(table->model()->index(2, column), third[column], Qt::EditRole));
    CHECK(table->model()->rowCount() == 4);
    table->setFocus();
    table->setCurrentIndex(table->model()->index(2, 3));
    QTest::keyClick(table, Qt::Key_Space); // on the back
    CHECK(table->model()->index(2, 3).data(Qt::CheckStateRole).toInt() == Qt::Checked);
    table->setCurrentIndex(table->model()->index(1, 4));
    QTest::keyClick(table, Qt::Key_Space); // the second can be set
    drive.field("Set on and back by")->setText("20");
    INFO(drive.dialog().answer().open.toStdString());
    REQUIRE(drive.dialog().answer().open.isEmpty());
    REQUIRE_FALSE(drive.dialog().answer().belts.empty());
    CHECK(drive.dialog().answer().belts.front().reachable);
    drive.keepPicture("drive-many");
    const QString first = drive.dialog().answer().belts.front().cells[0];
    drive.field("Set on and back by")->setFocus();
    drive.key(Qt::Key_Return);
    CHECK(drive.desk.counter().line().text().contains(first.section(' ', 1)));
}

TEST_CASE("At every size and in both shades the drive is whole, its cautions in sight", "[drive]") {
    AtTheDrive drive;
    drive.bring();
    for (const char* words : {"H5M", "20", "22", "44", "300", "10"})
        drive.fill(words);
    for (const QSize size : {QSize{1366, 768}, QSize{1920, 1080}}) {
        drive.desk.window().resize(size);
        drive.dialog().resize(size - QSize{48, 48});
        CHECK(drive.dialog().width() == size.width() - 48); // nothing pushes it wider
        CHECK(drive.dialog().height() == size.height() - 48);
        drive.keepPicture(QStringLiteral("drive-%1").arg(size.width()));
        bool cautioned = false;
        for (const auto* label : drive.dialog().findChildren<QLabel*>())
            cautioned = cautioned || (label->isVisible() && label->text().contains("Lock the machine out"));
        CHECK(cautioned);
    }
    Look::apply(*qApp, Shade::Dark);
    drive.dialog().resize(1318, 720);
    drive.keepPicture("drive-dark");
    Look::apply(*qApp, Shade::Light);
}

} // namespace riband::ui
