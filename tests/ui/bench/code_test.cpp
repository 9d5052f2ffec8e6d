#include "core/shop/order.h"
#include "tests/ui/bench/at_the_bench.h"
#include "ui/bench/bench_model.h"
#include "ui/bench/bench_page.h"
#include "ui/bench/together_dialog.h"
#include "ui/window/toast.h"

#include <QListView>
#include <QSpinBox>
#include <QTableView>

namespace riband::ui {

namespace {

/// Orders of three belts wait on the Bench, which is in front.
struct ThreeWait {
    DeskShop shop;
    DeskWindow desk{shop};
    bool opened = false;

    ThreeWait() {
        for (const char* line : {"3 x H8M 1200 30", "T10 1250 25", "XL 414 20"}) {
            desk.type(QString::fromLatin1(line));
            desk.press(Qt::Key_F9);
        }
        desk.press(Qt::Key_2, Qt::ControlModifier);
        REQUIRE(desk.window().bench().waiting() == 3);
    }
    QListView& list() { return *desk.window().bench().findChild<QListView*>(); }
    shop::BenchMounting of(const std::string& belt) {
        for (const auto& row : shop::bench(shop.session().shop()))
            if (row.belt.designation == belt) return row;
        FAIL("nothing of it waits");
        return shop::bench(shop.session().shop()).front();
    }
    QString chosen() { return list().currentIndex().data(BenchModel::BeltRole).toString(); }
    /// As it comes from a scanner, wherever the focus goes while it types.
    void scan(const std::string& code) {
        if (!QApplication::activeWindow()) desk.window().activateWindow();
        QApplication::processEvents();
        for (const char character : code)
            QTest::keyClick(QApplication::focusWidget(), character);
        enter();
    }
    /// A dialog that is opened by it is left again.
    void enter() {
        desk.answering([&](QDialog& dialog) {
            opened = true;
            dialog.reject();
        });
        desk.press(Qt::Key_Return);
    }
};

} // namespace

TEST_CASE("A code that is scanned at the Bench chooses what waits of it, and records nothing", "[bench]") {
    ThreeWait wait;
    for (const std::string belt : {"XL 414", "H8M 1200", "T10 1250"}) {
        INFO(belt);
        const auto row = wait.of(belt);
        const std::string code = belt == "XL 414"     ? row.piece.code
                                 : belt == "H8M 1200" ? row.ticket
                                                      : row.order;
        wait.scan(code);
        CHECK(wait.chosen().toStdString() == belt);
        CHECK(wait.desk.window().toast().words().contains("Chosen: " + QString::fromStdString(belt)));
        wait.enter(); // a scanner that sends two line ends
        CHECK_FALSE(wait.opened);
    }
    CHECK(wait.desk.window().current() == &wait.desk.window().bench());
    CHECK(wait.desk.window().bench().waiting() == 3);
}

TEST_CASE("A code of nothing that waits is told as such, and what was chosen stays", "[bench]") {
    ThreeWait wait;
    wait.scan(wait.of("XL 414").order);
    const auto other = store::Pieces{wait.shop.connection()}.at(
        wait.shop.piece("XL 414", mm(60), cutting::PieceKind::Remnant));
    SECTION("a piece of which nothing waits") {
        wait.scan(other.code);
        CHECK(wait.desk.window().toast().words().contains("none of the pieces that wait"));
    }
    SECTION("no code at all") {
        wait.scan("1234");
        CHECK(wait.desk.window().toast().words().contains("is called 1234"));
    }
    CHECK(wait.chosen() == "XL 414");
    CHECK_FALSE(wait.opened);
}

TEST_CASE("After every act Enter sleeps: one too many records no cut that nobody has made", "[bench]") {
    ThreeWait wait;
    wait.scan(wait.of("H8M 1200").ticket);
    SECTION("after a miscut") {
        wait.desk.answering([](QDialog& dialog) {
            dialog.findChild<QSpinBox*>("good1")->setValue(1);
            type(dialog, "spoiled", "28.6");
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        wait.desk.press(Qt::Key_F6);
    }
    SECTION("after a look at the orders") {
        wait.desk.answering([](QDialog& dialog) { dialog.reject(); });
        wait.desk.press(Qt::Key_F5);
    }
    SECTION("after its line was changed, elsewhere") {
        const auto order = wait.shop.orders(store::OrderState::Open).front();
        shop::change(wait.shop.session().shop(), order.lines.front().id, mm(25), 2);
        wait.shop.session().touch();
    }
    wait.list().setFocus();
    wait.enter();
    wait.enter();
    CHECK_FALSE(wait.opened);
    CHECK(wait.desk.window().toast().words().contains("F9"));
    wait.desk.press(Qt::Key_End);
    wait.desk.press(Qt::Key_Home);
    wait.enter();
    CHECK(wait.opened); // chosen by hand
}

TEST_CASE("Cut together plans one belt an Enter: the next one must be chosen", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    for (const char* line : {"H8M 1200 85", "H8M 1200 100", "T10 1250 25", "T10 1250 30"}) {
        desk.type(QString::fromLatin1(line));
        desk.press(Qt::Key_F9);
    }
    desk.press(Qt::Key_2, Qt::ControlModifier);
    REQUIRE(desk.window().bench().waiting() == 4);
    desk.answering([&](QDialog& dialog) {
        auto* together = qobject_cast<TogetherDialog*>(&dialog);
        REQUIRE(together != nullptr);
        const auto found = [&] { return QTest::qWaitFor([&] { return !together->searching(); }, 60'000); };
        auto* table = together->findChild<QTableView*>();
        CHECK(found());
        REQUIRE(together->rows() == 2);
        for (int i = 0; i < 3; ++i) {
            QTest::keyClick(table, Qt::Key_Return);
            CHECK(found());
            CHECK(together->rows() == 1);
        }
        dialog.reject();
    });
    desk.press(Qt::Key_F8);
    CHECK(desk.window().bench().waiting() == 3);
    CHECK(shop.disagreements().empty());
}

} // namespace riband::ui
