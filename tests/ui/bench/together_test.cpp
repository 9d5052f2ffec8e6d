#include "tests/ui/bench/at_the_bench.h"
#include "ui/bench/bench_model.h"
#include "ui/bench/bench_page.h"
#include "ui/bench/together_dialog.h"
#include "ui/look/key_button.h"
#include "ui/window/toast.h"

#include <QApplication>
#include <QLabel>
#include <QProgressBar>
#include <QTableView>

namespace riband::ui {

TEST_CASE("Two orders for one belt are cut together by two keys: one ticket, one mounting", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    for (const char* line : {"H8M 1200 85", "H8M 1200 100"}) {
        desk.type(QString::fromLatin1(line));
        desk.press(Qt::Key_F9);
    }
    desk.press(Qt::Key_2, Qt::ControlModifier);
    REQUIRE(desk.window().bench().waiting() == 2);
    int rows = -1;
    desk.answering([&](QDialog& dialog) {
        auto* together = qobject_cast<TogetherDialog*>(&dialog);
        REQUIRE(together != nullptr);
        CHECK(QTest::qWaitFor([&] { return !together->searching(); }, 60'000));
        rows = together->rows();
        QTest::keyClick(together->findChild<QTableView*>(), Qt::Key_Return);
        CHECK(QTest::qWaitFor([&] { return !together->searching(); }, 60'000));
        dialog.reject();
    });
    desk.press(Qt::Key_F8);
    CHECK(rows == 1);
    CHECK(desk.window().bench().waiting() == 1);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A key asks for belts for the shelf when orders are cut together; without it there are none",
          "[bench]") {
    DeskShop shop;
    shop.piece("H8M 960", mm(109), cutting::PieceKind::Remnant); // 2.5 + 30 + 50 leave a dead 26.5
    DeskWindow desk{shop};
    for (const char* line : {"H8M 960 30", "H8M 960 50"}) {
        desk.type(QString::fromLatin1(line));
        desk.press(Qt::Key_F6); // nothing for the shelf
        desk.press(Qt::Key_F9);
    }
    const bool asked = GENERATE(false, true);
    QString said;
    desk.answering([&](QDialog& dialog) {
        auto* together = qobject_cast<TogetherDialog*>(&dialog);
        REQUIRE(together != nullptr);
        const auto settled = [&] { return !together->searching(); };
        CHECK(QTest::qWaitFor(settled, 60'000));
        dialog.activateWindow();
        CHECK(QTest::qWaitForWindowActive(&dialog, 60'000));
        if (asked) QTest::keyClick(&dialog, Qt::Key_F6);
        CHECK(QTest::qWaitFor(settled, 60'000));
        auto* table = together->findChild<QTableView*>();
        said = table->model()->index(0, TogetherModel::ShelfColumn).data().toString();
        QTest::keyClick(table, Qt::Key_Return);
        CHECK(QTest::qWaitFor(settled, 60'000));
        dialog.reject();
    });
    desk.press(Qt::Key_2, Qt::ControlModifier);
    desk.press(Qt::Key_F8);
    CHECK(said.contains("20 mm") == asked);
    const auto rows = shop::bench(shop.session().shop());
    REQUIRE(rows.size() == 1);
    CHECK(rows.front().forShelf() == (asked ? std::vector{mm(20)} : std::vector<Extent>{}));
}

TEST_CASE("What must not be cut here: the large key opens its order, Enter records nothing, F9 what was done",
          "[bench]") {
    DeskShop shop;
    shop.piece("AT5 500", mm(380));
    DeskWindow desk{shop};
    desk.type("AT5 500 25");
    desk.press(Qt::Key_F9);
    store::ShopSettings settings = shop.session().settings();
    settings.cutters.front().cutter.cutsSteelCord = false;
    shop.session().save(settings);
    desk.press(Qt::Key_2, Qt::ControlModifier);
    REQUIRE(desk.window().bench().waiting() == 1);
    const auto key = [&](Qt::Key wanted) {
        for (auto* button : desk.window().bench().findChildren<KeyButton*>())
            if (button->shownKey() == QKeySequence{wanted}) return button;
        FAIL("no such key");
        return static_cast<KeyButton*>(nullptr);
    };
    QApplication::processEvents();
    CHECK(key(Qt::Key_F4)->width() > key(Qt::Key_F9)->width());
    CHECK(key(Qt::Key_F9)->text().contains("all the same"));
    desk.press(Qt::Key_Return);
    CHECK(desk.window().toast().words().contains("F4"));
    CHECK(desk.window().bench().waiting() == 1);
    desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    desk.press(Qt::Key_F9);
    CHECK(desk.window().bench().waiting() == 0);
}

TEST_CASE("Where the orders can't be read, the search for what to cut together ends, and says so",
          "[bench]") {
    DeskShop shop;
    QStringList warned;
    QObject::connect(&shop.session(), &Session::warned, [&](const QString& words) { warned << words; });
    REQUIRE(QFile::rename(shop.file(), shop.file() + ".away"));
    TogetherDialog dialog{shop.session()};
    dialog.show();
    CHECK(QTest::qWaitFor([&] { return !dialog.searching(); }, 60'000));
    CHECK(dialog.findChild<QProgressBar*>()->isHidden());
    CHECK(dialog.rows() == 0);
    REQUIRE(warned.size() == 1);
    CHECK(warned.front().contains("shop.riband"));
    QStringList said;
    for (const auto* label : dialog.findChildren<QLabel*>())
        said << label->text();
    CHECK(said.join(' ').contains("could not be read"));
}

TEST_CASE("A key puts a mounting on the shop's other cutter, whose set-up is shown and which is booked",
          "[bench]") {
    DeskShop shop;
    store::ShopSettings settings = shop.session().settings();
    settings.cutters.push_back({store::CutterId{0}, {"Long bench", {{"long", 60, 60, 800, 100, 3000}}}});
    shop.session().save(settings);
    const store::CutterId other = shop.session().settings().cutters.back().id;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    desk.press(Qt::Key_F7);
    REQUIRE(desk.window().bench().waiting() == 1);
    const auto mounting = shop::bench(shop.session().shop()).front();
    CHECK(mounting.cutter.id == other);
    CHECK(
        desk.window().bench().findChild<BenchModel*>()->index(0, 0).data(BenchModel::ShaftRole).toString() ==
        "Long bench · shaft long");
    desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    desk.press(Qt::Key_F9);
    const store::Ledger ledger{shop.connection()};
    CHECK(ledger.at(*ledger.last()).movement.about().cutter == other);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("With one cutter there is no key to choose it", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    const store::CutterId only = shop::bench(shop.session().shop()).front().cutter.id;
    desk.press(Qt::Key_F7);
    CHECK(shop::bench(shop.session().shop()).front().cutter.id == only);
    CHECK(shop.session().settings().cutters.size() == 1);
}

} // namespace riband::ui
