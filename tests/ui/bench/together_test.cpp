#include "tests/ui/bench/at_the_bench.h"
#include "ui/bench/bench_model.h"
#include "ui/bench/bench_page.h"
#include "ui/bench/together_dialog.h"

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
