#include "core/shop/order.h"
#include "tests/ui/bench/at_the_bench.h"
#include "ui/bench/bench_model.h"
#include "ui/bench/bench_page.h"
#include "ui/bench/order_lines_model.h"
#include "ui/bench/orders_model.h"
#include "ui/bench/stops_model.h"
#include "ui/words/cutting_steps.h"
#include "ui/words/words.h"

#include <QAbstractItemModelTester>
#include <QDateTime>
#include <QListView>
#include <QSpinBox>

namespace riband::ui {

namespace {
constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;
} // namespace

TEST_CASE("The Bench follows the order it showed: another customer's is never chosen instead", "[bench]") {
    DeskShop shop;
    shop.piece("H14M 1400", mm(300));
    DeskWindow desk{shop};
    desk.type("T10 1250 30");
    desk.press(Qt::Key_F9);
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_F9);
    desk.press(Qt::Key_2, Qt::ControlModifier);
    auto* list = desk.window().bench().findChild<QListView*>();
    const auto mountings = shop::bench(shop.session().shop());
    REQUIRE(mountings.size() == 2);
    for (int row = 0; row < 2; ++row)
        if (mountings[static_cast<std::size_t>(row)].belt.designation == "H8M 1200")
            list->setCurrentIndex(list->model()->index(row, 0));
    const auto chosen = [&] { return list->currentIndex().data(BenchModel::BeltRole).toString(); };
    REQUIRE(chosen() == "H8M 1200");

    SECTION("its line is changed") {
        const auto order = store::Orders{shop.connection()}.inState(store::OrderState::Open).back();
        shop::change(shop.session().shop(), order.lines.front().id, mm(25), 2);
        shop.session().touch();
        CHECK(list->currentIndex().data(BenchModel::CutsRole).toString().contains("2 × 25 mm"));
    }
    SECTION("a belt of it is spoiled") {
        desk.answering([](QDialog& dialog) {
            dialog.findChild<QSpinBox*>("good1")->setValue(1);
            type(dialog, "spoiled", "28.6");
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F6);
    }
    CHECK(chosen() == "H8M 1200");
    CHECK(desk.window().bench().waiting() == 2);
}

TEST_CASE("What somebody else has cut in between asks for nothing more and leaves the list", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    QStringList warned;
    QObject::connect(&shop.session(), &Session::warned, [&](const QString& words) { warned << words; });
    const auto mounting = shop::bench(shop.session().shop()).front().mounting.id;
    SECTION("before the dialog opens") {
        shop::recordCut(shop.session().shop(), {.mounting = mounting});
        desk.press(Qt::Key_F9);
        REQUIRE(warned.size() == 1);
    }
    SECTION("while it is open") {
        desk.answering([&](QDialog& dialog) {
            shop::recordCut(shop.session().shop(), {.mounting = mounting});
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F9);
        REQUIRE(warned.size() == 2); // the refusal, and that it waits no more
    }
    CHECK(warned.back().contains("waits no more"));
    CHECK(desk.window().bench().waiting() == 0);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Where the shaft is too thin the Bench says what to do", "[bench]") {
    DeskShop shop;
    shop.piece("H14M 1400", mm(300));
    DeskWindow desk{shop};
    desk.type("H14M 1400 40");
    desk.press(Qt::Key_F9);
    const auto row = shop::bench(shop.session().shop()).front();
    const auto warnings = warningsOf(row);
    REQUIRE_FALSE(warnings.empty());
    CHECK(warnings.front().stop);
    CHECK(warnings.front().words.contains("thicker shaft"));
}

TEST_CASE("Each width has its own tolerance, the customer's first", "[bench]") {
    DeskShop shop;
    shop.piece("H8M 960", mm(59), cutting::PieceKind::Remnant); // 30 for the customer, 20 fill it up
    DeskWindow desk{shop};
    desk.type("H8M 960 30");
    desk.press(Qt::Key_F9);
    const auto row = shop::bench(shop.session().shop()).front();
    REQUIRE(row.stops.size() == 2);
    CHECK(tolerancesOf(row) ==
          "30 mm, " + QString::number(row.stops.front().count() / 1000) + " mm +0.8 -1.2 (ISO 13050)");
}

TEST_CASE("The Bench's models keep the rules of models", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    const auto mountings = shop::bench(shop.session().shop());
    REQUIRE(mountings.size() == 1);
    const auto whose = shop::whoseAre(shop.session().shop(), mountings);

    SECTION("the waiting mountings") {
        BenchModel model;
        QAbstractItemModelTester tester{&model, Strict};
        model.setMountings(mountings, whose, false, shop.session().today());
        CHECK(model.rowOf(mountings.front().mounting.id) == 0);
        CHECK(model.index(0, 0).data(BenchModel::CutsRole).toString() == QString::fromUtf8("3 × 30 mm"));
        model.setMountings({}, {}, false, shop.session().today());
        CHECK(model.rowCount() == 0);
    }
    SECTION("the stops: 30, 60, 90 from the trimmed edge") {
        StopsModel model;
        QAbstractItemModelTester tester{&model, Strict};
        model.setMounting(mountings.front(), whose.front());
        REQUIRE(model.rowCount() == 3);
        CHECK(model.index(2, StopsModel::EachColumn).data().toString() == "30");
        CHECK(model.index(2, StopsModel::CumulativeColumn).data().toString() == "90");
        model.clear();
        CHECK(model.rowCount() == 0);
    }
    SECTION("the lines of an order, and the orders") {
        const auto order = shop.orders(store::OrderState::Open).front();
        OrderLinesModel lines;
        QAbstractItemModelTester first{&lines, Strict};
        lines.setOrder(order, {"H8M 1200"}, Currency{"EUR", 2});
        CHECK(lines.index(0, OrderLinesModel::OrderedColumn).data().toString() == "3");
        OrdersModel orders;
        QAbstractItemModelTester second{&orders, Strict};
        orders.setOrders({{order, "3", false}});
        CHECK(orders.rowCount() == 1);
        orders.setOrders({});
        CHECK(orders.rowCount() == 0);
    }
}

TEST_CASE("When an order is wanted stands on its card, and what is wanted soonest comes first", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    const auto order = [&](std::optional<Moment> due) {
        shop::order(shop.session().shop(),
                    {.lines = {{shop.belt("T10 1250"), mm(25), 1, "", std::nullopt, {}}},
                     .customer = "",
                     .phone = "",
                     .due = due,
                     .note = ""});
    };
    const auto at = [](const char* time) {
        return Moment{std::chrono::milliseconds{
            QDateTime::fromString(QString::fromLatin1(time), Qt::ISODate).toMSecsSinceEpoch()}};
    };
    order(std::nullopt);
    order(at("2026-03-03T17:00:00"));
    order(at("2026-03-02T16:00:00"));
    shop.session().touch();
    desk.press(Qt::Key_2, Qt::ControlModifier);
    const auto* model = desk.window().bench().findChild<BenchModel*>();
    QStringList due;
    for (int row = 0; row < model->rowCount(); ++row)
        due << model->index(row, 0).data(BenchModel::DueRole).toString();
    due.sort();
    CHECK(due == QStringList{"", "by 16:00", "by 2026-03-03"});
    QStringList listed;
    desk.answering([&](QDialog& dialog) {
        const auto* orders = dialog.findChild<OrdersModel*>();
        for (int row = 0; row < orders->rowCount(); ++row)
            listed << orders->index(row, OrdersModel::DueColumn).data().toString();
        dialog.reject();
    });
    desk.press(Qt::Key_F5);
    CHECK(listed == QStringList{shown(at("2026-03-02T16:00:00")), shown(at("2026-03-03T17:00:00")), ""});
}

TEST_CASE("The steps name the piece, the shaft with its distance, and the trim", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    const auto mounting = shop::bench(shop.session().shop()).front();
    QString all;
    for (const QString& words : setUpSteps(mounting))
        all += words + '\n';
    INFO(all.toStdString());
    CHECK(all.contains(QString::fromStdString(mounting.piece.code)));
    CHECK(all.contains("2.5 mm"));
    // The teeth of H8M, 3.38 mm high, lie on the plain shaft of 80 mm, the pitch line 0.686 mm above their
    // land: pitch diameter 80 + 2 x 4.066 = 88.13; (1200 - pi x 88.13) / 2 = 461.6 mm between centres.
    CHECK(all.contains("461.6 mm"));
    QString warned;
    for (const QString& words : cautions())
        warned += words;
    for (const char* said :
         {"trained people", "own manual", "emergency stop", "moving blade", "shafts rotate"})
        CHECK(warned.contains(said));
}

} // namespace riband::ui
